// "said 12 crowns, should be combs", "made 12 bouts sorry corsages": the number stands, the kind was the wrong one.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { didWord, doneWord } from '../progress/done-words.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';

const lead = '(sorry|oops|ok|whoops|soz|,|-|no|actually|ah){0,3}';
const meant =
  "(that's|thats|it's|its|they're|theyre|that should be|those are|should be|shld be|should have been|shouldve been|should've been|meant to be|i meant|i mean|we meant|meant|was meant to be|sorry) (meant|supposed to be|actually|really|be|to say|to put){0,2}";
const ends = '(sorry|instead|please|pls|oops|,|typo|my bad|my mistake){0,2}';
const ordered = pattern(
  `${lead} (i|we|i'd|she|he|they)? (said|put|wrote|typed|logged|entered|quoted) (the|it was|as|down)? (<n:count>)? (<material>)? <a:piece> (,|-|but|and){0,2} ${meant} (<m:count>)? <b:piece> ${ends}`,
);
const sorry =
  '(,|-)? (sorry|oops|i mean|i meant|meant|correction|make that|no (i mean|i meant|sorry|make that)) (,|i mean|i meant|sorry|thats|its|meant|make that){0,2}';
const made = [
  `(ok|just|i|we|,){0,2} (${didWord}) (another|the)? <n:count> (<material>)? <a:piece> ${sorry} (<m:count>)? <b:piece> ${ends}`,
  `(ok|just|,){0,2} <n:count> (<material>)? <a:piece> (are|is|all|now){0,2} (${doneWord}) ${sorry} (<m:count>)? <b:piece> (${doneWord})? ${ends}`,
].map((source) => pattern(source));

const read = (match: Match, ofWork: boolean): readonly Unworded[] | undefined => {
  const { a, b, m, n } = match.kept;
  const [from, to] = [a?.means['piece'], b?.means['piece']] as [PieceKind | undefined, PieceKind | undefined];
  if (from === undefined || to === undefined || from === to || from === 'unspecified' || to === 'unspecified') return undefined;
  if ([m, n].some((token) => isRangeOrChoice(token?.number))) return undefined;
  const count = Number((m ?? n)?.number?.amount);
  if (ofWork) return [{ fact: 'made', count, piece: to }];
  const other = m !== undefined && n !== undefined && m.number?.amount !== n.number?.amount;
  const change: Unworded = { fact: 'change', what: 'piece', from, to, piece: from };
  return other ? [change, { fact: 'change', what: 'count', to: count, piece: to }] : [change];
};

/** The other kind, where nothing else is said. */
export const wrongKind = (reader: Reader, part: Part): Finding | undefined => {
  for (const form of [ordered, ...made]) {
    const match = form.at(reader.tokens, part.start, part.end);
    const facts = match?.end === part.end ? read(match, form !== ordered) : undefined;
    if (facts !== undefined) return found(reader, part.start, part.end, facts);
  }
  return undefined;
};
