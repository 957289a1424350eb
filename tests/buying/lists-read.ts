// Price lists read in tests: their items, an item in a few words, the faults of their rows.

import type { Item } from '../../src/buying/item.ts';
import { readPriceList } from '../../src/buying/read-price-list.ts';

export const readList = (csv: string, currency = 'GBP') => readPriceList(csv, { currency });

export const itemsOf = (csv: string, currency = 'GBP'): readonly Item[] => {
  const result = readList(csv, currency);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value.items;
};

export const shortly = (item: Item | undefined) =>
  item &&
  `${item.name} ${item.packPrice.toFixed(2)} / ${item.size.toFixed()} ${item.unit.name}${item.pack === undefined ? '' : ` a ${item.pack}`}`;

export const faultsOf = (csv: string) => {
  const result = readList(csv);
  if (result.ok || result.problem.code !== 'price-list-rows-wrong') throw new Error(JSON.stringify(result));
  return result.problem.data.faults.map(({ line, column, why }) => `${line} ${column}: ${why}`);
};
