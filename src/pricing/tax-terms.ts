// The tax an event is priced with, and how each part of it came to be known.
// Tax is the accountant's business: every reply names the rate and the basis that were used.

import type { Material } from '../handbook/pieces.ts';
import type { Source } from '../handbook/sources.ts';
import type { Day } from '../values/day.ts';
import type { Decimal } from '../values/decimal.ts';
import type { Known } from '../values/known.ts';
import type { RoundingRule } from '../values/rounding.ts';

export type TaxBasis = 'included' | 'on top' | 'none';

export interface TaxTerms {
  readonly regime: string;
  readonly name: string; // "VAT", "GST + QST"
  readonly rate: Known<Decimal>; // percent, all parts together
  readonly parts: readonly { readonly name: string; readonly rate: Decimal }[]; // each is rounded apart
  readonly basis: Known<TaxBasis>;
  readonly rounding: RoundingRule;
  readonly level: Known<'invoice' | 'line'>;
  readonly cashHalf: 'up' | 'down';
  readonly source: Source;
  readonly decidedBy?: Material; // the rate follows from this material
  readonly note?: string; // what the handbook warns of
  readonly rateUnset?: true; // added on top at a rate nobody has set: shown as zero, and said
  readonly notRegistered?: true; // the studio charges no tax, whatever the message says
  readonly changes: readonly TaxChange[]; // between today and the event
}

export interface TaxChange {
  readonly day: Day;
  readonly rate: Decimal;
  readonly status: 'law' | 'plan'; // law: already applied here; plan: not applied
  readonly source: Source;
}

export interface TaxSaid {
  readonly basis?: TaxBasis;
  readonly rate?: string;
  readonly name?: string;
}
