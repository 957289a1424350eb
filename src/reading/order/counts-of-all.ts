// How many there are together, said beside the kinds: "38 all told - 30 lapels, 8 corsages", "38 pieces in all: 30 lapels at 17, 8 corsages at 32". It is no price.

import type { Reader } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { countOf } from './read-order.ts';

export interface CountsOfAll {
  /** The prices that are none. */
  readonly prices: readonly Price[];
  /** The tokens of "38 pieces". */
  readonly tokens: readonly number[];
  /** A total that could only be a number of pieces, and is not theirs. */
  readonly doubtful: boolean;
}

const fewMore = 5; // spares beside one kind
const leastEach = 2; // a whole order for less than this a piece is no price, whatever the currency: common practice, no source

// "12 bouts, total 18 pieces" and "bouts 12, total 18 pieces": of which kind the others are, or whether twelve is the price, is not said.
const unlike = ({ tokens }: Reader, mentions: readonly Mention[], prices: readonly Price[], lines: readonly Mention[]): boolean => {
  const ofPieces = prices.find(
    ({ number, per, index }) => number.form === 'plain' && per === 'all' && tokens[index + 1]?.means['piece'] === 'unspecified',
  );
  const [line, other] = lines;
  if (ofPieces !== undefined) return line !== undefined && other === undefined;
  const whole = mentions.find(({ kind, countIndex }) => kind === 'unspecified' && countIndex !== undefined);
  const told = whole !== undefined && [whole.start - 1, whole.end].some((at) => tokens[at]?.means['all'] !== undefined);
  return (
    told &&
    line === undefined &&
    mentions.some(
      ({ kind, last }) => kind !== 'unspecified' && [1, 2].some((by) => tokens[last + by]?.number !== undefined && last + by < whole.start),
    )
  );
};

export const countsOfAll = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): CountsOfAll => {
  const counted = mentions.filter(({ countIndex }) => countIndex !== undefined);
  const lines = counted.filter(({ kind }) => kind !== 'unspecified');
  if (unlike(reader, mentions, prices, lines)) return { prices: [], tokens: [], doubtful: true };
  const [line] = lines;
  // "15 lapels and 2 spares so 16 total": a sum of pieces that is none of theirs, and no price.
  const few = line !== undefined && lines.length === 1 ? Math.max(countOf(line).count, 2) + fewMore : 0;
  const spares = few > 0 && reader.tokens.some(({ text }) => /^spares?$/.test(text));
  if (spares && prices.some(({ number, per }) => number.form === 'plain' && per === 'all' && Number(number.amount) <= few))
    return { prices: [], tokens: [], doubtful: true };
  if (lines.length < 2 || lines.some(({ count }) => count?.number?.max !== undefined)) return { prices: [], tokens: [], doubtful: false };
  const all = lines.reduce((sum, line) => sum + countOf(line).count, 0);
  const bare = prices.filter(
    ({ number, per, kind }) => number.form === 'plain' && per === 'all' && kind === undefined && number.max === undefined,
  );
  const isSum = ({ number }: Price): boolean => Number(number.amount) === all;
  const sums = counted.filter((line) => line.kind === 'unspecified' && countOf(line).count === all);
  return {
    prices: bare.filter(isSum),
    tokens: sums.flatMap(placesIn),
    doubtful: bare.some((price) => !isSum(price) && Number(price.number.amount) < leastEach * all),
  };
};
