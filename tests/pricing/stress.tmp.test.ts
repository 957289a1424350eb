// Ten thousand random orders over every regime of the handbook: printed parts add up to their printed totals at every level.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { materials, pieceKinds } from '../../src/handbook/pieces.ts';
import { allRates } from '../../src/handbook/tax-rates.ts';
import type { Order } from '../../src/pricing/order.ts';
import { type Parts, partNames } from '../../src/pricing/parts.ts';
import { type PricedOrder, priceOrder } from '../../src/pricing/price-order.ts';
import type { PriceTerms } from '../../src/pricing/price-terms.ts';
import { termsOf } from '../../src/pricing/terms.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { newEvent } from '../../src/thread/event.ts';
import { type Day, parseDay } from '../../src/values/day.ts';
import { type Decimal, decimal, sum } from '../../src/values/decimal.ts';
import { smallestCoin } from '../../src/values/money.ts';

const today = parseDay('2027-01-20') as Day;
const currencies: Readonly<Record<string, string>> = { AU: 'AUD', NZ: 'NZD', GB: 'GBP', CA: 'CAD', ZA: 'ZAR', IN: 'INR', US: 'USD' };

const regimes = [...new Set(allRates.map((rate) => rate.regime))];
const studios: readonly StudioSettings[] = [
  ...regimes.map((regime) => ({ regime })),
  { regime: 'US', rate: '8.25' },
  { regime: 'none' },
  { regime: 'JP', rate: '10', currency: 'JPY' },
  { regime: 'KW', rate: '5', currency: 'KWD' },
].map(({ regime, rate, currency }: { regime: string; rate?: string; currency?: string }) => ({
  name: 'Slipway Flowers',
  region: regime.slice(0, 2).toUpperCase(),
  timeZone: 'UTC',
  currency: currency ?? currencies[regime.slice(0, 2)] ?? 'EUR',
  tax: { regime, ...(rate ? { rate } : {}) },
}));

// mostly a price somebody would ask; sometimes a few coins, where rounding bites hardest
const coins = fc.oneof(
  { weight: 5, arbitrary: fc.integer({ min: 1500, max: 60_000 }) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 60 }) },
);

/** What one random studio has chosen, and the shape of one random order. */
const given = fc.record({
  usual: fc.constantFrom('included', 'on top'),
  rounding: fc.constantFrom('invoice', 'line'),
  rule: fc.constantFrom('on product', 'out of the price'),
  share: fc.constantFrom('0', '20', '25', '30', '33.3', '62.5'),
  stems: fc.constantFrom('1', '2.5', '3', '3.5', '4'),
  sundriesMultiple: fc.constantFrom('1', '2', '2.5', '4'),
  sundries: fc.constantFrom('0', '0.5', '0.333', '0.75', '1.605'), // times a unit of money below
  material: fc.constantFrom('fresh', 'dried'),
  common: fc.record({ per: fc.constantFrom('each', 'all'), coins: fc.integer({ min: 8_000, max: 90_000 }) }),
  lines: fc.array(
    fc.record({
      piece: fc.constantFrom(...pieceKinds),
      count: fc.integer({ min: 1, max: 120 }),
      material: fc.option(fc.constantFrom(...materials.filter((material) => material !== 'mixed'))),
      own: fc.option(fc.record({ per: fc.constantFrom('each', 'line'), coins }), { freq: 2 }),
    }),
    { minLength: 1, maxLength: 4 },
  ),
});
type Given = typeof given extends fc.Arbitrary<infer G> ? G : never;

const termsFor = (studio: StudioSettings, g: Given): PriceTerms | undefined => {
  const settings = {
    ...studio,
    tax: { ...studio.tax, usual: g.usual, rounding: g.rounding },
    labour: { rule: g.rule, share: g.share },
    multiples: { stems: g.stems, sundries: g.sundriesMultiple },
    sundriesEach: Object.fromEntries(
      pieceKinds.map((piece) => [piece, decimal(g.sundries).times(smallestCoin(studio.currency)).times(100).toString()]),
    ),
  } as StudioSettings;
  const lines = g.lines.map(({ piece, count, material }) => ({ piece, count, material: material ?? (g.material as 'fresh' | 'dried') }));
  const terms = termsOf(settings, { ...newEvent, material: g.material as 'fresh' | 'dried', lines }, today);
  return terms.ok ? terms.value : undefined;
};

const orderFor = (g: Given, currency: string): Order => {
  const money = (coins: number) => smallestCoin(currency).times(coins);
  const pieces = g.lines.reduce((all, line) => all + line.count, 0);
  return {
    lines: g.lines.map((line) => ({
      piece: line.piece,
      count: line.count,
      material: line.material ?? (g.material as 'fresh' | 'dried'),
      ...(line.own
        ? {
            price: {
              amount: money(line.own.per === 'line' ? line.own.coins * line.count + 3 : line.own.coins),
              per: line.own.per as 'each' | 'line',
            },
          }
        : {}),
    })),
    price: { amount: money(g.common.per === 'all' ? g.common.coins * pieces + 7 : g.common.coins), per: g.common.per as 'each' | 'all' },
  };
};

type Coins = { readonly [name in (typeof partNames)[number]]: number };

/** The parts counted in smallest coins; printed parts are whole numbers of them. */
const inCoins = (parts: Parts, perUnit: Decimal): Coins =>
  Object.fromEntries(partNames.map((name) => [name, parts[name].times(perUnit).toNumber()])) as Coins;

/** Why these printed parts are wrong, or nothing. `most` is how many coins each may lie from the exact figure. */
const wrongParts = (what: string, printed: Coins, exact: Coins, most: number): string[] => [
  ...(printed.tax + printed.exTax === printed.price ? [] : [`${what}: tax + exTax`]),
  ...(printed.labour + printed.product === printed.exTax ? [] : [`${what}: labour + product`]),
  ...(printed.sundries + printed.stems === printed.wholesale ? [] : [`${what}: sundries + stems`]),
  ...partNames.flatMap((name) => {
    const coins = printed[name];
    if (!Number.isInteger(coins) || coins < 0) return [`${what}: ${name} of ${coins} coins`];
    return Math.abs(coins - exact[name]) > most + 1e-6 ? [`${what}: ${name} is ${coins}, exactly ${exact[name]}`] : [];
  }),
];

const wrongIn = ({ lines, all, currency, terms, taxParts }: PricedOrder): string[] => {
  const perUnit = decimal(1).dividedBy(smallestCoin(currency));
  const rows = lines.map((line) => inCoins(line.all.printed, perUnit));
  const total = inCoins(all.printed, perUnit);
  // by line every line may bring its own half coin of tax
  const drift = terms.tax.level.value === 'line' ? lines.length : new Set(lines.map((line) => line.tax.rate.value.toString())).size;
  const taxes = sum(taxParts.map((part) => part.amount))
    .times(perUnit)
    .toNumber();
  return [
    ...wrongParts('all', total, inCoins(all.exact, perUnit), 1 + drift),
    ...partNames.filter((name) => rows.reduce((coins, row) => coins + row[name], 0) !== total[name]).map((name) => `column of ${name}`),
    ...(taxes === total.tax ? [] : ['tax by its parts']),
    ...lines.flatMap((line, index) => [
      ...wrongParts('each', inCoins(line.each.printed, perUnit), inCoins(line.each.exact, perUnit), 2 + (line.count === 1 ? drift : 0)),
      ...(rows[index] ? wrongParts('line', rows[index], inCoins(line.all.exact, perUnit), 2 + drift) : []),
    ]),
  ];
};

describe('ten thousand random orders', () => {
  const runs = Math.ceil(400_000 / studios.length); // about one in five is refused: its total or its sundries leave nothing
  let orders = 0;

  it.each(studios.map((studio) => [`${studio.tax?.regime} in ${studio.currency}`, studio] as const))(
    '%s: parts are their total at every level',
    (_, studio) => {
      fc.assert(
        fc.property(given, (g) => {
          const terms = termsFor(studio, g);
          if (!terms) throw new Error('the terms themselves were refused');
          const result = priceOrder(orderFor(g, studio.currency), terms);
          if (!result.ok) {
            expect(['sundries-use-up-price', 'total-below-line-prices']).toContain(result.problem.code);
            return;
          }
          orders += 1;
          const wrong = wrongIn(result.value);
          if (wrong.length > 0) throw new Error(wrong.join('; '));
        }),
        { numRuns: runs },
      );
    },
  );

  it('were really priced', () => expect(orders).toBeGreaterThan(10_000));
});
