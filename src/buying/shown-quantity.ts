// Quantities as people see them. Yards of a ribbon cut in centimetres have no last digit: a need is shown up, what is left down, to a hundredth.

import type { Decimal } from '../values/decimal.ts';
import { roundTo } from '../values/rounding.ts';

const places = 2;

/** A need: never shown smaller than it is. Plain decimal text, no trailing zeros. */
export const shownUp = (quantity: Decimal): string => roundTo(quantity, places, 'up').toFixed();

/** What is left: never shown larger than it is. */
export const shownDown = (quantity: Decimal): string => roundTo(quantity, places, 'down').toFixed();
