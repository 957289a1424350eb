// The cost of one batch's piece against the money its own price leaves.

import { type Batch, batchesOf } from '../../buying/batches.ts';
import { usualSpare } from '../../buying/buy-for-events.ts';
import type { PriceList } from '../../buying/price-list.ts';
import { priceLines } from '../../buying/priced-lines.ts';
import { costRecipe, type RecipeCost } from '../../buying/recipe-cost.ts';
import type { PricedLine } from '../../pricing/price-order.ts';
import type { EventState } from '../../thread/event.ts';
import { minorUnits } from '../../values/currency.ts';
import { zero } from '../../values/decimal.ts';
import type { Answer } from '../answer.ts';

export interface BatchCost {
  readonly cost: RecipeCost;
  readonly line: PricedLine | undefined; // whose money it may use: the wearer's own line, else the first of its kind
}

/** Before anything is ordered a recipe can be costed all the same. */
const oneOfEach = ({ recipes }: EventState): EventState['lines'] =>
  (Object.keys(recipes) as (keyof EventState['recipes'])[]).map((kind) => ({ piece: kind === 'any' ? 'unspecified' : kind, count: 1 }));

/** Those with a recipe, everyone's before a wearer's own. */
export const costedBatches = (event: EventState): readonly Batch[] =>
  batchesOf(event.lines.length > 0 ? event : { ...event, lines: oneOfEach(event) })
    .filter((batch) => batch.lines.length > 0)
    .sort((a, b) => Number(a.wearer !== undefined) - Number(b.wearer !== undefined));

export const costBatch = (batch: Batch, { price, studio, event }: Answer, { items, unsized }: PriceList): BatchCost => {
  const lines = price?.ok ? price.value.priced.lines.filter((one) => one.piece === batch.piece) : [];
  const line = lines.find((one) => one.wearer?.toLowerCase() === batch.wearer?.toLowerCase()) ?? lines[0];
  const budget = line ? { stems: line.each.exact.stems, sundries: line.each.exact.sundries } : { stems: zero, sundries: zero };
  const digits = minorUnits(studio.settings.currency) ?? 2;
  return { line, cost: costRecipe(priceLines(batch.lines, items, unsized), budget, digits, usualSpare([event])) };
};
