// How each tax regime quotes and rounds, apart from its rates: whether prices usually include the tax, and what becomes of half a coin.

import type { RoundingRule } from '../values/rounding.ts';
import type { Source } from './sources.ts';
import { calculatingGst, fromMemory, gstAct, nzHalfCent, revenuQuebec, streamlined, vatrec12020 } from './tax-sources.ts';

export interface TaxRegime {
  readonly id: string; // ISO 3166-1, with the province for Canada: GB, CA-ON
  readonly name: string; // what the tax is called when no rate is known: VAT, GST, sales tax
  readonly usual: 'included' | 'on top'; // how a price to a private client is quoted there
  readonly rounding: RoundingRule;
  readonly cashHalf: 'up' | 'down'; // half a step in a cash total
  readonly source: Source; // of the rounding
}

const regime = (
  id: string,
  name: string,
  source: Source,
  rules: Partial<Pick<TaxRegime, 'usual' | 'rounding' | 'cashHalf'>> = {},
): TaxRegime => ({ id, name, usual: 'included', rounding: 'half up', cashHalf: 'up', source, ...rules });

const regimes: readonly TaxRegime[] = [
  regime('AU', 'GST', gstAct),
  regime('NZ', 'GST', nzHalfCent, { rounding: 'half down', cashHalf: 'down' }),
  regime('GB', 'VAT', vatrec12020),
  regime('IE', 'VAT', fromMemory),
  regime('DE', 'MwSt', fromMemory),
  regime('FR', 'TVA', fromMemory),
  regime('NL', 'btw', fromMemory),
  regime('ZA', 'VAT', fromMemory),
  regime('IN', 'GST', fromMemory),
  regime('CA', 'GST', revenuQuebec, { usual: 'on top' }),
  regime('US', 'sales tax', streamlined, { usual: 'on top', rounding: 'third decimal then half up' }),
];

/** The regime of this id; a Canadian province follows CA. Undefined where the handbook has none. */
export const regimeOf = (id: string): TaxRegime | undefined => regimes.find((row) => row.id === id || id.startsWith(`${row.id}-`));

/** For a studio whose region the handbook does not know: tax included, half up. */
export const ownRegime: TaxRegime = regime('own', 'tax', calculatingGst);
