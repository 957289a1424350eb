// Packs and what is in them, as people say it: "50 stems", "3 bunches of 50", "1 spool of 8 yd".

import { type Item, isSundry } from '../../buying/item.ts';

const pluralOf = (word: string): string => {
  if (word === 'leaf') return 'leaves';
  return /(x|ch|s|sh)$/.test(word) ? `${word}es` : `${word}s`;
};

/** "50 stems", "1 pin", "8 yd": a unit of length or weight has no plural. */
export const inUnit = (count: string, item: Item): string => {
  const { unit } = item;
  // Magnets in a box of 50 are no stems.
  if (unit.name === 'stem' && isSundry(item)) return count;
  return `${count} ${unit.measure !== 'count' || count === '1' ? unit.name : pluralOf(unit.name)}`;
};

/** One of what the price counts: "each", "a yd". */
export const perUnit = ({ unit }: Item): string => (unit.measure === 'count' ? 'each' : `a ${unit.name}`);

/** "3 bunches of 50", "1 spool of 8 yd", "66" for what is sold one by one. */
export const packsWords = (packs: number, item: Item): string => {
  if (item.size.eq(1) && item.pack === undefined) return inUnit(String(packs), item);
  const pack = item.pack ?? 'pack';
  const size = item.unit.measure === 'count' ? item.size.toFixed() : inUnit(item.size.toFixed(), item);
  return `${packs} ${packs === 1 ? pack : pluralOf(pack)} of ${size}`;
};
