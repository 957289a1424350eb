// The buying list: whole packs by supplier and order day, what is left over, and whether the packs stay inside the wholesale money.

import { nothingToBuy } from '../../buying/buy-for-events.ts';
import type { BuyGroup, BuyingList, BuyRow } from '../../buying/buying-list.ts';
import { shownDown, shownUp } from '../../buying/shown-quantity.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { missingBlocks } from './recipe-cost.ts';

export const buyingBlocks = (list: BuyingList, answer: Answer): readonly Block[] => {
  if (nothingToBuy(list)) return [{ block: 'answer', line: text`There is no recipe to buy for yet. Say “3 bunny tails, 1 statice each”.` }];
  const { manner } = answer;
  return [
    { block: 'answer', line: spendLine(list, answer) },
    ...list.groups.map((group) => groupTable(group, manner)),
    ...missingBlocks(list.missing),
    ...(list.saving.greaterThan(0)
      ? [{ block: 'line' as const, line: text`Buying for all events together saves ${strong(manner.money(list.saving))}.` }]
      : []),
    ...(list.piecesWithoutRecipe > 0
      ? [{ block: 'assumed' as const, line: text`${list.piecesWithoutRecipe} pieces have no recipe yet and are not in this list.` }]
      : []),
  ];
};

/** The spend, and against the wholesale money where this one event is meant and has a price. */
const spendLine = (list: BuyingList, { manner, price }: Answer): Line => {
  const each = list.each ? text`, ${moneySpan(manner.money(list.each))} a piece` : [];
  const room = price?.ok && !price.value.onePiece ? price.value.priced.all.exact.wholesale : undefined;
  const over = room?.minus(list.spend);
  const against =
    over === undefined
      ? []
      : over.isNegative()
        ? text`: ${strong(`${manner.money(over.negated())} more`)} than there is to spend`
        : text`: ${manner.money(over)} inside what there is to spend`;
  return text`${strong(manner.money(list.spend))} for whole packs${each}${against}.`;
};

const groupTable = (group: BuyGroup, manner: Manner): Block => {
  const who = group.supplier ?? 'No supplier named';
  const when = group.orderBy ? `, order by ${shortDate(group.orderBy, manner)}` : '';
  return {
    block: 'table',
    caption: `${who}${when}`,
    columns: [
      { title: `${who}${when}`, align: 'left' },
      { title: 'need', align: 'right' },
      { title: 'packs', align: 'right' },
      { title: 'spend', align: 'right' },
      { title: 'left', align: 'right' },
    ],
    rows: group.rows.map((row) => buyRow(row, manner)),
  };
};

const buyRow = (row: BuyRow, manner: Manner): readonly Line[] => [
  text`${ownWords(row.item.name)}${row.status === 'to order' ? '' : ` (${row.status})`}`,
  plainLine(shownUp(row.need)),
  plainLine(`${row.packs} × ${row.item.size.toString()}${row.item.unit.measure === 'length' ? ` ${row.item.unit.name}` : ''}`),
  [moneySpan(manner.money(row.spend))],
  plainLine(shownDown(row.left)),
];

/** "How many stems of statice do I order?": the one row. */
export const itemLine = (row: BuyRow, manner: Manner): Line => {
  const day = row.orderBy ? text`, order by ${dateSpan(shortDate(row.orderBy, manner))}` : [];
  return text`${strong(`${shownUp(row.need)} ${row.item.name}`)}: ${row.packs} packs of ${row.item.size.toString()}, ${moneySpan(manner.money(row.spend))}, ${shownDown(row.left)} left over${day}.`;
};
