// Which tax an event gets, and how each part of it came to be known.

import { describe, expect, it } from 'vitest';
import type { Material } from '../../src/handbook/pieces.ts';
import { taxFor } from '../../src/pricing/tax-for.ts';
import type { TaxSaid, TaxTerms } from '../../src/pricing/tax-terms.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { type Day, parseDay } from '../../src/values/day.ts';

const on = parseDay('2027-03-14') as Day;
const studio = (region: string, more: Partial<StudioSettings> = {}): StudioSettings => ({
  name: 'Slipway Flowers',
  region,
  timeZone: 'UTC',
  currency: 'EUR',
  ...more,
});

const tax = (settings: StudioSettings, material?: Material, told: TaxSaid = {}): TaxTerms => {
  const result = taxFor(settings, material, on, told);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
const line = ({ name, rate, basis }: TaxTerms) => `${name} ${rate.value.toString()} (${rate.origin}), ${basis.value} (${basis.origin})`;

describe('by region, settings and what was said', () => {
  it.each([
    [studio('GB'), {}, 'VAT 20 (assumed), included (assumed)'],
    [studio('GB', { tax: { regime: 'GB', usual: 'included' } }), {}, 'VAT 20 (studio), included (studio)'],
    [studio('GB'), { basis: 'on top' }, 'VAT 20 (assumed), on top (said)'],
    [studio('GB'), { rate: '5', name: 'VAT' }, 'VAT 5 (said), included (assumed)'],
    [studio('GB'), { basis: 'none' }, 'no tax 0 (said), none (said)'],
    [studio('CA', { subdivision: 'QC' }), {}, 'GST + QST 14.975 (assumed), on top (assumed)'],
    [studio('CA', { subdivision: 'ON' }), { basis: 'included' }, 'HST 13 (assumed), included (said)'],
    [studio('CA', { subdivision: 'XX' }), {}, 'GST 5 (assumed), on top (assumed)'],
    [studio('US', { tax: { rate: '8.25' } }), {}, 'sales tax 8.25 (studio), on top (assumed)'],
    [studio('US'), {}, 'sales tax 0 (assumed), on top (assumed)'],
    [studio('NO', { tax: { rate: '25', name: 'MVA', usual: 'included' } }), {}, 'MVA 25 (studio), included (studio)'],
    [studio('GB', { tax: { registered: false } }), { basis: 'included' }, 'no tax 0 (studio), none (studio)'],
    [studio('GB', { tax: { regime: 'none' } }), {}, 'no tax 0 (studio), none (studio)'],
  ] as [StudioSettings, TaxSaid, string][])('%o and %o: %s', (settings, told, expected) => {
    expect(line(tax(settings, undefined, told))).toBe(expected);
  });

  it('says when no rate is set where tax comes on top', () => {
    expect([tax(studio('US')).rateUnset, tax(studio('US', { tax: { rate: '6' } })).rateUnset]).toEqual([true, undefined]);
  });

  it('says that an unregistered studio charges none, whatever was said', () => {
    expect(tax(studio('GB', { tax: { registered: false } }), undefined, { basis: 'included' }).notRegistered).toBe(true);
  });
});

describe('where the material decides', () => {
  it.each([
    ['fresh', '13.5'],
    ['dried', '23'],
    ['artificial', '23'],
    ['preserved', '23'],
  ] as [Material, string][])('in Ireland %s is %s, and the reply can say why', (material, rate) => {
    // Horticultural retailers' VAT obligations, HortiTrends (reprints Revenue); preserved is taken as dried
    const found = tax(studio('IE'), material);
    expect([found.rate.value.toString(), found.decidedBy]).toEqual([rate, material]);
  });

  it.each([
    [undefined, false],
    ['mixed', true],
  ] as [Material | undefined, boolean][])('asks about %s', (material, mixed) => {
    const result = taxFor(studio('IE'), material, on);
    expect(result).toMatchObject({ ok: false, problem: { code: 'tax-depends-on-material', data: { region: 'IE', mixed } } });
    if (!result.ok && result.problem.code === 'tax-depends-on-material') {
      expect(result.problem.data.rates).toContainEqual({ material: 'fresh', rate: '13.5' });
      expect(result.problem.data.rates).toContainEqual({ material: 'dried', rate: '23' });
    }
  });

  it('takes a rate that was said and asks nothing', () => {
    expect(tax(studio('IE'), 'mixed', { rate: '23' }).rate.value.toString()).toBe('23');
  });

  it('does not ask where one rate serves all', () => expect(tax(studio('GB'), 'mixed').decidedBy).toBeUndefined());
});

describe('problems', () => {
  it.each([
    [studio('NO'), {}, 'tax-rate-unknown'],
    [studio('US'), { basis: 'included' }, 'tax-rate-unknown'],
    [studio('GB'), { rate: '100' }, 'rate-out-of-range'],
    [studio('GB'), { rate: '-5' }, 'rate-out-of-range'],
    [studio('GB', { tax: { rate: '120' } }), {}, 'rate-out-of-range'],
  ] as [StudioSettings, TaxSaid, string][])('%o and %o: %s', (settings, told, code) => {
    expect(taxFor(settings, 'fresh', on, told)).toMatchObject({ ok: false, problem: { code } });
  });
});

it('tells of a change between today and the event', () => {
  const after = parseDay('2028-06-03') as Day;
  const dutch = taxFor(studio('NL'), 'fresh', after, {}, on);
  expect(dutch).toMatchObject({ ok: true, value: { changes: [{ day: '2028-01-01', status: 'plan' }] } });
  const canadian = taxFor(studio('CA', { subdivision: 'NS' }), undefined, parseDay('2025-06-01') as Day, {}, parseDay('2025-01-10') as Day);
  expect(canadian).toMatchObject({ ok: true, value: { changes: [{ day: '2025-04-01', status: 'law' }] } });
  expect(tax(studio('NL'), 'fresh').changes).toEqual([]);
});
