// The shape of a dated tax rate: what it applies to, from when, whether it is law yet, and who says so.

import type { Material } from './pieces.ts';
import type { Source } from './sources.ts';

/** One tax of the rate; Québec's two are shown, and rounded, apart. Percent as decimal text. */
export interface TaxPart {
  readonly name: string;
  readonly rate: string;
}

export interface TaxRate {
  readonly regime: string;
  readonly materials?: readonly Material[]; // left out: whatever the piece is made of
  readonly parts: readonly TaxPart[];
  readonly from: string; // YYYY-MM-DD, the first day it applies
  readonly status: 'law' | 'plan'; // a plan is told, never applied
  readonly source: Source;
  readonly note?: string; // what the accountant should look at: a whole sentence, shown as it stands
}
