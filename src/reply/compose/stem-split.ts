// The stems money over the ingredients, in a line a kind: what the recipe takes of it, or, where there is none yet, what each ingredient may cost were
// there five of them or six.

import { fiveAndSix } from '../../buying/recipe-cost.ts';
import type { PricedLine, PricedOrder } from '../../pricing/price-order.ts';
import { recipeOf } from '../../thread/apply-recipe.ts';
import { minorUnits } from '../../values/currency.ts';
import type { Decimal } from '../../values/decimal.ts';
import { roundTo } from '../../values/rounding.ts';
import type { Answer } from '../answer.ts';
import type { Line } from '../reply.ts';
import { moneySpan, text } from '../span.ts';
import { plural } from '../words/names.ts';
import { costBatch, costedBatches } from './cost-batch.ts';
import { costLine } from './recipe-cost.ts';

/** For the price answer: recipes in a line each; the split only where one kind is priced, for the answer has to fit one screen. */
export const recipeInShort = (priced: PricedOrder, answer: Answer): readonly Line[] => {
  const costs = costedBatches(answer.event).flatMap((batch) => {
    const { cost, line } = costBatch(batch, answer, answer.quotedPrices());
    return cost.rows.length > 0 && line !== undefined ? [costLine(batch, cost, line, answer)] : [];
  });
  return costs.length > 0 || priced.lines.length > 1 ? costs : splitLines(priced, answer);
};

/** One line for each kind without a recipe whose price leaves something for stems. */
export const splitLines = (priced: PricedOrder, answer: Answer): readonly Line[] => {
  const kinds = [...new Map(priced.lines.map((line) => [line.piece, line])).values()];
  return kinds
    .filter((line) => recipeOf(answer.event, line.piece).length === 0 && line.each.exact.stems.gt(0))
    .map((line) => splitLine(line, answer, kinds.length > 1));
};

/** Rounded down, so that five such ingredients never cost more than there is. */
const splitLine = (line: PricedLine, { manner, studio }: Answer, named: boolean): Line => {
  const { five, six } = fiveAndSix(line.each.exact.stems);
  const about = (amount: Decimal) => moneySpan(manner.money(roundTo(amount, minorUnits(studio.settings.currency) ?? 2, 'down')));
  return text`Five ingredients: about ${about(five)} each; six: ${about(six)}${named ? ` (${plural(line.piece, manner.says)})` : ''}.`;
};
