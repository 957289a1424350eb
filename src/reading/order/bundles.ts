// Prices of pairs and sets: "3 pairs of corsages at 50 a pair", "2 corsages 60 the pair", and what a bare price beside a pair may be for.

import { decimal } from '../../values/decimal.ts';
import type { Fact, FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import { isCount, type Token } from '../text/token.ts';
import type { Line, Matched } from './match-prices.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { countOf, lineFacts } from './read-order.ts';

/** "the pair", "the three": how many were counted right before. */
export type Bundle = 'pair' | number;

const behind = pattern('(,|\\()? (for)? (a|per|the|each|both|/) (pair|pr|two|three|four|five|six|trio)');
const sizes: Readonly<Record<string, number>> = { both: 2, two: 2, three: 3, trio: 3, four: 4, five: 5, six: 6 };
const both = pattern('(,)? for both');

/** "60 the pair", "60 for the two": the words behind a number that make it the price of a few that were just counted. */
export const bundleBehind = (tokens: readonly Token[], end: number): { bundle: Bundle; match: Match } | undefined => {
  const match = behind.at(tokens, end, tokens.length) ?? both.at(tokens, end, tokens.length);
  if (match === undefined || tokens[match.end]?.text === 'of' || tokens[match.end]?.means['piece'] !== undefined) return undefined;
  const last = tokens[match.end - 1]?.text ?? '';
  const each = /^(a|per|each|\/)$/.test(tokens[match.end - 2]?.text ?? '');
  if (each && !/^(pair|pr)$/.test(last)) return undefined;
  return { bundle: /^(pair|pr)$/.test(last) ? 'pair' : (sizes[last] ?? 0), match };
};

/** Whether a line is what such a price is for. */
export const isBundleOf = (bundle: Bundle, mention: Mention): boolean => {
  const count = countOf(mention).count;
  return bundle === 'pair' ? count % 2 === 0 : count === bundle;
};

const pairs = pattern('<n:count> (pairs|prs|pair) of (<material>)? <piece>');

/** "3 pairs of corsages": six. */
export const pairsBefore = ({ tokens, free }: Reader, index: number): { start: number; exact: number } | undefined => {
  for (const start of [index - 3, index - 4]) {
    const match = pairs.at(tokens, start, index + 1);
    if (match?.end === index + 1 && free(start)) return { start, exact: Number(match.kept['n']?.number?.amount) * 2 };
  }
  return undefined;
};

// "a pair of corsages", "set of 4 bouts"
const isBundle = ({ tokens }: Reader, { countIndex = -1 }: Mention): boolean =>
  /pair of$/.test(tokens[countIndex]?.text ?? '') ||
  (isCount(tokens[countIndex]) && tokens[countIndex - 1]?.text === 'of' && tokens[countIndex - 2]?.text === 'set');

// Six at 50 the pair come to 150.
const ofAll = (price: Price, mention: Mention): Price => {
  const count = countOf(mention).count;
  return price.bundle !== 'pair' || count % 2 !== 0
    ? price
    : {
        ...price,
        number: {
          ...price.number,
          amount: decimal(price.number.amount)
            .times(count / 2)
            .toFixed(),
        },
      };
};

/** The lines with the prices of their pairs, and a question where a price beside a pair or a set may be for one piece or for all of it. */
export const settleBundles = (reader: Reader, matched: Matched & { ask?: Ask }): Matched & { ask?: Ask } => {
  const [first, second] = matched.lines;
  const { common } = matched;
  if (common !== undefined && first !== undefined && second === undefined) {
    if (common.bundle !== undefined) return { ...matched, common: ofAll(common, first.mention) };
    const open = isBundle(reader, first.mention) && common.per === 'unsaid';
    return open ? { ...matched, common: { ...common, at: false } } : matched;
  }
  let asked: Ask | undefined;
  const lines = matched.lines.map((line): Line => {
    const { mention, price } = line;
    if (price === undefined) return line;
    if (price.bundle !== undefined) return { mention, price: ofAll(price, mention) };
    if (!isBundle(reader, mention) || price.per !== 'unsaid' || price.forCount === true || matched.ask !== undefined) return line;
    asked ??= ask(reader, line);
    return asked === undefined ? line : { mention };
  });
  return { ...matched, lines, ...(asked === undefined ? {} : { ask: asked }) };
};

const ask = (reader: Reader, { mention, price }: Line): Ask | undefined => {
  if (price === undefined) return undefined;
  const words = reader.words(mention.start, Math.max(mention.end, price.end));
  const choice = (per: 'each' | 'all') => {
    const [fact] = lineFacts(reader, { lines: [{ mention, price: { ...price, per } }], spare: [] }) as [FactOf<'pieces'>];
    return { words: per === 'each' ? `${price.number.amount} each` : `${price.number.amount} for all`, facts: [fact as Fact] };
  };
  return { about: 'price', why: 'each or all', words, choices: [choice('each'), choice('all')] };
};
