// A recipe against the stems money: a row an ingredient, over or under, and what would be enough to bring it back. At the prices the event was quoted.

import { amountWords } from '../../buying/amount-words.ts';
import type { Batch } from '../../buying/batches.ts';
import type { CostedLine, RecipeCost } from '../../buying/recipe-cost.ts';
import type { PricedLine } from '../../pricing/price-order.ts';
import { allocate } from '../../values/allocate.ts';
import type { Decimal } from '../../values/decimal.ts';
import { printFine, printNumber, smallestCoin, toCoin } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { pieceName } from '../words/names.ts';
import { type BatchCost, costBatch, costedBatches } from './cost-batch.ts';
import { missingBlocks } from './missing-prices.ts';
import { isOver, overBlocks } from './over-budget.ts';
import { sinceQuotedBlocks } from './since-quoted.ts';

/**
 * One table per kind, for the piece most are made of; a wearer's own is told in a line. What lacks a price is asked for; the recipe is kept.
 */
export const recipeCostBlocks = (answer: Answer): readonly Block[] => {
  const batches = costedBatches(answer.event);
  const main = new Map([...batches].reverse().map((batch) => [batch.piece, batch]));
  const costs = batches.map((batch) => ({ batch, ...costBatch(batch, answer, answer.quotedPrices()) }));
  return [
    ...costs.flatMap((one) => (main.get(one.batch.piece) === one.batch ? mainBlocks(one, answer) : ownBlocks(one, answer))),
    ...missingBlocks(costs.flatMap(({ cost }) => cost.missing)),
    ...sinceQuotedBlocks(answer),
  ];
};

interface Costed extends BatchCost {
  readonly batch: Batch;
}

const ownBlocks = ({ batch, cost, line }: Costed, answer: Answer): readonly Block[] =>
  cost.rows.length === 0 ? [] : [{ block: 'line', line: costLine(batch, cost, line, answer) }];

const mainBlocks = ({ batch, cost, line }: Costed, answer: Answer): readonly Block[] => {
  if (cost.rows.length === 0) return [];
  const over = line && isOver(cost) ? overBlocks(batch, cost, line, answer) : [];
  const sundries = noneOfItsOwn(cost, line) ? undefined : sundriesLine(cost, line !== undefined, answer.manner);
  return [
    { block: 'answer', line: costLine(batch, cost, line, answer) },
    costTable(cost, line !== undefined, answer),
    ...roundedNote(cost, answer),
    ...(sundries ? [{ block: 'line' as const, line: sundries }] : []),
    ...over,
  ];
};

const against = (over: Decimal, of: Line, manner: Manner): Line => {
  // Less than the smallest coin apart: it fits, or it does not, and which of the two is said.
  if (manner.money(over.abs()) === manner.money('0'))
    return over.greaterThan(0) ? text`: a fraction of a coin over the ${of}` : text`: it fits the ${of}`;
  return over.greaterThan(0)
    ? text`: ${strong(`${manner.money(over)} over`)} the ${of}`
    : text`: ${strong(`${manner.money(over.negated())} under`)} the ${of}`;
};

/** No money is set aside for sundries, so those of the recipe come out of the same money as its stems. */
const noneOfItsOwn = (cost: RecipeCost, line: PricedLine | undefined): boolean =>
  (line?.each.exact.sundries.isZero() ?? false) && cost.sundries.greaterThan(0);

/** "Each buttonhole takes £1.95 of stems: £1.31 under the £3.26 there is." */
export const costLine = (batch: Batch, cost: RecipeCost, line: PricedLine | undefined, { manner }: Answer): Line => {
  const name = pieceName(batch.piece, manner.says);
  const who = batch.wearer === undefined ? [] : text` for the ${ownWords(batch.wearer)}`;
  const both = noneOfItsOwn(cost, line);
  const over = both ? cost.over.plus(cost.sundries) : cost.over;
  const room = line ? against(over, text`${moneySpan(manner.money(line.each.exact.stems))} there is`, manner) : [];
  const of = both ? text` of stems and ${strong(manner.money(cost.sundries))} of sundries` : text` of stems`;
  return text`Each ${name}${who} takes ${strong(manner.money(cost.stems))}${of}${cost.missing.length > 0 ? ' so far' : ''}${room}.`;
};

const sundriesLine = (cost: RecipeCost, hasBudget: boolean, manner: Manner): Line | undefined => {
  if (!cost.rows.some((row) => row.sundry)) return undefined;
  const planned = cost.sundries.minus(cost.sundriesOver);
  const room = hasBudget ? against(cost.sundriesOver, text`${moneySpan(manner.money(planned))} planned`, manner) : [];
  return text`Sundries from the list come to ${moneySpan(manner.money(cost.sundries))}${room}.`;
};

const costTable = (cost: RecipeCost, hasBudget: boolean, answer: Answer): Block => {
  const stems = cost.rows.filter((row) => !row.sundry);
  const sundries = cost.rows.filter((row) => row.sundry);
  return {
    block: 'table',
    caption: 'Recipe for one piece',
    columns: [
      { title: '', align: 'left' },
      { title: 'in it', align: 'right' },
      { title: 'one', align: 'right' },
      { title: 'cost', align: 'right' },
      ...(hasBudget ? [{ title: 'share', align: 'right' as const }] : []),
    ],
    rows: [...costRows(stems, cost.stems, hasBudget, answer), ...costRows(sundries, cost.sundries, hasBudget, answer)],
  };
};

/** Printed costs add up to the printed total, as every column here does. */
const costRows = (rows: readonly CostedLine[], total: Decimal, hasBudget: boolean, answer: Answer): readonly (readonly Line[])[] => {
  const { manner, studio } = answer;
  const { currency } = studio.settings;
  const weights = rows.map((row) => row.cost);
  const printed = total.isZero() ? weights : allocate(toCoin(total, currency), weights, smallestCoin(currency));
  return rows.map((row, at) => [
    text`${row.assumedItem ? assumedSpan(row.item.name) : ownWords(row.item.name)}`,
    plainLine(amountWords(row.line.amount)),
    [moneySpan(unitWords(row, answer))],
    [moneySpan(manner.money(printed[at] ?? row.cost))],
    ...(hasBudget ? [plainLine(row.share ? `${printNumber(row.share, 0)} %` : '')] : []),
  ]);
};

const finest = 4; // decimals of the unit cost shown: the usual prices of the usual packs end there

/** How many of the unit are in one piece; a cut counts as one. */
const countOf = ({ line, unitCost, cost }: CostedLine): Decimal =>
  line.amount.kind === 'stems' ? line.amount.stems : unitCost.isZero() ? cost : cost.div(unitCost);

/** Up to the coin, unless that times the count is not the cost: then exactly, where it ends. */
const unitWords = (row: CostedLine, { manner, studio }: Answer): string => {
  const shown = manner.money(row.unitCostShown);
  if (manner.money(row.unitCostShown.times(countOf(row))) === manner.money(row.cost) || row.unitCost.decimalPlaces() > finest) return shown;
  return printFine(row.unitCost, studio.settings.currency, finest);
};

const roundedNote = (cost: RecipeCost, { manner }: Answer): readonly Block[] =>
  cost.rows.some(
    (row) => row.unitCost.decimalPlaces() > finest && manner.money(row.unitCostShown.times(countOf(row))) !== manner.money(row.cost),
  )
    ? [{ block: 'assumed', line: text`What one costs is rounded up; the cost is worked out from the exact price, then rounded.` }]
    : [];
