// The dated tax rows: what is in force on a day, and what the handbook admits it has only from memory.

import { describe, expect, it } from 'vitest';
import type { Material } from '../../src/handbook/pieces.ts';
import { allRates, changesBetween, rateOn } from '../../src/handbook/tax-rates.ts';
import { regimeOf } from '../../src/handbook/tax-regimes.ts';
import { fromMemory } from '../../src/handbook/tax-sources.ts';
import { type Day, parseDay } from '../../src/values/day.ts';

const day = (text: string): Day => {
  const found = parseDay(text);
  if (!found) throw new Error(text);
  return found;
};

const rates = (regime: string, material: Material, on: string) =>
  rateOn(regime, material, day(on))
    ?.parts.map((part) => `${part.name} ${part.rate}`)
    .join(' + ');

describe('a rate on a day', () => {
  it.each([
    // GST Act 1999 s 9-75, ATO legal database
    ['AU', 'fresh', 'GST 10'],
    // Calculating GST, Inland Revenue New Zealand, 2010
    ['NZ', 'mixed', 'GST 15'],
    // VFOOD3520, HMRC internal manual: cut flowers are standard-rated
    ['GB', 'fresh', 'VAT 20'],
    ['GB', 'mixed', 'VAT 20'],
    // Horticultural retailers' VAT obligations, HortiTrends (reprints Revenue)
    ['IE', 'fresh', 'VAT 13.5'],
    ['IE', 'dried', 'VAT 23'],
    ['IE', 'artificial', 'VAT 23'],
    ['IE', 'mixed', undefined],
    // Blumenhandel, Haufe: 7 % fresh cut
    ['DE', 'fresh', 'MwSt 7'],
    // BOI-TVA-LIQ-30-10-35: 10 % untransformed
    ['FR', 'fresh', 'TVA 10'],
    // Tweede Kamer 2021Z07539: 9 %
    ['NL', 'fresh', 'btw 9'],
    // Calculating the taxes, Revenu Québec
    ['CA-QC', 'dried', 'GST 5 + QST 9.975'],
    // CRA interpretation 125136
    ['CA-ON', 'dried', 'HST 13'],
    // from memory, and marked so
    ['ZA', 'dried', 'VAT 15'],
    ['IN', 'dried', 'GST 18'],
    // every place has its own
    ['US', 'dried', undefined],
  ] as [string, Material, string | undefined][])('%s, %s: %s', (regime, material, expected) => {
    expect(rates(regime, material, '2027-03-14')).toBe(expected);
  });

  it('changes on its day and not before', () => {
    // Nova Scotia, from memory
    expect([rates('CA-NS', 'dried', '2025-03-31'), rates('CA-NS', 'dried', '2025-04-01')]).toEqual(['HST 15', 'HST 14']);
    expect(rates('GB', 'dried', '2010-12-31')).toBeUndefined();
  });

  it('tells a plan but never applies it', () => {
    // Hart van Nederland, 31 January 2026: 21 % on flowers planned from 2028
    expect(rates('NL', 'fresh', '2028-06-01')).toBe('btw 9');
    const [plan] = changesBetween('NL', 'fresh', day('2027-01-20'), day('2028-06-01'));
    expect(plan).toMatchObject({ day: '2028-01-01', rate: { status: 'plan', parts: [{ rate: '21' }] } });
    expect(changesBetween('NL', 'fresh', day('2027-01-20'), day('2027-12-31'))).toEqual([]);
    expect(changesBetween('NL', 'dried', day('2027-01-20'), day('2028-06-01'))).toEqual([]);
  });
});

describe('the rows themselves', () => {
  it('each have a real first day, a regime and a source', () => {
    for (const row of allRates) {
      expect(parseDay(row.from)).toBe(row.from);
      expect(regimeOf(row.regime)?.id).toBeDefined();
      expect(row.source.title.length).toBeGreaterThan(0);
      for (const part of row.parts) expect(Number(part.rate)).toBeGreaterThan(0);
    }
  });

  it('say which rates nobody looked up', () => {
    const unseen = [...new Set(allRates.filter((row) => row.source === fromMemory).map((row) => row.regime))];
    expect(unseen.sort()).toEqual([
      'CA-AB',
      'CA-BC',
      'CA-MB',
      'CA-NB',
      'CA-NL',
      'CA-NS',
      'CA-NT',
      'CA-NU',
      'CA-PE',
      'CA-SK',
      'CA-YT',
      'IN',
      'ZA',
    ]);
  });

  it('round half a cent as the statutes say', () => {
    // GST Act 1999 s 9-90 (Australia); GST Act 1985 s 19O (New Zealand); General Laws 44-18.1-25 (Rhode Island)
    expect(['AU', 'NZ', 'US', 'GB'].map((id) => regimeOf(id)?.rounding)).toEqual([
      'half up',
      'half down',
      'third decimal then half up',
      'half up',
    ]);
  });
});
