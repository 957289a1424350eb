// Amounts of a currency as they are rounded and printed. Nothing here converts: an amount is always in the studio's currency.

import { currencySign, minorUnits } from './currency.ts';
import { type Decimal, decimal } from './decimal.ts';
import { type RoundingRule, roundTo } from './rounding.ts';

/** Decimals of the currency; throws for a code that is not ISO 4217, because settings and messages are checked before. */
const placesOf = (currency: string): number => {
  const places = minorUnits(currency);
  if (places === undefined) throw new Error(`not an ISO 4217 currency: ${currency}`);
  return places;
};

/** One penny, cent, yen or fils. */
export const smallestCoin = (currency: string): Decimal => decimal(`1e-${placesOf(currency)}`);

/** Rounds to the currency's smallest coin. */
export const toCoin = (amount: Decimal, currency: string, rule: RoundingRule = 'half up'): Decimal =>
  roundTo(amount, placesOf(currency), rule);

/** True when the amount is a whole number of the currency's smallest coin. */
export const isWholeCoins = (amount: Decimal, currency: string): boolean => amount.decimalPlaces() <= placesOf(currency);

/** Plain text with the currency's decimals, for JSON and CSV: "1000.00", "1000" in yen. Rounds half up if it must. */
export const fixedMoney = (amount: Decimal, currency: string): string => {
  const rounded = toCoin(amount, currency);
  return (rounded.isZero() ? decimal(0) : rounded).toFixed(placesOf(currency));
};

const withThousands = (digits: string): string => {
  const [whole = '', fraction] = digits.split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
};

/** For people: "£1,000.00", "R25.00", "−£4.81", "CHF 25.00". */
export const printMoney = (amount: Decimal, currency: string): string => {
  const digits = fixedMoney(amount, currency);
  const minus = digits.startsWith('-') ? '−' : '';
  const shown = withThousands(digits.replace('-', ''));
  const sign = currencySign(currency);
  return sign === undefined ? `${minus}${currency} ${shown}` : `${minus}${sign}${shown}`;
};

/** A percentage or a multiple without needless zeros: "20", "8.25". */
export const printNumber = (number: Decimal, most = 6): string => roundTo(number, most, 'half up').toString();

/** Finer than a coin, for what one of many costs: "£0.392". Cut off, never rounded, after `most` decimals; trailing zeros beyond the coin are left out. */
export const printFine = (amount: Decimal, currency: string, most: number): string => {
  const places = placesOf(currency);
  const cut = roundTo(amount, most, 'down').toFixed(most);
  const [, fraction = ''] = cut.split('.');
  const beyond = fraction.slice(places).replace(/0+$/, '');
  const coins = printMoney(roundTo(amount, places, 'down'), currency);
  return beyond === '' ? coins : places === 0 ? `${coins}.${beyond}` : `${coins}${beyond}`;
};
