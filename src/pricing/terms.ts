// The terms of one event on one day: an event's own rule, else the studio's setting, else our default.

import { benchMinutes } from '../handbook/bench-minutes.ts';
import type { Material } from '../handbook/pieces.ts';
import type { StudioSettings } from '../studio/settings.ts';
import type { EventState } from '../thread/event.ts';
import { ruleFor } from '../thread/rule-for.ts';
import { minorUnits } from '../values/currency.ts';
import type { Day } from '../values/day.ts';
import { decimal, zero } from '../values/decimal.ts';
import { fromStudio, said } from '../values/known.ts';
import { failed, ok, type Result } from '../values/result.ts';
import { rulesProblem } from './event-rules.ts';
import { overridesOf } from './overrides.ts';
import { defaultStep, numberFor, pieceTerms } from './piece-terms.ts';
import type { PriceTerms } from './price-terms.ts';
import { taxFor } from './tax-for.ts';
import type { TaxTerms } from './tax-terms.ts';
import { wageCostOf } from './wage-cost.ts';

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
    ...pieceTerms(settings, event.rules),
    forPiece: (piece) => pieceTerms(settings, event.rules, piece),
    sundriesEach: (piece) => numberFor(ruleFor(event.rules, 'sundries', piece), settings.sundriesEach?.[piece], zero),
    minimumPrice: (piece) => {
      const own = ruleFor(event.rules, 'minimum price', piece);
      if (own) return said(decimal(own.to));
      const minimum = settings.minimumPrice?.[piece];
      return minimum === undefined ? undefined : fromStudio(decimal(minimum));
    },
    minutesEach: (piece) => {
      const rule = ruleFor(event.rules, 'minutes', piece);
      return rule ? Number(rule.to) : (settings.minutes?.[piece] ?? benchMinutes[piece].usual);
    },
    priceStep: numberFor(ruleFor(event.rules, 'price step', undefined), settings.priceStep, defaultStep(settings.currency)),
    ...(settings.tax?.cashStep ? { cashStep: decimal(settings.tax.cashStep) } : {}),
    ...(wage ? { wage } : {}),
    overrides: overridesOf(
      settings,
      event.rules,
      (usualTax.ok ? usualTax.value : taxes.value.tax).rate.value,
      event.lines.map((line) => line.piece),
    ),
  });
};
