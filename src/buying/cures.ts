// When a recipe costs more than the price leaves for it: the single change that is enough. In the order a florist tries them: fewer of the dearest,
// another listed item of the same role, one ingredient dropped. Each is checked by costing the changed recipe again, never by subtraction.

import { type Decimal, decimal, sum } from '../values/decimal.ts';
import { type Item, isSundry } from './item.ts';
import { type PricedLine, priceLines } from './priced-lines.ts';
import { type RecipeLine, stems } from './recipe-lines.ts';
import { lineCost } from './unit-cost.ts';

export type Cure =
  | { readonly cure: 'fewer'; readonly item: string; readonly from: Decimal; readonly to: Decimal; readonly each: Decimal }
  | { readonly cure: 'swap'; readonly item: string; readonly for: string; readonly each: Decimal }
  | { readonly cure: 'drop'; readonly item: string; readonly each: Decimal };

/** Plant material in one piece by the stem, packs not made whole. */
export const stemsEach = (recipe: readonly RecipeLine[], items: readonly Item[]): Decimal =>
  sum(
    priceLines(recipe, items)
      .lines.filter(({ item }) => !isSundry(item))
      .map(({ line, item }) => lineCost(item, line.amount).each),
  );

interface Tried<C extends Cure> {
  readonly cure: C;
  readonly focal: boolean;
}

const half = decimal('0.5');
const whole = decimal(1);

/** Cures that are enough, at most one of each sort. Empty when no single change is. `budget`: wholesale stems money for one piece. */
export const curesFor = (recipe: readonly RecipeLine[], items: readonly Item[], budget: Decimal): readonly Cure[] => {
  const priced = priceLines(recipe, items).lines;
  const plants = priced
    .filter(({ item, line }) => !isSundry(item) && line.amount.kind === 'stems')
    .sort((a, b) => lineCost(b.item, b.line.amount).each.cmp(lineCost(a.item, a.line.amount).each));
  const enough = (changed: readonly RecipeLine[]): Decimal | undefined => {
    const each = stemsEach(changed, items);
    return each.lte(budget) ? each : undefined;
  };
  return [fewer(recipe, plants, enough), swap(recipe, plants, priced, items, enough), drop(recipe, plants, enough)].filter(
    (cure) => cure !== undefined,
  );
};

type Enough = (changed: readonly RecipeLine[]) => Decimal | undefined;

const replaced = (recipe: readonly RecipeLine[], line: RecipeLine, by: readonly RecipeLine[]): readonly RecipeLine[] =>
  recipe.flatMap((one) => (one === line ? by : [one]));

/** The fewest stems taken off the dearest line that can do it. Halves only where the line already has a part of a stem. */
const fewer = (recipe: readonly RecipeLine[], plants: readonly PricedLine[], enough: Enough): Cure | undefined => {
  for (const { line, item } of plants) {
    if (line.amount.kind !== 'stems') continue;
    const from = line.amount.stems;
    const step = from.isInteger() ? whole : half;
    for (let to = from.minus(step); to.gt(0); to = to.minus(step)) {
      const each = enough(replaced(recipe, line, [stems(line.ingredient, to.toFixed())]));
      if (each !== undefined) return { cure: 'fewer', item: item.name, from, to, each };
    }
  }
  return undefined;
};

const leastLost = <C extends Cure>(tried: readonly Tried<C>[]): C | undefined =>
  [...tried].sort((a, b) => Number(a.focal) - Number(b.focal) || b.cure.each.cmp(a.cure.each))[0]?.cure;

/** The same amount of a listed item of the same role that the recipe hasn't got: of those enough, the one nearest the budget. */
const swap = (
  recipe: readonly RecipeLine[],
  plants: readonly PricedLine[],
  all: readonly PricedLine[],
  items: readonly Item[],
  enough: Enough,
): Cure | undefined => {
  const used = new Set(all.map(({ item }) => item));
  const tried = plants.flatMap(({ line, item }) =>
    items
      .filter((other) => item.role !== undefined && other.role === item.role && other.unit.measure === 'count' && !used.has(other))
      .flatMap((other): readonly Tried<Cure & { cure: 'swap' }>[] => {
        const each = enough(replaced(recipe, line, [{ ingredient: other.name, amount: line.amount }]));
        return each === undefined ? [] : [{ cure: { cure: 'swap', item: item.name, for: other.name, each }, focal: false }];
      }),
  );
  return leastLost(tried);
};

/** The ingredient whose loss is enough and leaves most; the focal flower only when nothing else will do. */
const drop = (recipe: readonly RecipeLine[], plants: readonly PricedLine[], enough: Enough): Cure | undefined => {
  if (plants.length < 2) return undefined;
  return leastLost(
    plants.flatMap(({ line, item }): readonly Tried<Cure & { cure: 'drop' }>[] => {
      const each = enough(replaced(recipe, line, []));
      return each === undefined ? [] : [{ cure: { cure: 'drop', item: item.name, each }, focal: item.role === 'focal' }];
    }),
  );
};
