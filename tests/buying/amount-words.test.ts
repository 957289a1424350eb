// Amounts in one piece as people say them, exact from the message to the packs.
import { describe, expect, it } from 'vitest';
import { amountOf, amountWords } from '../../src/buying/amount-words.ts';
import { recipeLine } from '../../src/buying/recipe-lines.ts';
import { demandOf, nothingInHand, wholePacks } from '../../src/buying/whole-packs.ts';
import { decimal, zero } from '../../src/values/decimal.ts';
import { bunch } from './price-rows.ts';

describe('amounts in one piece', () => {
  it.each([
    [decimal(3), '3'],
    [decimal('0.5'), '0.5'],
    [decimal('0.25'), '0.25'],
    [decimal(2).div(3), '2/3'],
    [decimal(5).div(3), '1 2/3'],
    [decimal(1).div(7), '1/7'],
    [decimal('0.333'), '0.33'], // said so, not a third
  ])('%s', (amount, expected) => expect(amountOf(amount)).toBe(expected));
});

describe('"2 stems makes 3" stays exact from the message to the packs', () => {
  const line = recipeLine({ ingredient: 'rose', stems: 2, makes: 3 });

  it('is two thirds of a stem', () => expect(line && amountWords(line.amount)).toBe('2/3'));

  it.each([
    [3, '2'],
    [42, '28'],
    [43, '29'], // 28 2/3
    [3000, '2000'],
  ])('%i pieces need %s stems', (pieces, need) => {
    if (!line) throw new Error('no line');
    expect(wholePacks(bunch('rose', '11', 10), demandOf(pieces, line.amount), zero, nothingInHand).need.toFixed()).toBe(need);
  });

  it('halves a length: 30 cm makes 2', () => {
    const ribbon = recipeLine({ ingredient: 'ribbon', length: 30, unit: 'cm', makes: 2 });
    expect(ribbon && amountWords(ribbon.amount)).toBe('15 cm');
  });
});
