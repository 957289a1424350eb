// Labour and multiples for a kind of piece: the event's rule for the kind, else for every kind, else the studio's setting, else our default.
// Thirty in a hundred on product and four times on what is bought are common practice, no source.

import type { PieceKind } from '../handbook/pieces.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { type EventRule, ruleFor } from '../thread/rule-for.ts';
import { minorUnits } from '../values/currency.ts';
import { type Decimal, decimal } from '../values/decimal.ts';
import { assumed, fromStudio, type Known, said } from '../values/known.ts';
import { isLabourRule } from './event-rules.ts';
import type { LabourRule } from './labour-share.ts';
import type { PieceTerms } from './price-terms.ts';

const defaults = { share: decimal(30), multiple: decimal(4), step: decimal('0.50') };

/** A figure by rule, setting or default, in that order. */
export const numberFor = (rule: EventRule | undefined, setting: string | undefined, otherwise: Decimal): Known<Decimal> => {
  if (rule) return said(decimal(rule.to));
  return setting === undefined ? assumed(otherwise) : fromStudio(decimal(setting));
};

const ruleName = (rule: EventRule | undefined, setting: LabourRule | undefined): Known<LabourRule> => {
  if (rule && isLabourRule(rule.to)) return said(rule.to);
  return setting === undefined ? assumed('on product') : fromStudio(setting);
};

/** Half a pound, euro or dollar; ten units where the currency has no coins below its unit. */
export const defaultStep = (currency: string): Decimal => (minorUnits(currency) === 0 ? decimal(10) : defaults.step);

/** The terms for one kind, or for every kind. */
export const pieceTerms = (settings: StudioSettings, rules: readonly EventRule[], piece?: PieceKind): Required<PieceTerms> => {
  const of = (what: EventRule['what']) => ruleFor(rules, what, piece);
  return {
    labour: {
      rule: ruleName(of('labour rule'), settings.labour?.rule),
      share: numberFor(of('labour share'), settings.labour?.share, defaults.share),
    },
    multiples: {
      stems: numberFor(of('stems multiple') ?? of('multiple'), settings.multiples?.stems, defaults.multiple),
      sundries: numberFor(of('sundries multiple') ?? of('multiple'), settings.multiples?.sundries, defaults.multiple),
    },
  };
};
