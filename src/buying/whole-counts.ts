// Counts of stems, cuts and packs, made whole. Money is rounded in values/rounding.

import type { Decimal } from '../values/decimal.ts';

/**
 * Up to a whole stem, cut or pack. A billionth is ignored, so that thirds of a stem, which no decimal holds exactly, don't buy one more:
 * 42 pieces at 5/3 stems are 70 stems, not 71.
 */
export const wholeUp = (quantity: Decimal): Decimal => quantity.toDecimalPlaces(9).ceil();

/** Down to a whole cut, with the same allowance. */
export const wholeDown = (quantity: Decimal): Decimal => quantity.toDecimalPlaces(9).floor();
