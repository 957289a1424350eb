// A recipe that costs more than its stems money: the single changes that are enough, and the price that would hold it as it is.

import { amountOf } from '../../buying/amount-words.ts';
import type { Batch } from '../../buying/batches.ts';
import { type Cure, curesFor } from '../../buying/cures.ts';
import { priceToHold } from '../../buying/price-to-hold.ts';
import type { RecipeCost } from '../../buying/recipe-cost.ts';
import type { PricedLine } from '../../pricing/price-order.ts';
import { type Decimal, zero } from '../../values/decimal.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { moneySpan, ownWords, strong, text } from '../span.ts';

/** Sundries beyond those planned for the piece have to come out of the stems money. */
const stolen = (cost: RecipeCost): Decimal => (cost.sundriesOver.gt(0) ? cost.sundriesOver : zero);

export const isOver = (cost: RecipeCost): boolean => cost.over.plus(stolen(cost)).gt(0);

/** The price pays for the sundries planned even where a recipe names fewer: tape and wire are seldom in one. */
export const overBlocks = (batch: Batch, cost: RecipeCost, line: PricedLine, answer: Answer): readonly Block[] => {
  const { manner, price } = answer;
  if (!price?.ok) return [];
  const { items } = answer.quotedPrices();
  const cures = curesFor(batch.lines, items, line.each.exact.stems.minus(stolen(cost))).map((cure) => cureWords(cure, manner));
  const sundries = line.each.exact.sundries.plus(stolen(cost));
  const held = priceToHold(
    { ...cost, sundries },
    { piece: batch.piece, ...(line.material ? { material: line.material } : {}) },
    price.value.priced.terms,
  );
  const charge = held.ok ? [text`Keep it and charge ${strong(manner.money(held.value.price))} each`] : [];
  const enough = [...cures, ...charge];
  if (enough.length === 0) return [];
  return [{ block: 'list', title: enough.length === 1 ? text`This is enough:` : text`Any one of these is enough:`, items: enough }];
};

const cureWords = (cure: Cure, manner: Manner): Line => {
  const each = moneySpan(manner.money(cure.each));
  if (cure.cure === 'fewer') return text`${ownWords(cure.item)}: ${amountOf(cure.to)} instead of ${amountOf(cure.from)} (${each} of stems)`;
  if (cure.cure === 'swap') return text`${ownWords(cure.for)} instead of ${ownWords(cure.item)} (${each})`;
  return text`Leave out ${ownWords(cure.item)} (${each})`;
};
