// Counts and prices that stand apart from their piece: "bouts from $18, need 10", "250 and 450 resp.", "60 of them".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { namesTax } from '../text/of-tax.ts';
import { placesIn } from '../text/places-in.ts';
import { isEnd } from '../text/sentence-end.ts';
import { firstWhere, isCount, type Token } from '../text/token.ts';
import { countsBehind, countsInRow, surelyCounts } from './counts-behind.ts';
import { related } from './match-prices.ts';
import type { Mention } from './mention.ts';
import { neededNumber } from './needed-number.ts';
import type { Price } from './price-at.ts';

// "buttonholes 10 corsage 22" behind "6 buttonholes, 1 corsage": their prices.
export const pairPrices = (reader: Reader, mentions: readonly Mention[]): Price[] =>
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

// "5 bouts, 1 corsage 28, bouts 12": a kind named again right before a price names what it is for.
export const namedBefore = ({ tokens }: Reader, mentions: readonly Mention[], prices: readonly Price[]): Price[] => {
  // "bout $14 corsage $30", "bouts x12 £6 corsages x4 £28": each price goes with the name before it, not the one behind.
  const owners = prices.map((price) => mentions.find((mention) => mention.last === price.start - 1 || mention.end === price.start));
  const behind = tokens[prices.at(-1)?.end ?? 0]?.means['piece'] !== undefined;
  const goesBehind = (own: Mention | undefined): boolean =>
    own !== undefined && (!behind || own.countIndex === undefined || own.countIndex > own.last);
  // "£22 a comb" says itself what it is for.
  const named = prices.some(
    (price) => price.pieceIndex !== undefined && price.pieceIndex < price.end && tokens[price.pieceIndex - 1]?.text !== 'each',
  );
  if (prices.length >= 2 && !named && owners.every(goesBehind))
    return prices.map((price, at) => ({
      ...price,
      piece: owners[at]?.kind ?? 'unspecified',
      pieceIndex: owners[at]?.index ?? price.index,
    }));
  return prices.map((price) => {
    const own = mentions.find((mention) => mention.countIndex === undefined && mention.last === price.start - 1);
    const known = own !== undefined && mentions.some(({ kind, countIndex }) => countIndex !== undefined && related(kind, own.kind));
    // "groom 1 @ $20, 6 bouts @ $15": with a price too many each goes to the line right before it.
    const lines = mentions.filter((mention) => mention.countIndex !== undefined);
    const line = prices.length > lines.length && lines.length > 1 ? lines.find((mention) => mention.end === price.start) : undefined;
    const named = known ? own : line;
    return named !== undefined && price.piece === undefined ? { ...price, piece: named.kind, pieceIndex: named.index } : price;
  });
};

// "15 / 26 / 24": nothing but signs between them.
const inARow = (reader: Reader, numbers: readonly number[]): boolean =>
  numbers.every((number, at) => {
    const next = numbers[at + 1];
    return next === undefined || (next === number + 2 && /^([,/&+-]|and|n)$/.test(reader.tokens[number + 1]?.text ?? ''));
  });

// "she's 5. … Call me after 6": numbers of two sentences are no list.
const inOneSentence = (tokens: readonly Token[], numbers: readonly number[]): boolean => {
  const last = numbers.at(-1) ?? 0;
  return firstWhere(tokens, numbers[0] ?? 0, last, (_, index) => isEnd(tokens, index)) < 0;
};

// "50 boutonniere + 20 corsage, 250 and 450 resp.": as many plain numbers behind the pieces as there are pieces.
export const withListed = (
  reader: Reader,
  mentions: readonly Mention[],
  counts: ReadonlySet<number>,
  prices: readonly Price[],
): Price[] => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined);
  const last = lines.at(-1);
  if (lines.length < 2 || last === undefined) return [...prices];
  // "bouts 18, corsages 42. 8 and 5 of them": those are the prices, and these count.
  const row = countsInRow(reader, last.end, lines.length);
  if (row !== undefined && surelyCounts(reader, row)) return prices.filter(({ index }) => !row.places.includes(index));
  const respective = reader.tokens.some((token) => /^(resp|respectively|each)$/.test(token.text) || namesTax(token));
  const numbers = reader.tokens.flatMap((token, index) =>
    index > last.end - 1 && token.number?.form === 'plain' && !counts.has(index) && reader.free(index) ? [index] : [],
  );
  if (prices.length > 1 && !(inARow(reader, numbers) && prices.every((price) => numbers.includes(price.index)))) return [...prices];
  const plausible = numbers.every((index) => Number(reader.tokens[index]?.number?.amount) >= 5);
  if (numbers.length !== lines.length || !(respective || plausible) || !inOneSentence(reader.tokens, numbers)) return [...prices];
  return numbers.map((index) => {
    const token = reader.tokens[index];
    const known = prices.find((price) => price.index === index);
    return (
      known ?? { index, start: index, end: index + 1, number: token?.number ?? { form: 'plain', amount: '0' }, per: 'each', at: false }
    );
  });
};

const countedBefore = (mentions: readonly Mention[], mention: Mention): boolean =>
  mentions.some((other) => other.countIndex !== undefined && other.countIndex < mention.index && related(other.kind, mention.kind));
export const needed = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): Mention[] => {
  const priced = new Set(prices.flatMap(placesIn));
  const used = new Set(mentions.flatMap((mention) => mention.countIndex ?? []));
  const row = neededRow(reader, mentions, prices);
  if (row !== undefined) return row;
  return mentions.map((mention, at) => {
    if (mention.countIndex !== undefined) return mention;
    // "22 lapels and 5 wrist corsages, $30 a corsage, 210 guests": a kind that was counted needs no number.
    if (prices.some(({ pieceIndex, index }) => pieceIndex === mention.index && index < mention.index) && countedBefore(mentions, mention))
      return mention;
    const from = mentions.length === 1 ? 0 : mention.end;
    const to = mentions.length === 1 ? reader.tokens.length : (mentions[at + 1]?.start ?? reader.tokens.length);
    const number = neededNumber(reader, from, to, (index) => !priced.has(index) && !used.has(index), prices, mentions.length > 1);
    const place = number ?? (mentions.length === 1 ? (bareBehind(reader, mention, prices) ?? beforePrice(reader, prices)) : undefined);
    return place === undefined ? mention : { ...mention, count: reader.tokens[place] as Token, countIndex: place, apart: true };
  });
};

// "18 @ 14, lapels": the number before the only price, when nothing else counts the only kind.
const beforePrice = (reader: Reader, prices: readonly Price[]): number | undefined => {
  const [price, second] = prices;
  const at = (price?.start ?? 0) - 1;
  return price?.at === true && second === undefined && price.per !== 'all' && isCount(reader.tokens[at]) && reader.free(at)
    ? at
    : undefined;
};

// "bouts 24, $11 a pop": a number right behind the only kind, when another is the price of one.
const bareBehind = (reader: Reader, mention: Mention, prices: readonly Price[]): number | undefined => {
  const at = mention.last + 1;
  const [price, second] = prices;
  const told = price !== undefined && second === undefined && price.index > at && (price.per === 'each' || price.at);
  if (!told || !isCount(reader.tokens[at]) || !reader.free(at)) return undefined;
  // "buttonholes 35 £6 ea": the price stands right behind.
  return /^(,|\.|-)?$/.test(reader.tokens[at + 1]?.text ?? '') || reader.tokens[at + 1]?.number?.form === 'money' ? at : undefined;
};

// "corsages 95 each, bouts 60 each, need 8 and 22": as many numbers in a row as there are kinds with a price.
const wanting = /^(need|want|needs|wants|qty|order|ordering|doing|making|quantities|numbers|nos)$/;
const neededRow = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): Mention[] | undefined => {
  if (mentions.length < 2 || mentions.some((mention) => mention.countIndex !== undefined) || prices.length !== mentions.length)
    return undefined;
  const last = mentions.at(-1)?.last ?? 0;
  const start = reader.tokens.findIndex((token, index) => index > last && wanting.test(token.text));
  const behind = Math.max(last, ...prices.map(({ end }) => end - 1)) + 1;
  const row = start < 0 ? undefined : countsBehind(reader, start, mentions.length);
  const places = (row ?? countsInRow(reader, behind, mentions.length))?.places;
  if (places === undefined) return undefined;
  return mentions.map((mention, at) => ({
    ...mention,
    count: reader.tokens[places[at] ?? 0] as Token,
    countIndex: places[at] ?? 0,
    apart: true as const,
  }));
};

// "R95 per buttonhole, 10 of them, 4 corsages R220": beside other kinds the number right behind such a price counts its kind.
const ofThose = pattern('(,|-|;|:)? <count> (of them|of those|of these)');
const pricedBeside = ({ tokens }: Reader, mentions: readonly Mention[], prices: readonly Price[]): readonly Mention[] => {
  const [price] = prices;
  const { piece, pieceIndex } = price ?? {};
  const all = mentions.every((mention) => mention.countIndex !== undefined && mention.kind !== piece && mention.start > (price?.end ?? 0));
  if (price?.per !== 'each' || piece === undefined || piece === 'unspecified' || pieceIndex === undefined || !all) return mentions;
  if (ofThose.at(tokens, price.end, tokens.length) === undefined) return mentions;
  return [{ index: pieceIndex, last: pieceIndex, start: pieceIndex, end: pieceIndex + 1, kind: piece }, ...mentions];
};

// "€8,25 per buttonhole, 60 of them": the kind is named only by its price.
export const pricedOnly = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): readonly Mention[] => {
  if (mentions.length > 0 && prices.length > 1) return pricedBeside(reader, mentions, prices);
  const [price] = prices;
  // "14 a bout, 18 pcs": the kind is said with the price, the number behind it.
  const counted = mentions.filter((mention) => mention.countIndex !== undefined || mention.index !== price?.pieceIndex);
  const [only, second] = counted;
  // "₹250 per boutonniere x 20 nos"
  if (only?.kind === 'unspecified' && second === undefined && price?.piece !== undefined && prices.length === 1)
    return [{ ...only, kind: price.piece }];
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
