// So many at a price taken back for so many at another: "16 at 12 not 14 at 12", "should be 20 at 15 instead of 18 at 14". Neither is an hour.

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isNumber } from '../text/token.ts';
import { bareWords } from './change-words.ts';

const now = '<a:count> (of them|<l:piece>)? (at|@) <p:amount> (<each>)?';
const before = '<b:count> (of them|<k:piece>)? (at|@) <q:amount> (<each>)?';
const forms = [
  `${now} (,|-)? (and)? (not|rather than|instead of|no longer) ${before}`,
  `(not|instead of) ${before} (,|-|but|its|it's|make it){0,2} ${now}`,
  `${before} (was|is)? (,|-)? (it's|its|they're|and|but)? (should be|should've been|should have been|should read|is now|now|wrong,|meant) ${now}`,
].map((source) => pattern(source));
const countedAt = pattern('<count> (at|@) <plain>');

/** "5 at 3": so many at a price, where an hour has no number before it. */
export const saysCountAt = ({ tokens }: Reader, { start, end }: Part): boolean => countedAt.in(tokens, start, end) !== undefined;

export const countAtPrice = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  let from = part.start;
  while (from < part.end && firstAt(forms, tokens, from, part.end) === undefined) {
    const token = tokens[from];
    if (token === undefined || isNumber(token, 'plain', 'money') || (token.kind === 'word' && !bareWords.has(token.text))) return undefined;
    from += 1;
  }
  const match = firstAt(forms, tokens, from, part.end);
  if (match === undefined || tokens.slice(match.end, part.end).some(({ kind, text }) => kind === 'word' && !bareWords.has(text)))
    return undefined;
  const [a, b, p, q] = ['a', 'b', 'p', 'q'].map((name) => match.kept[name]?.number);
  if (a === undefined || b === undefined || p === undefined || q === undefined) return undefined;
  const kinds = new Set([match.kept['k'], match.kept['l']].flatMap((token) => (token?.means['piece'] ?? []) as PieceKind | []));
  const [kind] = kinds;
  const piece = ofKind(kind);
  const facts: Unworded[] = [];
  if (a.amount !== b.amount) facts.push({ fact: 'change', what: 'count', to: Number(a.amount), from: Number(b.amount), ...piece });
  if (p.amount !== q.amount)
    facts.push({ fact: 'change', what: 'price', to: p.amount, from: q.amount, per: 'each', ...currencyFields(p), ...piece });
  const sure = [a, b, p, q].every(({ max, or }) => max === undefined && or === undefined) && facts.length > 0 && kinds.size < 2;
  return sure ? found(reader, part.start, part.end, facts) : { start: part.start, end: part.end, held: true };
};
