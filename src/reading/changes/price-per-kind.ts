// "price per crown 58, i'd put 85": what one costs, and no number of crowns.

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';

const form = pattern(
  "(sorry|soz|ok|actually|oh|so|and|no|update|,|correction|the|new|my|our){0,4} (price|cost|rate|charge|pricing) (per|of|for|on) (a|an|each|the|one|our){0,2} <p:piece> (is|are|'s|now|goes|to|at|up|down|should be|should|be|read|:|=|-){0,3} <n:amount> (<each>)? (,|-|but|and|\\(|sorry){0,2} (not|was|i'd put|id put|i put|i said|i typed|i wrote|i had|we said|put|said|typed|instead of|rather than|from|up from|down from) <m:amount> (<each>)? (\\)|sorry|now|please|pls|oops|by mistake|before|earlier){0,2}",
);

export const pricePerKind = (reader: Reader, part: Part): Finding | undefined => {
  const match = form.at(reader.tokens, part.start, part.end);
  const { p, n, m } = match?.kept ?? {};
  const piece = p?.means['piece'] as PieceKind | undefined;
  if (match?.end !== part.end || n?.number === undefined || m?.number === undefined || n.number.max !== undefined) return undefined;
  const of = ofKind(piece);
  return found(reader, part.start, part.end, [
    { fact: 'change', what: 'price', to: n.number.amount, from: m.number.amount, per: 'each', ...currencyFields(n.number), ...of },
  ]);
};
