// Rates on flower work by regime, material and date. Rows are dated because rates change; the newest row in force on the day wins.

import { type Day, parseDay } from '../values/day.ts';
import type { Material } from './pieces.ts';
import type { TaxRate } from './tax-rate.ts';
import { ratesOfCanada } from './tax-rates-canada.ts';
import { ratesElsewhere } from './tax-rates-elsewhere.ts';
import { ratesOfEurope } from './tax-rates-europe.ts';

const rates: readonly TaxRate[] = [...ratesOfEurope, ...ratesOfCanada, ...ratesElsewhere];

const applies = (rate: TaxRate, regime: string, material: Material | undefined): boolean =>
  rate.regime === regime && (rate.materials === undefined || (material !== undefined && rate.materials.includes(material)));

const newest = (found: readonly TaxRate[]): TaxRate | undefined =>
  found.reduce<TaxRate | undefined>((best, rate) => (best === undefined || rate.from > best.from ? rate : best), undefined);

/** The rate in force on this day, plans left aside; undefined where the handbook has none for this material. */
export const rateOn = (regime: string, material: Material, on: Day): TaxRate | undefined =>
  newest(rates.filter((rate) => rate.status === 'law' && rate.from <= on && applies(rate, regime, material)));

export interface RateChange {
  readonly day: Day;
  readonly rate: TaxRate;
}

/** The changes, made law or planned, that fall after `since` and on or before `until`, first to last. */
export const changesBetween = (regime: string, material: Material | undefined, since: Day, until: Day): readonly RateChange[] =>
  rates
    .filter((rate) => applies(rate, regime, material) && rate.from > since && rate.from <= until)
    .flatMap((rate) => {
      const day = parseDay(rate.from);
      return day === undefined ? [] : [{ day, rate }];
    })
    .sort((a, b) => (a.day < b.day ? -1 : 1));

export const allRates: readonly TaxRate[] = rates;
