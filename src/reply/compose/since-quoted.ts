// What the price list says now about an event that keeps the prices it was quoted at.

import { type PriceChange, priceChanges } from '../../buying/price-changes.ts';
import { itemsUsed } from '../../buying/quoted-prices.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { joined, moneySpan, ownWords, text } from '../span.ts';
import { costBatch, costedBatches } from './cost-batch.ts';

/** Prices and packs of this event's ingredients that are not what they were when it was quoted. */
export const movedSinceQuoted = (answer: Answer): readonly PriceChange[] => {
  if ((answer.event.quoted ?? []).length === 0) return [];
  const quoted = answer.quotedPrices().items;
  const names = itemsUsed(answer.event, quoted).map((item) => item.name);
  return priceChanges(quoted, answer.prices().items, names).filter(({ change }) => change === 'price' || change === 'pack');
};

export const sinceQuotedBlocks = (answer: Answer): readonly Block[] => {
  const moved = movedSinceQuoted(answer);
  if (moved.length === 0) return [];
  const { manner } = answer;
  const words = joined(
    moved.map((change) => changeWords(change, manner.money)),
    ', ',
  );
  const [first] = costedBatches(answer.event);
  const today = first ? costBatch(first, answer, answer.prices()).cost.stems : undefined;
  const each = today ? text` At today's prices that is ${moneySpan(manner.money(today))} of stems each.` : [];
  return [
    {
      block: 'line',
      line: text`At the prices it was quoted at. Since then: ${words}.${each} Say the recipe again to take today's prices.`,
    },
  ];
};

export const changeWords = (change: PriceChange, money: (amount: string) => string): Line => {
  if (change.change !== 'price') return text`${ownWords(change.item)} comes in another pack`;
  return text`${ownWords(change.item)} ${moneySpan(money(change.from))} → ${moneySpan(money(change.to))}`;
};
