// Amounts and packs as people say them.
import { describe, expect, it } from 'vitest';
import type { Item } from '../../../src/buying/item.ts';
import { recipeLine } from '../../../src/buying/recipe-lines.ts';
import { demandOf, nothingInHand, wholePacks } from '../../../src/buying/whole-packs.ts';
import { amountOf, amountWords, inUnit, packsWords } from '../../../src/reply/words/packs.ts';
import { decimal, zero } from '../../../src/values/decimal.ts';

const bunch: Item = { name: 'Rose', packPrice: decimal('11'), size: decimal(10), unit: { measure: 'count', name: 'stem' }, pack: 'bunch' };
const spool: Item = {
  name: 'Ribbon',
  packPrice: decimal('11.20'),
  size: decimal(8),
  unit: { measure: 'length', name: 'yd' },
  pack: 'spool',
};
const loose: Item = { name: 'Twigs', packPrice: zero, size: decimal(1), unit: { measure: 'count', name: 'twig' } };

describe('packs', () => {
  it.each([
    [packsWords(3, bunch), '3 bunches of 10'],
    [packsWords(1, bunch), '1 bunch of 10'],
    [packsWords(2, spool), '2 spools of 8 yd'],
    [packsWords(7, loose), '7 twigs'],
    [inUnit('1', bunch), '1 stem'],
    [inUnit('13.13', spool), '13.13 yd'],
  ])('%s', (said, expected) => expect(said).toBe(expected));
});

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
    expect(wholePacks(bunch, demandOf(pieces, line.amount), zero, nothingInHand).need.toFixed()).toBe(need);
  });

  it('halves a length: 30 cm makes 2', () => {
    const ribbon = recipeLine({ ingredient: 'ribbon', length: 30, unit: 'cm', makes: 2 });
    expect(ribbon && amountWords(ribbon.amount)).toBe('15 cm');
  });
});
