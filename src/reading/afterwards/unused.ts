// What was bought or made and not used: "3 unused", "had 8 roses left over", "threw out 3 roses".

import type { PieceKind } from '../../handbook/pieces.ts';
import { carryWord } from '../held/carrying.ts';
import type { Match } from '../pattern.ts';
import { firstIn, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { overAndLeft, overOutOf } from '../progress/finished-over.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';

const stem = '(stems|stem)';
const forms = [
  // "4 leftover bouts"
  '<n:count> (left over|leftover|unused|surplus) (<i:ingredient>|<p:piece>)',
  `<n:count> (<i:ingredient>|<p:piece>|${stem})? (of)? (<i:ingredient>)? (were|was|are|is|still)? (unused|left over|leftover|not used|going spare|over|surplus|wasted|spare at the end)`,
  `(left over|leftover|unused|not used|surplus|going spare) (:|-|=|was|were)? (about)? <n:count> (<i:ingredient>|${stem}) (of)? (<i:ingredient>)?`,
  `(threw|chucked|binned|dumped|tossed|composted|wasted|lost|snapped|broke|ditched|bent|crushed|squashed|bin|binning|had to bin|had to chuck) (out|away)? (about|the last|the other|another)? <n:count> (<i:ingredient>|${stem}) (of)? (<i:ingredient>)?`,
  `<n:count> (<i:ingredient>|${stem}) (of)? (<i:ingredient>)? (are|were|got|have|just|all|had to be){0,2} (broke|broken|snapped|died|dead|wilted|binned|in the bin|went in the bin|no good|ruined|wasted|rotten|rotted|mouldy|went off|gone off|bent|crushed|arrived dead|arrived broken|broken off|snapped off|squashed)`,
].map(pattern);

// "take the 12 corsages over at 3", "12 bouts over to the church by 3": carried there, and none left. "had 3 over at the end" were.
const carries = new RegExp(`^(${carryWord}|come|comes|coming|go|goes|going|knock|knocked|fell|tip|tipped|bowled)$`);
const thither = /^(to|there|here|by|later|tomorrow|tonight|before|around|via|asap|when|at|on)$/;
const finishedOf = [...overOutOf, overAndLeft].map((source) => pattern(source));
const bought = /^(stems?|had|have|got|bought|ordered|used|needed|spares?|extras?)$/;
const finishes = (tokens: readonly Token[], part: Part): boolean =>
  firstIn(finishedOf, tokens, part.start, part.end) !== undefined &&
  !tokens.slice(part.start, part.end).some(({ means, text }) => means['ingredient'] !== undefined || bought.test(text));
const goesOver = (tokens: readonly Token[], part: Part, { start, end }: Match): boolean => {
  if (tokens[end - 1]?.text !== 'over') return false;
  const next = end < part.end ? (tokens[end]?.text ?? '') : '';
  if (/^(last|budget|limit|weight|time|what|usual|previous|normal|quota)$/.test(next)) return true; // "14 units over last time"
  if (thither.test(next) && !/^(the|that)$/.test(tokens[end + 1]?.text ?? '')) return true;
  return next === 'to' || tokens.slice(part.start, start).some(({ text }) => carries.test(text));
};

/** What a sentence says was left over, by the stem or the piece. */
export const unused = (tokens: readonly Token[], part: Part): { readonly match: Match; readonly fact: Unworded } | undefined => {
  const match = firstIn(forms, tokens, part.start, part.end);
  const number = match?.kept['n']?.number;
  if (match === undefined || !isSingle(number) || goesOver(tokens, part, match)) return undefined;
  if (tokens[match.end - 1]?.text === 'over' && finishes(tokens, part)) return undefined;
  const item = match.kept['i']?.means['ingredient'];
  const kind = match.kept['p']?.means['piece'] as PieceKind | undefined;
  return {
    match,
    fact: {
      fact: 'actual',
      what: 'unused',
      count: Number(number.amount),
      ...ofKind(kind),
      ...(item === undefined ? {} : { item }),
    },
  };
};
