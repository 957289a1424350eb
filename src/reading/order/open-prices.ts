// Prices of kinds that nothing counts, where the words leave open what they are.

import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Price } from './price-at.ts';

// "she's good with 24 n 55 each": which kinds the two belong to is not said here.
const secondOfTwo = (reader: Reader, prices: readonly Price[]): boolean => {
  const [price, second] = prices;
  const at = (price?.start ?? 0) - 1;
  return (
    price !== undefined &&
    second === undefined &&
    /^(and|n|&|\/)$/.test(reader.tokens[at]?.text ?? '') &&
    reader.tokens[at - 1]?.number?.form === 'plain' &&
    reader.free(at - 1)
  );
};

// "lapels from R80 to R90": where none are counted it may be a span, or a price that has gone up.
const fromTo = ({ tokens }: Reader, prices: readonly Price[]): boolean =>
  prices.some(
    ({ number, start, index, per }) =>
      number.max !== undefined && per === 'unsaid' && tokens[index - 1]?.text === 'from' && tokens[start - 1]?.means['piece'] !== undefined,
  );

// "£15 each for the first ten buttonholes and £12 each after that": which of them cost which is no price of a line.
const tiers = pattern('(the)? first <count> (<piece>|ones|of them|at|are|pieces)');
const beyond = pattern(
  '(after that|thereafter|beyond that|from there|from then|for the rest|for any more|after those|after the first|any more|any extra|extras|anything over|the rest|above that|over that|the others)',
);
const isTiered = ({ tokens }: Reader): boolean => {
  const first = tiers.in(tokens, 0, tokens.length);
  if (first === undefined || beyond.in(tokens, first.end, tokens.length) === undefined) return false;
  const prices = tokens.filter(({ number }, at) => number?.form === 'money' || (number !== undefined && tokens[at + 1]?.means['each']));
  return prices.length > 1;
};

// "she'll have 9 corsages if you do them for 25": ordered only at that price.
const onlyIf = pattern(
  "<piece> (,|-|but|only|though|pls|please){0,2} if (you|we|u|i) (can|could|will|would|'ll|were to)? (do|make|get|let|give|drop|knock|sell|offer|keep|bring|charge|come|go) (it|them|her|him|those|these|the price|each|all|us|me)? (go|have|down)? (for|at|to|under|down to)? <amount>",
);

// "10 lapels 14 each, 10 at 12 each if they take 20": the second counts nothing yet.
const ifMany = pattern(
  '<amount> (<each>)? if (they|she|he|we|you|client|the client|the bride|bride) (take|takes|order|orders|get|gets|buy|buys|have|has|want|wants|go|goes|do) (over|for|more than|at least|all|up to)? <count>',
);
const hangsOnCount = ({ tokens }: Reader): boolean => {
  const match = ifMany.in(tokens, 0, tokens.length);
  return (
    match !== undefined &&
    tokens.some(
      ({ number }, at) => at < match.start && (number?.form === 'money' || (number !== undefined && tokens[at + 1]?.means['each'])),
    )
  );
};

/** What is left unread where the price is one for the first of them and another for those beyond, or the order hangs on a price. */
export const hangsOnPrice = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  if (!isTiered(reader) && !hangsOnCount(reader) && onlyIf.in(tokens, 0, tokens.length) === undefined) return undefined;
  const takes = tokens.flatMap((_, index) => (reader.free(index) ? [index] : []));
  return { start: 0, end: tokens.length, takes, held: true };
};

/** Whether the prices beside no counted piece say too little to be kept. */
export const ofNoneOrTwo = (reader: Reader, prices: readonly Price[]): boolean => secondOfTwo(reader, prices) || fromTo(reader, prices);
