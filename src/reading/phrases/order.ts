// Pieces ordered and what they cost: "40 lapel pieces at 25", "6 bouts 3 corsages, $12 bouts $28 corsages", "1000 all up for 40".

import { decimal } from '../../values/decimal.ts';
import { problem } from '../../values/result.ts';
import type { Fact } from '../fact.ts';
import { type Matched, matchPrices } from '../order/match-prices.ts';
import { findMentions, type Mention } from '../order/mentions.ts';
import { findPrices, type Price } from '../order/prices.ts';
import { askEachOrAll, countOf, likelyPer, lineFacts, priceFact } from '../order/read-order.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { Token } from '../text/token.ts';

// "twenty-odd corsages, wrist ones": a second name without a number says more about the first.
const refined = (mentions: readonly Mention[]): Mention[] => {
  const kept: Mention[] = [];
  for (const mention of mentions) {
    const before = kept.at(-1);
    const near = before !== undefined && mention.start - before.end <= 2;
    if (near && before.kind === 'corsage' && mention.countIndex === undefined && /^(wrist|pin) corsage$/.test(mention.kind)) {
      kept[kept.length - 1] = { ...before, kind: mention.kind, end: mention.end };
    } else if (
      near &&
      before.countIndex !== undefined &&
      mention.countIndex === undefined &&
      before.kind === 'unspecified' &&
      mention.kind !== 'unspecified'
    ) {
      kept[kept.length - 1] = { ...before, kind: mention.kind, end: mention.end };
    } else kept.push(mention);
  }
  // "50 pieces in all" beside named kinds is their sum, not another order.
  const named = kept.filter((mention) => mention.countIndex !== undefined && mention.kind !== 'unspecified');
  return named.length > 0 ? kept.filter((mention) => mention.kind !== 'unspecified') : kept;
};

const wanted = new Set([
  'need',
  'want',
  'needs',
  'wants',
  'and',
  '+',
  '&',
  ',',
  'plus',
  'order',
  'quote',
  'doing',
  'making',
  'also',
  'with',
  'make',
  'do',
]);

// "a crown" counts only in a list or after "need"; in talk it is just a crown.
const certain = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): Mention[] => {
  const numbered = mentions.some((mention) => mention.count !== undefined);
  return mentions.map((mention) => {
    if (mention.exact !== 1) return mention;
    const before = reader.tokens[mention.start - 1];
    if (numbered || prices.length > 0 || (before !== undefined && wanted.has(before.text))) return mention;
    const { exact: _, countIndex: __, ...unnumbered } = mention;
    return unnumbered;
  });
};

const takes = (mentions: readonly Mention[], prices: readonly Price[]): number[] => {
  const tokens = new Set<number>();
  for (const mention of mentions) {
    for (let index = mention.start; index < mention.end; index++) if (index !== mention.materialIndex) tokens.add(index);
    if (mention.apart === true && mention.countIndex !== undefined) tokens.add(mention.countIndex);
  }
  for (const price of prices) {
    for (let index = price.start; index < price.end; index++) tokens.add(index);
    if (price.pieceIndex !== undefined) tokens.add(price.pieceIndex);
  }
  return [...tokens].sort((a, b) => a - b);
};

// "buttonholes 10 corsage 22" behind "6 buttonholes, 1 corsage": their prices.
const pairPrices = (reader: Reader, mentions: readonly Mention[]): Price[] =>
  mentions.flatMap((mention) => {
    const number = mention.priceIndex === undefined ? undefined : reader.tokens[mention.priceIndex]?.number;
    if (mention.priceIndex === undefined || number === undefined) return [];
    return [
      {
        index: mention.priceIndex,
        start: mention.priceIndex,
        end: mention.priceIndex + 1,
        number,
        per: 'each' as const,
        at: false,
        piece: mention.kind,
        pieceIndex: mention.index,
      },
    ];
  });

// "50 boutonniere + 20 corsage, 250 and 450 resp.": as many plain numbers behind the pieces as there are pieces.
const withListed = (reader: Reader, mentions: readonly Mention[], counts: ReadonlySet<number>, prices: readonly Price[]): Price[] => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined);
  const last = lines.at(-1);
  if (lines.length < 2 || last === undefined || prices.length > 1) return [...prices];
  const respective = reader.tokens.some(
    (token) =>
      /^(resp|respectively|each)$/.test(token.text) || token.means['taxName'] !== undefined || token.means['taxWord'] !== undefined,
  );
  const numbers = reader.tokens.flatMap((token, index) =>
    index > last.end - 1 && token.number?.form === 'plain' && !counts.has(index) && reader.free(index) ? [index] : [],
  );
  const plausible = numbers.every((index) => Number(reader.tokens[index]?.number?.amount) >= 5);
  if (numbers.length !== lines.length || !(respective || plausible)) return [...prices];
  return numbers.map((index) => {
    const token = reader.tokens[index];
    const known = prices.find((price) => price.index === index);
    return (
      known ?? { index, start: index, end: index + 1, number: token?.number ?? { form: 'plain', amount: '0' }, per: 'each', at: false }
    );
  });
};

// "bouts from $18, need 10": the number stands apart from the only kind that is named.
const needs = pattern(
  '(need|want|needs|wants|x|qty|quantity|order|ordering|do|doing|about|around|,|for|say|just) (about|around|:)? <n:count> (of them|of those|pls|please|no|nos|pcs|pieces|in all|thanks)?',
);
const needed = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): Mention[] => {
  const priced = new Set(prices.flatMap((price) => Array.from({ length: price.end - price.start }, (_, at) => price.start + at)));
  const used = new Set(mentions.flatMap((mention) => mention.countIndex ?? []));
  return mentions.map((mention, at) => {
    if (mention.countIndex !== undefined) return mention;
    const from = mentions.length === 1 ? 0 : mention.end;
    const to = mentions.length === 1 ? reader.tokens.length : (mentions[at + 1]?.start ?? reader.tokens.length);
    const number = neededNumber(reader, from, to, (index) => !priced.has(index) && !used.has(index), prices);
    return number === undefined ? mention : { ...mention, count: reader.tokens[number] as Token, countIndex: number, apart: true };
  });
};

const ofThem = pattern('<n:count> (of them|of those|of these|in all|off|no|nos|pax|guests|people|persons|of ,)');
const neededNumber = (
  reader: Reader,
  from: number,
  to: number,
  open: (index: number) => boolean,
  prices: readonly Price[],
): number | undefined => {
  for (let index = from; index < to; index++) {
    const match = ofThem.at(reader.tokens, index, to) ?? needs.at(reader.tokens, index, to);
    const number = match?.kept['n'];
    const at = number === undefined ? -1 : reader.tokens.indexOf(number, index);
    const next = reader.tokens[match?.end ?? 0];
    const plainNoun =
      next !== undefined &&
      next.kind === 'word' &&
      next.means['material'] === undefined &&
      next.means['included'] === undefined &&
      next.means['piece'] === undefined;
    if (match === undefined || number === undefined || !open(at) || !reader.free(at) || plainNoun) continue;
    if (reader.tokens[index]?.text === ',' && !prices.some((price) => price.index > at)) continue;
    return at;
  }
  return undefined;
};

// "€8,25 per buttonhole, 60 of them": the kind is named only by its price.
const pricedOnly = (mentions: readonly Mention[], prices: readonly Price[]): readonly Mention[] => {
  const [price] = prices;
  if (
    mentions.length > 0 ||
    price?.piece === undefined ||
    price.piece === 'unspecified' ||
    price.pieceIndex === undefined ||
    prices.length > 1
  )
    return mentions;
  return [{ index: price.pieceIndex, last: price.pieceIndex, start: price.pieceIndex, end: price.pieceIndex + 1, kind: price.piece }];
};

// "$12.50 each x 40 = $500": what follows the equals sign beside a price each is the total.
const equalsTotal = (reader: Reader, prices: readonly Price[]): Price[] =>
  prices.map((price) =>
    price.per === 'unsaid' && reader.tokens[price.start - 1]?.text === '=' && prices.some((other) => other.per === 'each')
      ? { ...price, per: 'all' }
      : price,
  );

// A price each beside a total: one when they agree, a question when they do not.
const settleTotals = (reader: Reader, matched: Matched, pieces: number): Matched & { ask?: Ask } => {
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
const nameFirstAsk = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): Finding | undefined => {
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
  const start = lines[0]?.start ?? 0;
  const end = lines.at(-1)?.end ?? 0;
  const words = reader.words(start, end);
  const counts = lines.map((mention) => ({ fact: 'pieces', piece: mention.kind, ...countOf(mention), words }) as Fact);
  const priced = lines.map(
    (mention) => ({ fact: 'price', amount: mention.count?.number?.amount ?? '', per: 'each', piece: mention.kind, words }) as Fact,
  );
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

const find = (reader: Reader): Finding[] => {
  const all = refined(findMentions(reader));
  const counts = new Set(all.flatMap((mention) => (mention.countIndex === undefined ? [] : [mention.countIndex])));
  const ends = new Set(all.filter((mention) => mention.countIndex !== undefined).map((mention) => mention.last));
  const prices = withListed(reader, all, counts, [...findPrices(reader, counts, ends), ...pairPrices(reader, all)]);
  const mentions = needed(reader, pricedOnly(certain(reader, all, prices), prices), prices);
  const ordered = mentions.filter((mention) => mention.countIndex !== undefined);
  if (ordered.length === 0 && prices.length === 0) return [];
  const pieces = ordered.reduce((sum, mention) => sum + countOf(mention).count, 0);
  const ambiguous = nameFirstAsk(reader, mentions, prices);
  if (ambiguous !== undefined) return [ambiguous];
  const matched = settleTotals(reader, matchPrices(mentions, equalsTotal(reader, prices)), pieces);
  const coversOther = reader.tokens.some((token) => token.means['other'] !== undefined);
  const facts: Fact[] = lineFacts(reader, matched);
  const asks: Ask[] = matched.ask === undefined ? [] : [matched.ask];
  const read: Price[] = matched.lines.flatMap((line) => (line.price === undefined ? [] : [line.price]));
  const common = matched.common;
  if (matched.ask !== undefined || matched.lines.length === 1)
    read.push(
      ...matched.spare.filter((price) => price.per === 'all'),
      ...(matched.ask === undefined ? [] : prices.filter((price) => !read.includes(price))),
    );
  const trade =
    ordered.length > 0 ||
    mentions.length > 0 ||
    (common !== undefined && (common.per === 'each' || common.kind !== undefined || taxNear(reader)));
  if (common !== undefined && trade) {
    const per = likelyPer(mentions.length === 1 ? { ...common, named: true } : common, pieces);
    if (per === 'unsaid' && ordered.length > 0) {
      asks.push(askEachOrAll(reader, common));
      read.push(common);
    } else if (per !== 'unsaid') {
      facts.push({ ...priceFact(common, per, coversOther), words: reader.words(common.start, common.end) } as Fact);
      read.push(common);
    }
  }
  if (facts.length === 0 && asks.length === 0) return [];
  const bad = ordered.find(
    (mention) =>
      reader.tokens[mention.start - 1]?.text === '-' &&
      reader.tokens[mention.start]?.glued === true &&
      mention.count !== undefined &&
      reader.tokens[mention.start - 1]?.glued !== true,
  );
  const problems = bad === undefined ? [] : [problem('count-not-positive', { words: reader.words(bad.start - 1, bad.end) })];
  const tokens = takes(ordered, read);
  const [first = 0] = tokens;
  return [{ start: first, end: (tokens.at(-1) ?? first) + 1, takes: tokens, facts, asks, problems }];
};

const taxNear = (reader: Reader): boolean =>
  reader.tokens.some((token) => token.means['taxName'] !== undefined || token.means['taxWord'] !== undefined);

export const order: Phrase = {
  name: 'order',
  examples: ['40 lapel pieces at 25', '8 buttonholes at 18, 2 wrist corsages at 42', '1000 all up for 40 lapel pieces'],
  find,
};
