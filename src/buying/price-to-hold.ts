// The price that would hold a recipe as it is: pricing's own way from cost to price, fed with what the recipe costs.

import type { PriceLine } from '../pricing/order.ts';
import { priceForStems, type WorkedOutPrice } from '../pricing/price-for.ts';
import type { PriceTerms } from '../pricing/price-terms.ts';
import type { Result } from '../values/result.ts';
import type { RecipeCost } from './recipe-cost.ts';

/** For one piece of this kind. A recipe that names its own sundries pays for those; otherwise the studio's sundries for the kind. */
export const priceToHold = (cost: RecipeCost, line: Pick<PriceLine, 'piece' | 'material'>, terms: PriceTerms): Result<WorkedOutPrice> =>
  cost.rows.some((row) => row.sundry) ? priceForStems(line, cost.stems, terms, cost.sundries) : priceForStems(line, cost.stems, terms);
