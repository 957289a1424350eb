// Packs as people say them.
import { describe, expect, it } from 'vitest';
import type { Item } from '../../../src/buying/item.ts';
import { inUnit, packsWords } from '../../../src/reply/words/packs.ts';
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
