// A price said with a most or a least, which a change could not keep: "16 corsages now, and no more than 30 each". It is read as part of an order.

import { findPrices } from '../order/prices.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

// "up to 14" and "from 14" may tell which way a price goes.
const moves = /^(up to|upto|from|down to)$/;

export const boundedPrice = (reader: Reader, part: Part): boolean =>
  findPrices(reader, new Set(), new Set(), part).some(({ start, end }) =>
    reader.tokens.slice(start, end).some(({ text, means }) => (means['upTo'] ?? means['from']) !== undefined && !moves.test(text)),
  );
