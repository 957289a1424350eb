// A seller's list of prices, pasted whole: what stands at its head or below it is the seller's too.

import type { Reader } from '../phrase.ts';

/** Goods enough to be a list. */
export const longList = 3;

/** "Dried & sundries, all inc GST" over lines of prices, "FRESH" over some of them: what is sold, not what the event has. */
export const isPriceList = ({ facts, tokens }: Reader): boolean =>
  facts.filter(({ fact }) => fact === 'pack').length >= longList &&
  facts.every(({ fact }) => fact === 'pack' || fact === 'tax') &&
  tokens.filter(({ kind }) => kind === 'line').length >= longList;
