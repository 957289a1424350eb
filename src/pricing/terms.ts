// The terms one event is priced with, and how each came to be known: an event's own rule, else the studio's setting, else our default.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { FactOf } from '../reading/fact.ts';
import type { StudioSettings } from '../studio/settings.ts';
import type { EventState } from '../thread/event.ts';
import { minorUnits } from '../values/currency.ts';
import type { Day } from '../values/day.ts';
import { type Decimal, decimal, zero } from '../values/decimal.ts';
import { assumed, fromStudio, type Known, said } from '../values/known.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { isLabourRule, ruleFor, rulesProblem } from './event-rules.ts';
import type { LabourRule } from './labour-share.ts';
import { type TaxTerms, taxFor } from './tax-terms.ts';
import { type WageCost, wageCostOf } from './wage-cost.ts';

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
  readonly what: FactOf<'rule'>['what'];
  readonly piece?: PieceKind;
  readonly to: string;
  readonly from: string;
}

const defaults = { share: decimal(30), multiple: decimal(4), step: decimal('0.50') };

const number = (rule: FactOf<'rule'> | undefined, setting: string | undefined, otherwise: Decimal): Known<Decimal> => {
  if (rule) return said(decimal(rule.to));
  return setting === undefined ? assumed(otherwise) : fromStudio(decimal(setting));
};

const ruleName = (rule: FactOf<'rule'> | undefined, setting: LabourRule | undefined): Known<LabourRule> => {
  if (rule && isLabourRule(rule.to)) return said(rule.to);
  return setting === undefined ? assumed('on product') : fromStudio(setting);
};

/** Half a pound, euro or dollar; ten units where the currency has no coins below its unit. */
const defaultStep = (currency: string): Decimal => (minorUnits(currency) === 0 ? decimal(10) : defaults.step);

const pieceTerms = (settings: StudioSettings, event: EventState, piece?: PieceKind): Required<PieceTerms> => {
  const of = (what: FactOf<'rule'>['what']) => ruleFor(event.rules, what, piece);
  return {
    labour: {
      rule: ruleName(of('labour rule'), settings.labour?.rule),
      share: number(of('labour share'), settings.labour?.share, defaults.share),
    },
    multiples: {
      stems: number(of('stems multiple') ?? of('multiple'), settings.multiples?.stems, defaults.multiple),
      sundries: number(of('sundries multiple') ?? of('multiple'), settings.multiples?.sundries, defaults.multiple),
    },
  };
};

/** What each rule replaces: the studio's setting or our default. */
const overridesOf = (settings: StudioSettings, event: EventState, tax: TaxTerms): readonly Override[] => {
  const usual = pieceTerms(settings, { ...event, rules: [] });
  const from = (rule: FactOf<'rule'>): string => {
    switch (rule.what) {
      case 'labour share':
        return usual.labour.share.value.toString();
      case 'labour rule':
        return usual.labour.rule.value;
      case 'multiple':
      case 'stems multiple':
        return usual.multiples.stems.value.toString();
      case 'sundries multiple':
        return usual.multiples.sundries.value.toString();
      case 'sundries':
        return (rule.piece && settings.sundriesEach?.[rule.piece]) ?? '0';
      case 'price step':
        return settings.priceStep ?? defaultStep(settings.currency).toString();
      case 'minutes':
        return (rule.piece && settings.minutes?.[rule.piece]?.toString()) ?? '';
      case 'tax rate':
        return tax.rate.value.toString();
    }
  };
  return event.rules.map((rule) => ({ what: rule.what, to: rule.to, from: from(rule), ...(rule.piece ? { piece: rule.piece } : {}) }));
};

/** The tax of each material among the lines, so that one order may hold a fresh line and a dried one. */
const taxesOf = (settings: StudioSettings, event: EventState, today: Day): Result<Pick<PriceTerms, 'tax' | 'taxByMaterial'>> => {
  const on = event.date ?? today;
  const rate = ruleFor(event.rules, 'tax rate', undefined)?.to ?? event.tax.rate;
  const told = { ...event.tax, ...(rate === undefined ? {} : { rate }) };
  const ofLines = new Set(event.lines.map((line) => line.material ?? event.material));
  const byMaterial: { [material in Material]?: TaxTerms } = {};
  let first: TaxTerms | undefined;
  for (const material of ofLines.size === 0 ? [event.material] : ofLines) {
    const tax = taxFor(settings, material, on, told, today);
    if (!tax.ok) return tax;
    first ??= tax.value;
    if (material) byMaterial[material] = tax.value;
  }
  if (first === undefined) throw new Error('an event has at least one material, known or not');
  return ok({ tax: first, taxByMaterial: byMaterial });
};

/** The terms of this event on this day, checked: every problem a setting or a rule can cause is found here. */
export const termsOf = (settings: StudioSettings, event: EventState, today: Day): Result<PriceTerms> => {
  if (minorUnits(settings.currency) === undefined) return failed('currency-unknown', { currency: settings.currency });
  const wrong = rulesProblem(event.rules);
  if (wrong) return { ok: false, problem: wrong };
  const taxes = taxesOf(settings, event, today);
  if (!taxes.ok) return taxes;
  const usualTax = taxFor(settings, event.material ?? event.lines[0]?.material, event.date ?? today, {}, today);
  const wage = wageCostOf(settings.labour);
  return ok({
    currency: settings.currency,
    ...taxes.value,
    ...pieceTerms(settings, event),
    forPiece: (piece) => pieceTerms(settings, event, piece),
    sundriesEach: (piece) => number(ruleFor(event.rules, 'sundries', piece), settings.sundriesEach?.[piece], zero),
    minimumPrice: (piece) => {
      const minimum = settings.minimumPrice?.[piece];
      return minimum === undefined ? undefined : fromStudio(decimal(minimum));
    },
    minutesEach: (piece) => {
      const rule = ruleFor(event.rules, 'minutes', piece);
      return rule ? Number(rule.to) : settings.minutes?.[piece];
    },
    priceStep: number(ruleFor(event.rules, 'price step', undefined), settings.priceStep, defaultStep(settings.currency)),
    ...(settings.tax?.cashStep ? { cashStep: decimal(settings.tax.cashStep) } : {}),
    ...(wage ? { wage } : {}),
    overrides: overridesOf(settings, event, usualTax.ok ? usualTax.value : taxes.value.tax),
  });
};
