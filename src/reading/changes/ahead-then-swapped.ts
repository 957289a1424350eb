// The kind is named first, and behind a pause what is to come in its place: "the 5 pin corsages, do them as wrist ones instead", "for the 4 crowns, combs instead".

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, isSingle, type Token } from '../text/token.ts';

const lead = '(sorry|soz|ok|actually|oh|so|oops|and|update|right|change|,|please|pls|re|for|about|with){0,4}';
const whose = '(for (the|her|his|our|their)? (<count>)? <role>)?';
const asked =
  "(can|could|may|you|u|ya|we|please|pls|just|she|he|they|bride|client|couple|wants|want|would|like|like us to|us to|to|lets|let's|i|i'd|id|now|actually|both|need|is|are){0,5}";
// "the corsages, put them with the bouts" packs them, and "make those combs" may be of combs that are there.
const it = "(them|em|' em|it|that|that lot) (all|both|now){0,2}";
const those = '(them|those|these|it|that) (all|both|up|over|out){0,2}';
const become = `(do|make|have|turn|redo|remake|want) (${it}|(those|these|all|both) (all|both)? (as|into|to be)) (all)? (as|into|to be)?`;
const change = `(change|switch|swap|convert|turn|replace) (${those})? (for|to|into|with|over to|as)`;
const bare = '(do|make|have|use|want|go for|put)? (them|those|these|that|it)? (all)? (as)?';
const other = '(the|a|all)? (<m:count>)? <b:piece>';
const ends =
  '(instead|rather|now|please|pls|thanks|ta|sorry|,){0,3} ((at|@) <c:amount> (<each>)?|<c:money> (<each>)?)? (instead|rather|now|please|pls|thanks|ta|sorry){0,2}';
const pause = '(,|-|:|;|\\.|<line>){0,2}';
const subject = `${lead} (<t:word>)? (of)? (the|those)? (<n:count>)? <a:piece> ${whose}`;
const forms = [
  `${subject} ${pause} ${asked} (${become}|${change}) ${other} ${ends}`,
  `${subject} ${pause} ${asked} ${bare} ${other} (instead|rather) ${ends}`,
].map((source) => pattern(source));
const whole = /^(the|those|these|all|all the|both|our|her|his|their|my)$/;

const kindsOf = (match: Match): readonly [PieceKind, PieceKind] | undefined => {
  const [from, to] = [kindNamed(match.kept['a']), kindNamed(match.kept['b'])];
  return from === undefined || to === undefined || from === to ? undefined : [from, to];
};
const amount = (token: Token | undefined): number | undefined => (token?.number === undefined ? undefined : Number(token.number.amount));

const factsOf = (reader: Reader, { kept }: Match, [from, to]: readonly [PieceKind, PieceKind]): readonly Unworded[] => {
  const [old, given, price] = [amount(kept['n']), amount(kept['m']) ?? amount(kept['n']), kept['c']?.number];
  const priced: Unworded[] =
    price === undefined ? [] : [{ fact: 'change', what: 'price', to: price.amount, per: 'each', ...currencyFields(price), piece: to }];
  // "the 4 corsages, do wrist ones instead": the thread knows under which name it holds them.
  if (given === undefined || (from === 'corsage' && /corsage/.test(to)))
    return [
      { fact: 'change', what: 'piece', from, to, piece: from },
      ...(given === undefined ? [] : [{ fact: 'change', what: 'count', to: given, piece: to } as const]),
      ...priced,
    ];
  const gone: Unworded = { fact: 'change', what: 'count', to: 0, ...(old === undefined ? {} : { from: old }), piece: from };
  // Of the other kind some may be there already, and they stay.
  const more: Unworded = reader.context.pieces.includes(to)
    ? { fact: 'change', what: 'count', by: given, piece: to }
    : { fact: 'change', what: 'count', to: given, piece: to };
  return [more, gone, ...priced];
};

/** One kind in place of the one named ahead; held where how many is not said. */
export const aheadThenSwapped = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  for (const form of forms) {
    const match = form.might(tokens) ? form.at(tokens, part.start, tokens.length) : undefined;
    if (match === undefined || match.end < part.end || (match.end > part.end && !reader.message.parts.some(({ end }) => end === match.end)))
      continue;
    const kinds = kindsOf(match);
    if (kinds === undefined) continue;
    const { t, n, m, c } = match.kept;
    const article = tokens
      .slice(match.start, tokens.indexOf((n ?? match.kept['a']) as Token, match.start))
      .some(({ text }) => whole.test(text));
    if (t !== undefined && !whole.test(t.text)) continue;
    // "5 pin corsages, do them as wrist ones": five of them, or all there are.
    const open = [n, m].some((token) => isRangeOrChoice(token?.number)) || (c !== undefined && !isSingle(c.number));
    if (open || (n !== undefined && !article)) return { start: match.start, end: match.end, held: true };
    return found(reader, match.start, match.end, factsOf(reader, match, kinds));
  }
  return undefined;
};
