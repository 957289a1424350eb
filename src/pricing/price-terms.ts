// What an order is priced with besides its own prices, each figure with how it came to be known.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { EventRule } from '../thread/rule-for.ts';
import type { Decimal } from '../values/decimal.ts';
import type { Known } from '../values/known.ts';
import type { LabourRule } from './labour-share.ts';
import type { TaxTerms } from './tax-terms.ts';
import type { WageCost } from './wage-cost.ts';

export interface PriceTerms {
  readonly currency: string; // ISO 4217
  readonly tax: TaxTerms; // of the event, or of its first line
  readonly taxByMaterial?: { readonly [material in Material]?: TaxTerms }; // where lines of other materials are taxed otherwise
  readonly labour: { readonly rule: Known<LabourRule>; readonly share: Known<Decimal> };
  readonly multiples: { readonly stems: Known<Decimal>; readonly sundries: Known<Decimal> };
  readonly forPiece?: (piece: PieceKind) => PieceTerms; // an event's rules for one kind alone
  readonly sundriesEach: (piece: PieceKind) => Known<Decimal>;
  readonly minimumPrice: (piece: PieceKind) => Known<Decimal> | undefined;
  readonly minutesEach: (piece: PieceKind) => number | undefined; // bench minutes, to share a total by
  readonly priceStep: Known<Decimal>; // worked-out prices go up to a multiple of this
  readonly cashStep?: Decimal;
  readonly wage?: WageCost;
  readonly overrides: readonly Override[];
}

export interface PieceTerms {
  readonly labour?: { readonly rule: Known<LabourRule>; readonly share: Known<Decimal> };
  readonly multiples?: { readonly stems: Known<Decimal>; readonly sundries: Known<Decimal> };
}

/** An event's own rule and what it replaces, both as decimal text or the rule's name. */
export interface Override {
  readonly what: EventRule['what'];
  readonly piece?: PieceKind;
  readonly to: string;
  readonly from: string; // "0.75 / 1.60" where it differs by kind; empty where there was none
}
