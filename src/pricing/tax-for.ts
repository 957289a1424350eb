// Which tax an event is priced with, and how we came to know it: what was said first, then the studio's settings, then the handbook by region, material and day.

import { type Material, materials } from '../handbook/pieces.ts';
import type { Source } from '../handbook/sources.ts';
import type { TaxRate } from '../handbook/tax-rate.ts';
import { allRates, changesBetween, rateOn } from '../handbook/tax-rates.ts';
import { ownRegime, regimeOf, type TaxRegime } from '../handbook/tax-regimes.ts';
import { ownFigure } from '../handbook/tax-sources.ts';
import type { StudioSettings } from '../studio/settings.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { type Decimal, decimal, sum, zero } from '../values/decimal.ts';
import { assumed, fromStudio, type Known, said } from '../values/known.ts';
import { failed, ok, type Result } from '../values/result.ts';
import type { TaxBasis, TaxChange, TaxSaid, TaxTerms } from './tax-terms.ts';

interface FoundRate {
  readonly rate: Known<Decimal>;
  readonly name: string;
  readonly parts: TaxTerms['parts'];
  readonly source: Source;
  readonly decidedBy?: Material;
  readonly note?: string;
  readonly rateUnset?: true;
}

/** The row of the handbook: the studio's choice, else its region, in Canada with the province where there is such a row. */
const regimeIdOf = ({ tax, region, subdivision }: StudioSettings): string => {
  if (tax?.regime) return tax.regime;
  const province = `${region}-${subdivision}`;
  return allRates.some((rate) => rate.regime === province) ? province : region;
};

const single = (rate: Known<Decimal>, name: string): FoundRate => ({
  rate,
  name,
  parts: [{ name, rate: rate.value }],
  source: ownFigure,
});

const fromHandbook = (row: TaxRate, chosen: boolean, material: Material | undefined): FoundRate => {
  const parts = row.parts.map((part) => ({ name: part.name, rate: decimal(part.rate) }));
  const rate = sum(parts.map((part) => part.rate));
  return {
    rate: chosen ? fromStudio(rate) : assumed(rate),
    name: parts.map((part) => part.name).join(' + '),
    parts,
    source: row.source,
    ...(row.materials && material ? { decidedBy: material } : {}),
    ...(row.note ? { note: row.note } : {}),
  };
};

/** The handbook's rate, or the problem that the material decides it and isn't known, or is mixed. */
const lookUp = (regime: string, material: Material | undefined, on: Day, chosen: boolean): Result<FoundRate> | undefined => {
  const rows = materials.flatMap((each) => {
    const row = rateOn(regime, each, on);
    return row ? [{ material: each, row }] : [];
  });
  const [first] = rows;
  if (!first) return undefined;
  const own = rows.find((row) => row.material === material) ?? (first.row.materials ? undefined : first);
  if (own) return ok(fromHandbook(own.row, chosen, material));
  const rates = rows.map((each) => ({
    material: each.material,
    rate: fromHandbook(each.row, chosen, each.material).rate.value.toString(),
  }));
  return failed('tax-depends-on-material', { region: regime, mixed: material === 'mixed', rates });
};

const findRate = (
  settings: StudioSettings,
  regime: TaxRegime,
  material: Material | undefined,
  on: Day,
  told: TaxSaid,
): Result<FoundRate> => {
  const own = settings.tax?.rate;
  const name = told.name ?? settings.tax?.name ?? regime.name;
  if (told.rate !== undefined) return ok(single(said(decimal(told.rate)), name));
  if (own !== undefined) return ok(single(fromStudio(decimal(own)), settings.tax?.name ?? regime.name));
  const found = lookUp(regimeIdOf(settings), material, on, settings.tax?.regime !== undefined);
  if (found) return found;
  return ok({ ...single(assumed(zero), name), rateUnset: true });
};

const basisOf = (settings: StudioSettings, regime: TaxRegime, told: TaxSaid): Known<TaxBasis> => {
  if (told.basis) return said(told.basis);
  return settings.tax?.usual ? fromStudio(settings.tax.usual) : assumed(regime.usual);
};

const noTax = (regime: TaxRegime, basis: Known<'none'>, registered: boolean): TaxTerms => ({
  regime: regime.id,
  name: 'no tax',
  rate: { value: zero, origin: basis.origin },
  parts: [],
  basis,
  rounding: regime.rounding,
  level: assumed('invoice'),
  cashHalf: regime.cashHalf,
  source: ownFigure,
  ...(registered ? {} : { notRegistered: true }),
  changes: [],
});

/**
 * The tax of pieces of this material on the event's day. `told` is what the thread said; `today` finds changes still to come.
 * Fails with 'tax-depends-on-material' when the material decides and isn't known or is mixed, and with 'tax-rate-unknown'
 * when the price is said to include a tax whose rate nobody has set.
 */
export const taxFor = (
  settings: StudioSettings,
  material: Material | undefined,
  on: Day,
  told: Pick<EventState['tax'], keyof TaxSaid> = {},
  today: Day = on,
): Result<TaxTerms> => {
  const regime = regimeOf(regimeIdOf(settings)) ?? ownRegime;
  if (settings.tax?.registered === false || settings.tax?.regime === 'none') return ok(noTax(regime, fromStudio('none'), false));
  if (told.basis === 'none') return ok(noTax(regime, said('none'), true));
  const basis = basisOf(settings, regime, told);
  const found = findRate(settings, regime, material, on, told);
  if (!found.ok) return found;
  if (found.value.rateUnset && basis.value === 'included') return failed('tax-rate-unknown', { region: settings.region });
  const rate = found.value.rate.value;
  if (!rate.isFinite() || rate.isNegative() || rate.greaterThanOrEqualTo(100)) {
    return failed('rate-out-of-range', { what: 'tax', rate: rate.toString() });
  }
  const usesHandbook = found.value.source !== ownFigure;
  return ok({
    regime: regimeIdOf(settings),
    basis,
    ...found.value,
    rounding: regime.rounding,
    level: settings.tax?.rounding ? fromStudio(settings.tax.rounding) : assumed('invoice'),
    cashHalf: regime.cashHalf,
    changes: usesHandbook ? changes(regimeIdOf(settings), material, today, on) : [],
  });
};

const changes = (regime: string, material: Material | undefined, today: Day, on: Day): readonly TaxChange[] =>
  changesBetween(regime, material, today, on).map(({ day, rate }) => ({
    day,
    rate: sum(rate.parts.map((part) => decimal(part.rate))),
    status: rate.status,
    source: rate.source,
  }));
