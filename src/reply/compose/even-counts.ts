// The counts at which packs come out even, for an order of one kind: "44 take the same packs as 40; up to 50 for £6.50 more".

import { buyForEvents } from '../../buying/buy-for-events.ts';
import type { BuyingList } from '../../buying/buying-list.ts';
import { evenCounts } from '../../buying/even-counts.ts';
import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { moneySpan, strong, text } from '../span.ts';

/** Larger orders are not counted up piece by piece: the answer would come late, and a few more pieces matter less. */
const mostPieces = 300;

export const evenCountBlocks = (list: BuyingList, answer: Answer): readonly Block[] => {
  const [line, another] = answer.event.lines;
  const settled = list.missing.length > 0 || list.rows.some((row) => row.status !== 'to order');
  if (!line || another || settled || line.count > mostPieces) return [];
  const prices = answer.prices();
  const listAt = (count: number): BuyingList =>
    buyForEvents([{ id: '', state: { ...answer.event, lines: [{ ...line, count }] }, orderBy: undefined }], prices);
  const even = evenCounts(line.count, listAt, 1);
  if (!even) return [];
  const { samePacks, next } = even;
  const same = samePacks.count > line.count ? text`${strong(String(samePacks.count))} take the same packs as ${line.count}` : [];
  const [more] = next;
  const dearer = more
    ? text`${same.length > 0 ? '; up' : 'Up'} to ${more.count} for ${moneySpan(answer.manner.money(more.spend.minus(samePacks.spend)))} more`
    : [];
  return same.length + dearer.length > 0 ? [{ block: 'line', line: text`${same}${dearer}.` }] : [];
};
