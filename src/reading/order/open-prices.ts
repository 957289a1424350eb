// Prices of kinds that nothing counts, where the words leave open what they are.

import type { Reader } from '../phrase.ts';
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

/** Whether the prices beside no counted piece say too little to be kept. */
export const ofNoneOrTwo = (reader: Reader, prices: readonly Price[]): boolean => secondOfTwo(reader, prices) || fromTo(reader, prices);
