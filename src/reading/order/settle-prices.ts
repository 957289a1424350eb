// Prices that could contradict each other or the counts: an each beside a total, numbers that may be either.

import { decimal } from '../../values/decimal.ts';
import type { Fact } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import { countsBehind, countsInRow, surelyCounts } from './counts-behind.ts';
import type { Matched } from './match-prices.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { countOf, priceFact } from './read-order.ts';

// "$12.50 each x 40 = $500": what follows the equals sign beside a price each is the total.
// "bouts x 11 = $165, crowns x 3 = $150" gives each line its own.
export const equalsTotal = (reader: Reader, prices: readonly Price[], counts: ReadonlySet<number>): Price[] =>
  prices.map((price) => {
    if (price.per !== 'unsaid' || reader.tokens[price.start - 1]?.text !== '=') return price;
    // "8 bouts, 4 corsages, 1 halo = $365": behind several kinds, what they come to.
    if (prices.length === 1 && counts.size > 1 && [...counts].every((count) => count < price.start)) return { ...price, per: 'all' };
    const behindCount = counts.has(price.start - 2);
    // "30 lapels £7 = £210": the one times the other.
    const [each] = prices;
    const count = [...counts].map((index) => reader.tokens[index]?.number?.amount ?? '0')[0] ?? '0';
    if (each !== undefined && each !== price && counts.size === 1 && decimal(each.number.amount).times(count).equals(price.number.amount))
      return { ...price, per: 'all' };
    return behindCount || prices.some((other) => other.per === 'each') ? { ...price, per: 'all' } : price;
  });

// A price each beside a total: one when they agree, a question when they do not.
export const settleTotals = (reader: Reader, matched: Matched, pieces: number): Matched & { ask?: Ask } => {
  const [line, second] = matched.lines;
  const { common } = matched;
  if (line?.price === undefined || second !== undefined || common?.per !== 'all' || line.price.per === 'all') return matched;
  const each = line.price;
  const lines = [{ mention: line.mention }];
  if (decimal(each.number.amount).times(pieces).equals(common.number.amount))
    return { lines, common: { ...each, per: 'each' }, spare: [common] };
  const words = reader.words(Math.min(each.start, common.start), Math.max(each.end, common.end));
  const choice = (price: Price, per: 'each' | 'all') => ({
    words: reader.words(price.start, price.end),
    facts: [{ ...priceFact(price, per, false), words: reader.words(price.start, price.end) } as Fact],
  });
  return { lines, spare: [], ask: { about: 'price', why: 'each or all', words, choices: [choice(each, 'each'), choice(common, 'all')] } };
};

// "bouts 14, corsages 32" and nothing else: counts, or prices?
export const nameFirstAsk = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): Finding | undefined => {
  const lines = mentions.filter((mention) => mention.count !== undefined);
  if (
    lines.length < 2 ||
    prices.length > 0 ||
    !lines.every(
      (mention) =>
        mention.countIndex !== undefined &&
        mention.countIndex > mention.index &&
        mention.end === mention.countIndex + 1 &&
        mention.countIndex === mention.last + 1,
    )
  )
    return undefined;
  const numbers = lines.map((mention) => Number(mention.count?.number?.amount));
  if (numbers.some((number) => number < 5)) return undefined;
  // "bouts 11.50, corsages 28" can only be prices.
  const onlyPrices = numbers.some((number) => !Number.isInteger(number));
  const start = lines[0]?.start ?? 0;
  const end = lines.at(-1)?.end ?? 0;
  const words = reader.words(start, end);
  const counts = lines.map((mention) => ({ fact: 'pieces', piece: mention.kind, ...countOf(mention), words }) as Fact);
  const priced = lines.map(
    (mention) => ({ fact: 'price', amount: mention.count?.number?.amount ?? '', per: 'each', piece: mention.kind, words }) as Fact,
  );
  if (onlyPrices) return { start, end, facts: priced };
  const behind = countsInRow(reader, end, lines.length);
  const row = countsBehind(reader, end, lines.length) ?? (behind !== undefined && surelyCounts(reader, behind) ? behind : undefined);
  if (row !== undefined) {
    const facts = lines.flatMap((mention, at): Fact[] => [
      {
        fact: 'pieces',
        piece: mention.kind,
        count: Number(reader.tokens[row.places[at] ?? 0]?.number?.amount ?? 0),
        price: { amount: mention.count?.number?.amount ?? '', per: 'each' },
        words,
      },
    ]);
    return { start, end: row.end, facts };
  }
  return {
    start,
    end,
    asks: [
      {
        about: 'count',
        why: 'which number',
        words,
        choices: [
          { words: 'how many of each', facts: counts },
          { words: 'the price of each', facts: priced },
        ],
      },
    ],
  };
};
