// Which kind is meant, with the other put off: "they should be pin corsages for the ladies rather than wrist ones, all 25 of them", "thats 4 wrist corsages not pin".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';

const lead = '(sorry|soz|ok|actually|oh|so|and|no|nope|update|,|please|pls){0,3}';
const other = '(not|nt|rather than|instead of|and not) (the|a|on)? (<c:piece>|<w:word>) (ones|one|corsages|corsage|type|style)?';
const ends = '(,|-|for)? (all|both)? (the)? (<n:count>)? (of them|of those)? (please|pls|thanks|ta|sorry)?';
const forms = [
  `${lead} (they|those|these|it|them|that|all of them) (all)? (should|need to|needs to|have to|must|were meant to|are meant to|are supposed to|were supposed to|ought to) (all|have)? (be|been) (the|all)? <b:piece> <filler>{0,5} (,)? ${other} ${ends}`,
  `${lead} (that's|thats|that is|its|it's|those are|they're|theyre|make that) (the|meant to be)? <m:count> <b:piece> (,|-)? ${other} ${ends}`,
].map((source) => pattern(source));
// "all 8 corsages on that order should have said bouts": the first kind was never meant.
const saidWrong = pattern(
  `${lead} (where it (says|said))? (all|both|the|those|these|my|our|that|of){0,3} (<n:count>)? (of)? (the|those)? <c:piece> ((i|we) (put|wrote|typed|said|gave you|ordered|sent))? ((on|in) (that|the|this|my|our|her|last) (<word>)? (order|list|quote|message|sheet|email|text|note|form))? (,|-|it)? (should|shoulda|should've|shouldve|shld|were meant to|was meant to|are meant to|were supposed to|are supposed to|ought to) (have|of|all|actually|really){0,2} (be|been|say|said|read|been down as|be down as|been put as) (the|as)? (<b:piece>|pin|pins|pinned|pinned on) (ones|type|style)? ${ends}`,
);

const taken = ({ c, w }: Readonly<Record<string, Token>>): PieceKind | undefined => {
  const said = w?.text ?? '';
  if (/^(pins?|pinned)$/.test(said)) return 'pin corsage';
  return /^wrists?$/.test(said) ? 'wrist corsage' : (c?.means['piece'] as PieceKind | undefined);
};

const neverMeant = (reader: Reader, part: Part): Finding | undefined => {
  const match = saidWrong.might(reader.tokens) ? saidWrong.at(reader.tokens, part.start, part.end) : undefined;
  if (match?.end !== part.end) return undefined;
  const { b, c, n } = match.kept;
  const from = c?.means['piece'] as PieceKind | undefined;
  const to = b === undefined && /corsage/.test(from ?? '') ? 'pin corsage' : (b?.means['piece'] as PieceKind | undefined);
  if (from === undefined || to === undefined || from === to || [from, to].includes('unspecified')) return undefined;
  if (n === undefined) return found(reader, part.start, part.end, [{ fact: 'change', what: 'piece', from, to, piece: from }]);
  if (isRangeOrChoice(n.number)) return undefined;
  // "8 corsages should be bouts" may be eight of more, and bouts that are there already stay.
  const all = reader.tokens
    .slice(part.start, reader.tokens.indexOf(n, part.start))
    .some(({ text }) => /^(all|the|those|these|both|our|my)$/.test(text));
  const count = Number(n.number?.amount);
  const only = all && !reader.context.pieces.includes(to);
  return found(reader, part.start, part.end, [
    only ? { fact: 'change', what: 'count', to: count, piece: to } : { fact: 'change', what: 'count', by: count, piece: to },
    all ? { fact: 'change', what: 'count', to: 0, from: count, piece: from } : { fact: 'change', what: 'count', by: -count, piece: from },
  ]);
};

/** The kind meant in place of another, with how many where that is said. */
export const kindMeant = (reader: Reader, part: Part): Finding | undefined => {
  const wrong = neverMeant(reader, part);
  if (wrong !== undefined) return wrong;
  const match = firstAt(forms, reader.tokens, part.start, part.end);
  if (match?.end !== part.end) return undefined;
  const { b, m, n } = match.kept;
  const [from, to] = [taken(match.kept), b?.means['piece'] as PieceKind | undefined];
  if (from === undefined || to === undefined || from === to || [from, to].includes('unspecified')) return undefined;
  if (m !== undefined && n !== undefined) return undefined;
  const number = (m ?? n)?.number;
  if (isRangeOrChoice(number)) return undefined;
  const facts: Unworded[] = [{ fact: 'change', what: 'piece', from, to, piece: from }];
  if (number !== undefined) facts.push({ fact: 'change', what: 'count', to: Number(number.amount), piece: to });
  return found(reader, part.start, part.end, facts);
};
