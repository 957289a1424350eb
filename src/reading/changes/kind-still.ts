// Another kind or another look, and as many as before: "make those corsages wrist ones, still 4 of them", "turn the crowns into combs, same number".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const lead =
  "(sorry|soz|ok|actually|oh|so|and|no|update|,|please|pls|just|can|could|you|we|they|she|he|bride|client|couple|want|wants|to|has|have|decided|let's|lets|now|would|like|wanna){0,5}";
const ones = '(ones|one|type|style|sort|instead|now|please|pls){0,3}';
const joint = "(,|-|;|:|and|but|n|&|with|\\(|so|there's|theres|there|are|it's|its|that's){0,4}";
const still = `(still (the|all)? <n:count> (of (them|em|those|these))?|<n:count> (of (them|em|those|these))? still|all <n:count> (of (them|em|those|these))?|(still)? (the)? (same|as many) (number|amount|count|qty|quantity|many|as before)|still as many|still all of (them|em)) (please|pls|thanks|ta|tho|though|\\)|in total|total|altogether){0,3}`;
const subject = '(all)? (of)? (the|those|these|our|her|their|his|mums|nans)? (<m:count>)? <a:piece>';
const forms = [
  `${lead} (make|have|do|turn|change|switch|swap|convert|get|put) ${subject} (all)? (into|as|to|to be|over to|for|be)? (a|the)? (<b:piece>|<w:word>) ${ones} ${joint} ${still}`,
  `${lead} ${subject} (all|should|are|is|need|needs|have|want|going|will|must|can|now|to|be|being|as){0,4} (a|the)? (<b:piece>|<w:word>) ${ones} ${joint} ${still}`,
].map((source) => pattern(source));
// "make those bouts pink ones, still 4 of them": how they look, and no four more.
const look = pattern(`${lead} (make|have|do|turn|get) ${subject} <any>{1,6} ${joint} ${still}`);
const may = pattern('(still|same|as many|all <count>)');

const kindOf = (match: Match | undefined, name: string): PieceKind | undefined =>
  match?.kept[name]?.means['piece'] as PieceKind | undefined;
const meant = (match: Match): PieceKind | undefined => {
  const said = match.kept['w']?.text ?? '';
  if (/^(pins?|pinned|pin-on|pin-ons)$/.test(said)) return 'pin corsage';
  return /^wrists?$/.test(said) ? 'wrist corsage' : kindOf(match, 'b');
};

/** The kind that takes the place of another, and how many there still are. */
export const kindStill = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  if (!may.might(tokens)) return undefined;
  const match = firstAt(forms, tokens, part.start, part.end);
  const whole = match?.end === part.end ? match : undefined;
  const [from, to] = [kindOf(whole, 'a'), whole === undefined ? undefined : meant(whole)];
  if (whole === undefined || from === undefined || to === undefined || from === 'unspecified' || to === 'unspecified' || from === to)
    return look.at(tokens, part.start, part.end)?.end === part.end ? { start: part.start, end: part.end, held: true } : undefined;
  const [before, number] = [whole.kept['m']?.number, whole.kept['n']?.number];
  const exact = [before, number].every((each) => each?.max === undefined && each?.or === undefined);
  // "make 3 of those crowns combs, still 4": which number is meant of what?
  if (!exact || (before !== undefined && number !== undefined && before.amount !== number.amount))
    return { start: part.start, end: part.end, held: true };
  const count = number ?? before;
  const facts: Unworded[] = [{ fact: 'change', what: 'piece', from, to, piece: from }];
  if (count !== undefined) facts.push({ fact: 'change', what: 'count', to: Number(count.amount), piece: to });
  return found(reader, part.start, part.end, facts);
};
