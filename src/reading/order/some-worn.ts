// "one crown is for a baby so 40", "2 of the bouts are for the page boys at 10": who wears some of them, and what those cost. The thread knows whether they are ordered already.

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { nameOf } from '../wearers/role-counts.ts';
import { priceEach } from './price-each.ts';

const so =
  "(so|,|-|;|at|@|make it|make that|make them|that's|thats|its|it's|it|they're|that one|can be|should be|will be|is|are|just|only|call it|say){0,4}";
const form = pattern(
  `(but|and|,|ok|also|so|actually){0,2} <n:count> (of)? (the|those|these|our)? <p:piece> (is|are|'s|will be|was|were) for (a|an|the|her|his|our|my|their|some|one|two)? (little|tiny|small|young|wee)? <r:role> ${so} <a:amount> (<each>)? (please|pls|for (that|those|them|it))? (one|ones)?`,
);

export const someWorn = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : form.at(reader.tokens, start, end);
  const { n, p, r, a } = match?.kept ?? {};
  const { piece } = ofKind(p?.means['piece'] as PieceKind | undefined);
  if (match?.end !== end || n?.number === undefined || a?.number === undefined || piece === undefined) return undefined;
  if (!isSingle(n.number) || !isSingle(a.number) || !allFree(reader, start, end)) return undefined;
  const count = Number(n.number.amount);
  const role = r?.means['role'];
  if (role === undefined || role === 'rest') return undefined;
  return found(reader, start, end, [{ fact: 'pieces', piece, count, price: priceEach(a.number), wearer: nameOf(role, count) }]);
};
