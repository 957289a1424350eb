// "Price list": what the studio pays, an item a row, or how to say the first price. What is priced by the bunch without its size is named, for it costs nothing yet.

import type { Item } from '../../buying/item.ts';
import { unitCost, unitCostShown } from '../../buying/unit-cost.ts';
import { minorUnits } from '../../values/currency.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { joined, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { inUnit } from '../words/packs.ts';

const mostRows = 60; // more than that is read in the file it came from

export const pricesHeldBlocks = (answer: Answer): readonly Block[] => {
  const { items, unsized } = answer.prices();
  const ask = unsizedBlocks(unsized);
  if (items.length === 0) {
    return [
      { block: 'answer', line: text`The price list is empty${unsized.length > 0 ? ' but for what is named below' : ''}.` },
      ...ask,
      { block: 'next', line: text`Say a price, like “statice 7.50 wrap of 10”, or drop a CSV file.` },
    ];
  }
  const sorted = [...items].sort((a, b) => a.name.localeCompare(b.name, 'en'));
  const more = items.length - mostRows;
  return [
    { block: 'answer', line: text`${strong(items.length === 1 ? '1 item' : `${items.length} items`)} on the price list.` },
    priceTable(sorted.slice(0, mostRows), answer),
    ...(more > 0 ? [{ block: 'assumed' as const, line: plainLine(`And ${more} more.`) }] : []),
    ...ask,
  ];
};

const unsizedBlocks = (names: readonly string[]): readonly Block[] =>
  names.length === 0
    ? []
    : [
        {
          block: 'problem',
          line: text`How many are in a pack of ${joined(
            names.slice(0, 5).map((name) => [ownWords(name)]),
            ', ',
          )}? Until then it costs nothing here.`,
        },
      ];

const priceTable = (items: readonly Item[], answer: Answer): Block => {
  const suppliers = items.some(({ supplier }) => supplier !== undefined);
  return {
    block: 'table',
    caption: 'Price list',
    columns: [
      { title: '', align: 'left' },
      { title: 'pack', align: 'right' },
      { title: 'holds', align: 'right' },
      { title: 'one', align: 'right' },
      ...(suppliers ? [{ title: 'from', align: 'left' as const }] : []),
    ],
    rows: items.map((item) => [...itemCells(item, answer), ...(suppliers ? [item.supplier ? text`${ownWords(item.supplier)}` : []] : [])]),
  };
};

const itemCells = (item: Item, { manner, studio }: Answer): readonly Line[] => [
  text`${ownWords(item.name)}`,
  [moneySpan(manner.money(item.packPrice))],
  plainLine(inUnit(item.size.toFixed(), item)),
  [moneySpan(manner.money(unitCostShown(unitCost(item.packPrice, item.size), minorUnits(studio.settings.currency) ?? 2)))],
];
