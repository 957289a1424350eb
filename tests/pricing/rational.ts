// Fractions of whole numbers: an exact chain to hold the decimal one against. Derived from the rules, written apart from the product's code.

export interface Rational {
  readonly top: bigint;
  readonly bottom: bigint; // above zero
}

export const rational = (top: bigint | number, bottom: bigint | number = 1): Rational =>
  BigInt(bottom) < 0n ? { top: -BigInt(top), bottom: -BigInt(bottom) } : { top: BigInt(top), bottom: BigInt(bottom) };

export const times = (a: Rational, b: Rational): Rational => rational(a.top * b.top, a.bottom * b.bottom);
export const over = (a: Rational, b: Rational): Rational => rational(a.top * b.bottom, a.bottom * b.top);
export const plus = (a: Rational, b: Rational): Rational => rational(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
export const minus = (a: Rational, b: Rational): Rational => plus(a, rational(-b.top, b.bottom));

/** Decimal text cut at this many places. */
export const digits = ({ top, bottom }: Rational, places: number): string => {
  const scaled = (top * 10n ** BigInt(places)) / bottom;
  const text = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, '0');
  const whole = text.slice(0, text.length - places);
  return `${scaled < 0n ? '-' : ''}${whole}.${text.slice(text.length - places)}`;
};

/** Whole coins of a hundredth, half up; for amounts of zero or more. */
export const cents = ({ top, bottom }: Rational): bigint => (top * 200n + bottom) / (bottom * 2n);
