// The terms of an event: what was said for it alone, else the studio's settings, else our defaults; and what a rule replaces.

import { describe, expect, it } from 'vitest';
import { priceOrder } from '../../src/pricing/price-order.ts';
import type { PriceTerms } from '../../src/pricing/price-terms.ts';
import { termsOf } from '../../src/pricing/terms.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { type EventState, newEvent } from '../../src/thread/event.ts';
import type { EventRule } from '../../src/thread/rule-for.ts';
import { type Day, parseDay } from '../../src/values/day.ts';
import { decimal } from '../../src/values/decimal.ts';

const today = parseDay('2027-01-20') as Day;
const bare: StudioSettings = { name: 'Slipway Flowers', region: 'GB', timeZone: 'Europe/London', currency: 'GBP' };
const full: StudioSettings = {
  ...bare,
  labour: { rule: 'out of the price', share: '25', wage: '12.71', onCosts: '12.07' },
  multiples: { stems: '3.5', sundries: '2.5' },
  sundriesEach: { buttonhole: '0.75' },
  minimumPrice: { buttonhole: '18' },
  priceStep: '1',
  minutes: { buttonhole: 12 },
  tax: { usual: 'on top', cashStep: '0.05' },
};

const rule = (what: EventRule['what'], to: string, piece?: EventRule['piece']): EventRule => ({
  fact: 'rule',
  what,
  to,
  words: `${what} ${to}`,
  ...(piece ? { piece } : {}),
});
const withRules = (...rules: EventRule[]): EventState => ({ ...newEvent, rules });

const terms = (settings: StudioSettings, event: EventState = newEvent): PriceTerms => {
  const result = termsOf(settings, event, today);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
};
const known = ({ value, origin }: { value: unknown; origin: string }) => `${value} ${origin}`;

describe('where each figure comes from', () => {
  it('is assumed where a studio has set nothing', () => {
    const { labour, multiples, sundriesEach, priceStep, tax, wage, minimumPrice } = terms(bare);
    expect(
      [labour.rule, labour.share, multiples.stems, multiples.sundries, sundriesEach('buttonhole'), priceStep, tax.basis].map(known),
    ).toEqual(['on product assumed', '30 assumed', '4 assumed', '4 assumed', '0 assumed', '0.5 assumed', 'included assumed']);
    expect([wage, minimumPrice('buttonhole')]).toEqual([undefined, undefined]);
  });

  it("is the studio's where it has", () => {
    const { labour, multiples, sundriesEach, priceStep, tax, wage, minimumPrice, minutesEach, cashStep } = terms(full);
    expect(
      [labour.rule, labour.share, multiples.stems, multiples.sundries, sundriesEach('buttonhole'), priceStep, tax.basis].map(known),
    ).toEqual(['out of the price studio', '25 studio', '3.5 studio', '2.5 studio', '0.75 studio', '1 studio', 'on top studio']);
    expect([wage?.cost.toString(), minimumPrice('buttonhole')?.value.toString(), minutesEach('buttonhole'), cashStep?.toString()]).toEqual([
      '14.244097',
      '18',
      12,
      '0.05',
    ]);
  });

  it('steps by ten where the currency has no coins below its unit', () => {
    expect(terms({ ...bare, currency: 'JPY', tax: { rate: '10' } }).priceStep.value.toString()).toBe('10');
  });

  it('falls back on the usual bench minutes', () => expect(terms(bare).minutesEach('buttonhole')).toBe(15));
});

describe("an event's own rules", () => {
  const event = withRules(rule('multiple', '3.5'), rule('labour share', '25'), rule('sundries', '1.20', 'buttonhole'));

  it('win and are said', () => {
    const { labour, multiples, sundriesEach } = terms(bare, event);
    expect([labour.share, multiples.stems, multiples.sundries, sundriesEach('buttonhole'), sundriesEach('corsage')].map(known)).toEqual([
      '25 said',
      '3.5 said',
      '3.5 said',
      '1.2 said',
      '0 assumed',
    ]);
  });

  it('name what they replace', () => {
    expect(terms(full, event).overrides).toEqual([
      { what: 'multiple', to: '3.5', from: '3.5 / 2.5' },
      { what: 'labour share', to: '25', from: '25' },
      { what: 'sundries', to: '1.20', from: '0.75', piece: 'buttonhole' },
    ]);
    expect(terms(bare, withRules(rule('tax rate', '5'), rule('minutes', '20', 'corsage'))).overrides).toEqual([
      { what: 'tax rate', to: '5', from: '20' },
      { what: 'minutes', to: '20', from: '30', piece: 'corsage' },
    ]);
  });

  it('may be for one kind alone', () => {
    const own = terms(bare, withRules(rule('stems multiple', '3', 'flower crown')));
    const order = priceOrder(
      {
        lines: [
          { piece: 'buttonhole', count: 1 },
          { piece: 'flower crown', count: 1 },
        ],
        price: { amount: decimal('156'), per: 'each' },
      },
      own,
    );
    // 156 / 1.2 / 1.3 = 100 of product (derived)
    expect(order.ok && order.value.lines.map((line) => line.each.exact.stems.toString())).toEqual([
      '25',
      '33.33333333333333333333333333333333333333',
    ]);
  });

  it.each([
    [rule('multiple', '0'), 'multiple-not-positive'],
    [rule('sundries multiple', '-1'), 'multiple-not-positive'],
    [rule('labour share', '-5'), 'rate-out-of-range'],
    [rule('tax rate', '100'), 'rate-out-of-range'],
    [rule('price step', '0'), 'rule-not-understood'],
    [rule('labour share', 'half'), 'rule-not-understood'],
    [rule('labour rule', 'whatever'), 'rule-not-understood'],
    [rule('sundries', '-0.10'), 'price-not-positive'],
  ])('%o is a problem: %s', (wrong, code) => {
    expect(termsOf(bare, withRules(wrong), today)).toMatchObject({ ok: false, problem: { code } });
  });
});

it('taxes a fresh line and a dried line of one Irish order apart', () => {
  // Horticultural retailers' VAT obligations, HortiTrends (reprints Revenue): 13.5 % and 23 %; 113.50 and 123 are 100 before tax
  const event: EventState = {
    ...newEvent,
    lines: [
      { piece: 'buttonhole', count: 1, material: 'fresh' },
      { piece: 'buttonhole', count: 1, material: 'dried' },
    ],
  };
  const priced = priceOrder(
    {
      lines: [
        { piece: 'buttonhole', count: 1, material: 'fresh', price: { amount: decimal('113.50'), per: 'each' } },
        { piece: 'buttonhole', count: 1, material: 'dried', price: { amount: decimal('123'), per: 'each' } },
      ],
    },
    terms({ ...bare, region: 'IE', currency: 'EUR' }, event),
  );
  expect(priced.ok && priced.value.all.printed.exTax.toString()).toBe('200');
  expect(priced.ok && priced.value.taxParts.map((part) => `${part.rate} ${part.amount}`)).toEqual(['13.5 13.5', '23 23']);
});

it('knows the currency of the studio', () => {
  expect(termsOf({ ...bare, currency: 'XAU' }, newEvent, today)).toMatchObject({ ok: false, problem: { code: 'currency-unknown' } });
});
