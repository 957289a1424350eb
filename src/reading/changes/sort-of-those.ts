// Which sort the corsages of this order are, told behind it: "wrist please", "half wrist half pin on", "2 of those are for the dads so pin on".
// Outside a thread of corsages the same words say nothing. How many they are, the thread knows.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';
import { nameOf } from '../wearers/role-counts.ts';

const lead =
  "(sorry|soz|actually|oh|so|ok|okay|and|but|,|-|:|no|please|pls|now|update|hi|can we|could we|can you|they want|she wants|bride wants|client wants|we want|they'd like|she'd like|we'll do|lets do|let's do|it's|its|just){0,4}";
const end = '(ones|one|style|type|please|pls|plz|thanks|ta|instead|now|then|rather|,){0,3}';
const those =
  '((the|those|these|her|our) (<m:count>)? <g:piece>|(the|those|these) (<m:count>)? (ones|lot)|the <m:count>|them|those|these|em)';
const become =
  "(,|-|so|and|are|is|should|shd|to|be|need|needs|want|wants|will|have|has|make|them|it|theirs|do|as|in|into|go|going|a|they|they're){0,5}";
const wearing = '((are|is|go|will be|being)? (for|to) (the|both|both the|her|his|our)? <r:role>)?';
const sort = '(<k:piece>|<k:word>)'; // which words, sortOf knows
const other = sort.replaceAll('<k:', '<l:');

const some = pattern(
  `${lead} (make|do|have|turn|change|switch|swap)? (only|just|about)? (<n:count>|half) (of)? ${those} ${wearing} ${become} ${sort} ${end}`,
);
const halves = [
  `${lead} (make|do|have|split)? (<g:piece>|(the|those|these) <g:piece>|them|those|these|it)? (are|is|should be|to be|,|-|:|as|in){0,2} (half|50) (of them|of those|(of)? (the|those|these) <g:piece>)? (as|in|on the|on)? ${sort} (ones|one)? (,|and|&|\\/|n|-){0,2} (the)? (other)? (half|50) (of them)? (as|in|on the|on)? ${other} ${end}`,
  `${lead} (make|do|have|split|splitting)? (<g:piece>|(the|those|these) <g:piece>|them|those|these|it)? (are|is|should be|to be|,|-|:){0,2} (half and half|half & half|half - half|fifty fifty|<h:material>|<h:number>) (,|-|:)? (of|between)? ${sort} (ones|one)? (and|&|\\/|n|,|-)? ${other} ${end}`,
].map((form) => pattern(form));
const half = pattern(`${lead} (make|do)? half (of)? (as|in|on the)? ${sort} ${end}`);
const all = [
  `${lead} (make|do|have)? (all|both|all of|both of)? ((the|those|these|her|our)? <g:piece>|they are|those are|these are|them|those|these|it|they|they're|theyre) (all|both|are|is|should|to|be|as|in|on the|want|wanted){0,3} ${sort} ${end}`,
  `${lead} (all|both)? (on the|as)? ${sort} ${end} ((for)? (all|both|everyone|them all|all of them))? ${end}`,
].map((form) => pattern(form));

const corsages: ReadonlySet<PieceKind> = new Set<PieceKind>(['corsage', 'wrist corsage', 'pin corsage']);

const sortOf = (token: Token | undefined): PieceKind | undefined => {
  const kind = kindNamed(token);
  if (kind !== undefined) return kind === 'wrist corsage' || kind === 'pin corsage' ? kind : undefined;
  return /^(pins?|pinned)$/.test(token?.text ?? '') ? 'pin corsage' : /^wrists?$/.test(token?.text ?? '') ? 'wrist corsage' : undefined;
};

/** The one sort of corsages the order holds, where a kind named beside may be it. */
const held = ({ context }: Reader, named: Token | undefined): PieceKind | undefined => {
  const [only, another] = context.pieces.filter((piece) => corsages.has(piece));
  const kind = kindNamed(named);
  if (only === undefined || another !== undefined) return undefined;
  return kind === undefined || kind === only || kind === 'corsage' ? only : undefined;
};

const made = (from: PieceKind, to: PieceKind, many: { some?: number | 'half' } = {}): Unworded => ({
  fact: 'change',
  what: 'piece',
  from,
  to,
  piece: from,
  ...many,
});

const halved = (reader: Reader, part: Part): readonly Unworded[] | undefined => {
  const match = firstAt(halves, reader.tokens, part.start, part.end);
  // "half n half" is one word for mixed, "50/50" one number.
  if (match?.end !== part.end || !/^(half|50)/.test(match.kept['h']?.text ?? 'half')) return undefined;
  const [from, one, two] = [held(reader, match.kept['g']), sortOf(match.kept['k']), sortOf(match.kept['l'])];
  if (from === undefined || one === undefined || two === undefined || one === two) return undefined;
  return [one, two].filter((to) => to !== from).map((to) => made(from, to, { some: 'half' }));
};

const someOf = (reader: Reader, part: Part): readonly Unworded[] | undefined => {
  const { tokens, context } = reader;
  const match = some.at(tokens, part.start, part.end) ?? half.at(tokens, part.start, part.end);
  if (match?.end !== part.end) return undefined;
  const { g, k, n, r } = match.kept;
  const [from, to] = [held(reader, g), sortOf(k)];
  if (from === undefined || to === undefined || from === to || (n !== undefined && !isSingle(n.number))) return undefined;
  const count = n === undefined ? ('half' as const) : Number(n.number?.amount);
  const role = r?.means['role'];
  // Said of those listed: who wears them is news as well.
  const listed = role !== undefined && count !== 'half' && (context.wearers?.length ?? 0) > 0;
  return [
    made(from, to, { some: count }),
    ...(listed ? [{ fact: 'wearers' as const, wearers: [{ wearer: nameOf(role, count), count, piece: to }] }] : []),
  ];
};

/** "Wrist" of corsages nobody has told the sort of; "pin on" alone of wrist corsages may be a slip, and is left unread. */
const allOf = (reader: Reader, part: Part): readonly Unworded[] | undefined => {
  const match = firstAt(all, reader.tokens, part.start, part.end);
  if (match?.end !== part.end) return undefined;
  const { g, k } = match.kept;
  const [from, to] = [held(reader, g), sortOf(k)];
  // Pins alone may be what they are fixed with.
  if (from !== 'corsage' || to === undefined || /^pins?$/.test(k?.text ?? '')) return undefined;
  return [made(from, to)];
};

export const sortOfThose = (reader: Reader, part: Part): Finding | undefined => {
  if (part.asked || part.end - part.start > 24 || !reader.context.pieces.some((piece) => corsages.has(piece))) return undefined;
  const facts = halved(reader, part) ?? someOf(reader, part) ?? allOf(reader, part);
  return facts === undefined ? undefined : found(reader, part.start, part.end, facts);
};
