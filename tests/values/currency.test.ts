// Minor units by ISO 4217.

import * as reference from 'dinero.js/currencies';
import { describe, expect, it } from 'vitest';
import { currencies, currencySign, minorUnits } from '../../src/values/currency.ts';

describe('decimals of a currency', () => {
  // ISO 4217 tables A.1/A.3, datasets/currency-codes data/codes-all.csv, commit 051762c (2014-era copy)
  it.each([
    [2, 'AUD GBP NZD EUR CAD USD CHF SEK'],
    [0, 'JPY KRW VND CLP ISK XPF'],
    [3, 'KWD BHD OMR JOD TND IQD LYD'],
  ])('%d for %s', (places, codes) => {
    expect(codes.split(' ').map(minorUnits)).toEqual(codes.split(' ').map(() => places));
  });

  it('follows the standard where Intl follows the shops', () => {
    // The standard says 3 for the Iraqi dinar (same tables). 4 for the Chilean unit of account is from memory.
    expect([minorUnits('IQD'), minorUnits('CLF')]).toEqual([3, 4]);
  });

  it('agrees with the currency table of dinero.js 2.0.2', () => {
    // That library counts the ariary and the ouguiya in fifths and gives them 1; the standard's tables give them 2.
    const inFifths = ['MGA', 'MRU'];
    const theirs = Object.values(reference).filter(({ code }) => !inFifths.includes(code));
    expect(theirs.length).toBeGreaterThan(150);
    for (const { code, exponent } of theirs) expect([code, minorUnits(code)]).toEqual([code, exponent]);
    expect(currencies.filter((code) => !Object.values(reference).some((known) => known.code === code))).toEqual([]);
  });

  it.each(['', 'gbp', 'XAU', 'XTS', 'DEM', 'ZZZ'])('has none for %o', (code) => {
    expect(minorUnits(code)).toBeUndefined();
  });
});

describe('the sign before an amount', () => {
  it.each([
    ['GBP', '£'],
    ['EUR', '€'],
    ['AUD', '$'],
    ['NZD', '$'],
    ['USD', '$'],
    ['ZAR', 'R'],
    ['JPY', '¥'],
    ['CHF', undefined],
  ])('%s is %s', (code, sign) => {
    expect(currencySign(code)).toBe(sign);
  });
});
