// Puts pieces and prices together into facts, and asks where a price could be for each or for all.

import { keepsPriceEach } from '../changes/same-price.ts';
import type { Fact, FactOf } from '../fact.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { NumberRead } from '../text/token.ts';
import type { Line, Matched } from './match-prices.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';

export const currencyFields = (number: NumberRead): { currency?: string; symbol?: string } => ({
  ...(number.currency === undefined ? {} : { currency: number.currency }),
  ...(number.symbol === undefined ? {} : { symbol: number.symbol }),
});

export const countOf = (mention: Mention): { count: number; countMax?: number; approx?: true } => {
  const number = mention.count?.number;
  if (number === undefined) return { count: mention.exact ?? 1 };
  return {
    count: Number(number.amount),
    ...(number.max === undefined ? {} : { countMax: Number(number.max) }),
    ...(number.approx === true ? { approx: true } : {}),
  };
};

const amounts = (number: NumberRead): { amount: string; amountMax?: string; amounts?: string[] } => ({
  amount: number.amount,
  ...(number.or !== undefined ? { amounts: [...number.or] } : number.max === undefined ? {} : { amountMax: number.max }),
});

export const priceFact = (price: Price, per: 'each' | 'all', coversOther: boolean): Unworded => ({
  fact: 'price',
  ...amounts(price.number),
  ...currencyFields(price.number),
  per,
  ...(price.kind === undefined ? {} : { kind: price.kind }),
  ...(coversOther && per === 'all' ? { coversOther: true } : {}),
});

// A total this small for one piece is no total: "34 lapels. R58".
const leastEach: Readonly<Record<string, number>> = { ZAR: 8, INR: 10 };

// "eleven lapels, all $17": each at it, where so little is no sum of so many. Common practice, no source.
const leastAll: Readonly<Record<string, number>> = { ZAR: 40, INR: 60 };
const allAtPrice = (reader: Reader, price: Price, pieces: number): boolean => {
  const before = reader.tokens[price.start - 1]?.text;
  const share = Number(price.number.amount) / pieces;
  const least = leastAll[price.number.currency ?? reader.context.currency] ?? 4;
  return before === 'all' && price.per === 'unsaid' && price.number.form === 'money' && pieces >= 3 && share < least;
};

// "happy at 300": the words before it are no piece, and the currency is one in which that is much for one.
export const loosely = (reader: Reader, price: Price): boolean => {
  const before = reader.tokens[price.start - 1];
  const piece = ['piece', 'material', 'taxName', 'each'].some((tag) => before?.means[tag] !== undefined);
  return before?.kind === 'word' && !piece && /^(GBP|EUR|USD|AUD|NZD|CAD)$/.test(reader.context.currency);
};

/** Each or all, where the words leave it open but one of the two is out of all proportion. */
export const likelyPer = (
  reader: Reader,
  price: Price,
  pieces: number,
  coversOther: boolean,
  loose: boolean,
): 'each' | 'all' | 'unsaid' => {
  if (allAtPrice(reader, price, pieces)) return 'each';
  if (price.per !== 'unsaid') return price.per;
  if (price.piece !== undefined) return 'each';
  if (price.number.max !== undefined && Number(price.number.max) < 120) return 'each';
  // "12 BH + 2 corsages, client happy at 300"
  const dear = loose && Number(price.number.amount) >= 150 && pieces >= 5;
  if (price.at && price.kind !== 'budget' && !dear) return 'each';
  if (pieces === 0) return price.kind === 'budget' ? 'all' : price.kind === 'from' || price.named === true ? 'each' : 'unsaid';
  if (pieces === 1) return 'each'; // one piece: each is all
  const share = Number(price.number.amount) / pieces;
  if (price.forCount === true) return share >= 2.5 ? 'all' : 'unsaid';
  if (price.kind === 'from') return 'each';
  if ((price.kind !== undefined || coversOther) && share >= 3 && Number(price.number.amount) >= 150) return 'all';
  return pieces >= 3 && share < (leastEach[price.number.currency ?? ''] ?? 0.9) ? 'each' : 'unsaid';
};

// "$14 or $12 each" on one line of several: from 12 to 14.
const ends = ({ amount, max, or }: NumberRead): { amount: string; amountMax?: string } => {
  const [low = amount, high = max] = or === undefined ? [amount, max] : or.toSorted((a, b) => Number(a) - Number(b));
  return { amount: low, ...(high === undefined ? {} : { amountMax: high }) };
};

const lineFact = ({ tokens }: Reader, line: Line, single: boolean): Unworded => {
  const { mention, price } = line;
  // "2 corsages budget 60" speaks of all there are.
  const whole = price?.per === 'all' || price?.forCount === true || (price?.kind === 'budget' && price.per === 'unsaid');
  const one = countOf(mention).count === 1 && mention.count?.number?.max === undefined; // each is all
  const own = price === undefined ? undefined : whole && !one ? 'line' : 'each';
  return {
    fact: 'pieces',
    piece: mention.kind,
    ...countOf(mention),
    ...(price === undefined || own === undefined
      ? {}
      : {
          price: {
            ...ends(price.number),
            per: own,
            ...(price.kind === undefined ? {} : { kind: price.kind }),
            ...currencyFields(price.number),
          },
        }),
    ...(mention.material === undefined || single ? {} : { material: mention.material as FactOf<'material'>['material'] }),
    ...(mention.wearer === undefined ? {} : { wearer: mention.wearer }),
    ...(single && price === undefined && keepsPriceEach(tokens, 0, tokens.length) ? { sameEach: true as const } : {}),
  };
};

export const lineFacts = (reader: Reader, matched: Matched): Fact[] => {
  const single = matched.lines.length === 1;
  // "30 at 12 and five at 40 euro": all of them are euro.
  const named = matched.lines.map((line) => line.price?.number).filter((number) => number !== undefined);
  const currencies = [...new Set(named.flatMap((number) => number.currency ?? number.symbol ?? []))];
  const known = named.find((number) => number.currency !== undefined || number.symbol !== undefined);
  const shared = (line: Line): Line =>
    currencies.length !== 1 || known === undefined || line.price === undefined || line.price.number.currency !== undefined
      ? line
      : { ...line, price: { ...line.price, number: { ...line.price.number, ...currencyFields(known) } } };
  return matched.lines.map(shared).map((line) => {
    const end =
      line.price === undefined || line.price.index < line.mention.end ? line.mention.end : Math.max(line.mention.end, line.price.end);
    return {
      ...lineFact(reader, line, single),
      words: reader.words(line.mention.start, end - line.mention.start > 12 ? line.mention.end : end),
    } as Fact;
  });
};

/** "12 bouts 12 bucks": each, or for all? */
export const askEachOrAll = (reader: Reader, price: Price): Ask => {
  const words = reader.words(price.start, price.end);
  const choice = (per: 'each' | 'all') => ({
    words: per === 'each' ? `${words} each` : `${words} for all`,
    facts: [{ ...priceFact(price, per, false), words } as Fact],
  });
  return { about: 'price', why: 'each or all', words, choices: [choice('each'), choice('all')] };
};
