// How amounts are printed and rounded to coins.

import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/values/decimal.ts';
import { fixedMoney, isWholeCoins, printMoney, printNumber, smallestCoin, toCoin } from '../../src/values/money.ts';

describe('an amount for people', () => {
  it.each([
    ['1000', 'GBP', '£1,000.00'],
    ['4.0064', 'GBP', '£4.01'],
    ['-4.81', 'GBP', '−£4.81'],
    ['-0.001', 'GBP', '£0.00'],
    ['25', 'ZAR', 'R25.00'],
    ['2500', 'JPY', '¥2,500'],
    ['1234567.8', 'KWD', 'KWD 1,234,567.800'],
    ['999', 'EUR', '€999.00'],
    ['25', 'CHF', 'CHF 25.00'],
  ])('%s %s is %s', (amount, currency, shown) => {
    expect(printMoney(decimal(amount), currency)).toBe(shown);
  });
});

describe('an amount for machines', () => {
  it.each([
    ['1000', 'GBP', '1000.00'],
    ['2500.4', 'JPY', '2500'],
    ['1.2345', 'KWD', '1.235'],
    ['-0.004', 'GBP', '0.00'],
    ['-4.005', 'GBP', '-4.01'],
  ])('%s %s is %s', (amount, currency, text) => {
    expect(fixedMoney(decimal(amount), currency)).toBe(text);
  });

  it('knows the smallest coin and what is finer than it', () => {
    expect(['GBP', 'JPY', 'KWD'].map((currency) => smallestCoin(currency).toString())).toEqual(['0.01', '1', '0.001']);
    expect([isWholeCoins(decimal('4.81'), 'GBP'), isWholeCoins(decimal('4.815'), 'GBP'), isWholeCoins(decimal('0.5'), 'JPY')]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it('refuses a currency the standard does not have', () => {
    expect(() => toCoin(decimal(1), 'QQQ')).toThrow('QQQ');
  });
});

it('prints rates without needless zeros', () => {
  expect(['20', '8.250', '9.975', '23.0769230769'].map((rate) => printNumber(decimal(rate), 1))).toEqual(['20', '8.3', '10', '23.1']);
  expect(['20.00', '8.250', '9.975'].map((rate) => printNumber(decimal(rate)))).toEqual(['20', '8.25', '9.975']);
});
