// A recipe against the stems money: a row an ingredient, over or under, and what would be enough to bring it back.

import { type Batch, batchesOf } from '../../buying/batches.ts';
import { usualSpare } from '../../buying/buy-for-events.ts';
import { type Cure, curesFor, stemsEach } from '../../buying/cures.ts';
import { priceToHold } from '../../buying/price-to-hold.ts';
import { type MissingPrice, priceLines } from '../../buying/priced-lines.ts';
import { type CostedLine, costPriced, type RecipeCost } from '../../buying/recipe-cost.ts';
import type { Amount } from '../../buying/recipe-lines.ts';
import type { PricedOrder } from '../../pricing/price-order.ts';
import { minorUnits } from '../../values/currency.ts';
import { zero } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, joined, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { pieceName } from '../words/names.ts';

/** One table per kind, and per wearer with lines of their own. What lacks a price is asked for; the recipe is kept. */
export const recipeCostBlocks = (answer: Answer): readonly Block[] =>
  batchesOf(answer.event)
    .filter((batch) => batch.lines.length > 0)
    .flatMap((batch) => batchBlocks(batch, answer));

const batchBlocks = (batch: Batch, answer: Answer): readonly Block[] => {
  const { manner, price, studio, event } = answer;
  const { items, unsized } = answer.prices();
  const priced = price?.ok ? price.value.priced : undefined;
  const line = priced?.lines.find((one) => one.piece === batch.piece);
  const budget = line ? { stems: line.each.exact.stems, sundries: line.each.exact.sundries } : { stems: zero, sundries: zero };
  const cost = costPriced(priceLines(batch.lines, items, unsized), budget, minorUnits(studio.settings.currency) ?? 2, usualSpare([event]));
  if (cost.rows.length === 0) return missingBlocks(cost.missing);
  return [
    { block: 'answer', line: costLine(batch, cost, line !== undefined, manner) },
    costTable(cost, line !== undefined, manner),
    ...missingBlocks(cost.missing),
    ...(priced && line && cost.over.greaterThan(0) ? overBlocks(batch, cost, priced, answer) : []),
  ];
};

const costLine = (batch: Batch, cost: RecipeCost, hasBudget: boolean, manner: Manner): Line => {
  const name = `${pieceName(batch.piece, manner.says)}${batch.wearer ? ` for the ${batch.wearer}` : ''}`;
  const stems = text`Stems for one ${name} cost ${strong(manner.money(cost.stems))}`;
  if (!hasBudget) return text`${stems}.`;
  if (cost.over.isZero()) return text`${stems}: exactly what there is.`;
  return cost.over.greaterThan(0)
    ? text`${stems}: ${strong(`${manner.money(cost.over)} over`)} the stems money.`
    : text`${stems}: ${strong(`${manner.money(cost.over.negated())} under`)} the stems money.`;
};

const amountWords = (amount: Amount): string => {
  if (amount.kind === 'stems') return amount.stems.toString();
  return amount.kind === 'cut' ? `${amount.length.toString()} ${amount.unit}` : amount.words;
};

const costTable = (cost: RecipeCost, hasBudget: boolean, manner: Manner): Block => ({
  block: 'table',
  caption: 'Recipe for one piece',
  columns: [
    { title: '', align: 'left' },
    { title: 'in each', align: 'right' },
    { title: 'one', align: 'right' },
    { title: 'cost', align: 'right' },
    ...(hasBudget ? [{ title: 'share', align: 'right' as const }] : []),
  ],
  rows: cost.rows.map((row) => costRow(row, hasBudget, manner)),
});

const costRow = (row: CostedLine, hasBudget: boolean, manner: Manner): readonly Line[] => [
  text`${row.assumedItem ? assumedSpan(row.item.name) : ownWords(row.item.name)}`,
  plainLine(amountWords(row.line.amount)),
  [moneySpan(manner.money(row.unitCostShown))],
  [moneySpan(manner.money(row.cost))],
  ...(hasBudget ? [plainLine(row.share ? `${printNumber(row.share, 0)} %` : '')] : []),
];

const whyMissing: { readonly [why in MissingPrice['why']]: string } = {
  'no price': 'not on the price list',
  'no pack size': 'how many are in a pack?',
  'sold by length': 'sold by length: say how long each is cut',
  'sold by count': 'sold by the piece: say how many',
  'sold by weight': 'sold by weight: say how many stems a pack makes',
  'unit unclear': 'I do not know that unit',
  'longer than a pack': 'one cut is longer than a pack',
};

export const missingBlocks = (missing: readonly MissingPrice[]): readonly Block[] => {
  if (missing.length === 0) return [];
  const items = missing.map(({ ingredient, why, nearest }) => {
    const near =
      nearest.length > 0
        ? text` (on the list: ${joined(
            nearest.map((name) => [ownWords(name)]),
            ', ',
          )})`
        : [];
    return text`${ownWords(ingredient)}: ${whyMissing[why]}${near}`;
  });
  return [{ block: 'list', title: text`Not costed yet; the recipe is kept. Say prices like “statice 4.80 a bunch of 10”.`, items }];
};

const cureWords = (cure: Cure, manner: Manner): Line => {
  const each = moneySpan(manner.money(cure.each));
  if (cure.cure === 'fewer') return text`${cure.to.toString()} ${ownWords(cure.item)} instead of ${cure.from.toString()}: ${each}`;
  if (cure.cure === 'swap') return text`${ownWords(cure.for)} for the ${ownWords(cure.item)}: ${each}`;
  return text`leave out the ${ownWords(cure.item)}: ${each}`;
};

/** What is enough by itself: one change to the recipe, or the price that holds it. */
const overBlocks = (batch: Batch, cost: RecipeCost, priced: PricedOrder, answer: Answer): readonly Block[] => {
  const { manner } = answer;
  const line = priced.lines.find((one) => one.piece === batch.piece);
  if (!line) return [];
  const { items } = answer.prices();
  const cures = curesFor(batch.lines, items, line.each.exact.stems, stemsEach(items)).map((cure) => cureWords(cure, manner));
  const held = priceToHold(cost, { piece: batch.piece, ...(line.material ? { material: line.material } : {}) }, priced.terms);
  const price = held.ok ? [text`keep it and charge ${strong(manner.money(held.value.price))} each`] : [];
  return [{ block: 'list', title: text`One of these is enough:`, items: [...cures, ...price] }];
};
