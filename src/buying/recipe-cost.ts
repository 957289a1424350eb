// What a recipe costs in one piece against what the price leaves for it: a row an ingredient, sundries apart, over or under, and the line to change.
// Spares are not in a row's cost; the buying list counts them, and `withSpares` says what they add.

import { type Decimal, decimal, hundred, sum, zero } from '../values/decimal.ts';
import { type Item, isSundry } from './item.ts';
import type { MissingPrice, PricedRecipe } from './priced-lines.ts';
import type { RecipeLine } from './recipe-lines.ts';
import { lineCost, unitCostShown } from './unit-cost.ts';

/** Wholesale money one piece may use. Studio currency. */
export interface PieceBudget {
  readonly stems: Decimal;
  readonly sundries: Decimal;
}

export interface CostedLine {
  readonly line: RecipeLine;
  readonly item: Item;
  readonly assumedItem: boolean;
  readonly sundry: boolean;
  readonly unitCost: Decimal; // exact, one stem or one cut
  readonly unitCostShown: Decimal; // up to the coin
  readonly cost: Decimal; // exact, in one piece
  readonly share: Decimal | undefined; // percent of its own budget; undefined when that budget is nothing
}

export interface RecipeCost {
  readonly rows: readonly CostedLine[]; // stems first, then sundries, each in the recipe's order
  readonly stems: Decimal;
  readonly sundries: Decimal;
  readonly withSpares: Decimal; // stems and sundries, with each item's spare percentage
  readonly over: Decimal; // stems beyond the stems budget; negative when under
  readonly sundriesOver: Decimal;
  readonly toChange: CostedLine | undefined; // when over: the dearest stems line
  readonly missing: readonly MissingPrice[]; // not in the figures above
}

/** `coinDigits`: decimals of the currency (ISO 4217). */
export const costRecipe = (priced: PricedRecipe, budget: PieceBudget, coinDigits: number, usualSpare: Decimal = zero): RecipeCost => {
  const costed = priced.lines.map(({ line, item, assumed }): CostedLine => {
    const cost = lineCost(item, line.amount);
    const sundry = isSundry(item);
    const room = sundry ? budget.sundries : budget.stems;
    return {
      line,
      item,
      assumedItem: assumed,
      sundry,
      unitCost: cost.unit,
      unitCostShown: unitCostShown(cost.unit, coinDigits),
      cost: cost.each,
      share: room.gt(zero) ? cost.each.times(hundred).div(room) : undefined,
    };
  });
  const stemRows = costed.filter((row) => !row.sundry);
  const sundryRows = costed.filter((row) => row.sundry);
  const stems = sum(stemRows.map((row) => row.cost));
  const sundries = sum(sundryRows.map((row) => row.cost));
  const over = stems.minus(budget.stems);
  return {
    rows: [...stemRows, ...sundryRows],
    stems,
    sundries,
    withSpares: sum(costed.map((row) => row.cost.times(hundred.plus(spareOf(row.item, usualSpare))).div(hundred))),
    over,
    sundriesOver: sundries.minus(budget.sundries),
    toChange: over.gt(zero) ? dearest(stemRows) : undefined,
    missing: priced.missing,
  };
};

/** Percent bought beyond what goes in. The studio's usual is for plants; a sundry has spares only when its own row says so. */
export const spareOf = (item: Item, usualSpare: Decimal): Decimal => item.spare ?? (isSundry(item) ? zero : usualSpare);

/** The dearest line: a florist looks there first, and the cures start from it. */
const dearest = (rows: readonly CostedLine[]): CostedLine | undefined =>
  rows.reduce<CostedLine | undefined>((top, row) => (top === undefined || row.cost.gt(top.cost) ? row : top), undefined);

/** No recipe yet: the stems money split evenly over five and over six ingredients (common practice, no source for the number). */
export const fiveAndSix = (stemsBudget: Decimal): { readonly five: Decimal; readonly six: Decimal } => ({
  five: stemsBudget.div(decimal(5)),
  six: stemsBudget.div(decimal(6)),
});
