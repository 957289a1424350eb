// The one exact number type. Forty digits and half-up rounding, so a figure is only ever rounded where a rounding function says so.

import { Decimal as BaseDecimal } from 'decimal.js';

export const Decimal = BaseDecimal.clone({ precision: 40, rounding: BaseDecimal.ROUND_HALF_UP, toExpNeg: -30, toExpPos: 40 });
export type Decimal = BaseDecimal;

/** Reads an exact decimal from text, a whole number or another decimal. Never give it a computed float. */
export const decimal = (value: string | number | Decimal): Decimal => new Decimal(value);

export const zero = decimal(0);
export const hundred = decimal(100);

/** Adds exactly; an empty list is zero. */
export const sum = (parts: readonly Decimal[]): Decimal => parts.reduce((total, part) => total.plus(part), zero);
