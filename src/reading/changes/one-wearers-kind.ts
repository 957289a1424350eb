// "mob wants a wrist corsage not a pin on", "both mums want combs instead of crowns": another kind for those named, and for nobody else.

import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';

const lead = '(sorry|actually|oh|so|and|,|update|ok|fyi|turns out){0,3}';
const wants =
  "(now)? (wants|want|would like|would prefer|would rather have|would rather|prefers|prefer|is having|are having|'s having|is getting|are getting|is wearing|are wearing|needs|need|asked for|has asked for|gets|get|to have|to wear|will have|will wear|should have|should get|has gone for|is going for) (now)?";
const notThat = '(,|-)? (instead of|not|rather than|in place of|and not) (a|an|the|her|his|their)?';
const others = `(a|an|1|one)? <b:piece> (one|ones)? ${notThat} <a:piece> (one|ones)? (now|please|pls|after all|sorry){0,2}`;
const form = pattern(`${lead} (the|her|his|our|their|both|all)? (<n:count>)? <r:role> ${wants} ${others}`);
// "1 of the pin corsages is a wrist corsage now"
const oneIs = pattern(
  '<n:count> of (the|those|our|her|them|these) <a:piece> (is|are|should be|to be|needs to be|need to be|has to be|have to be|will be|becomes|become|is to be|are to be) (now|really)? (a|an|to be)? <b:piece> (now|instead|please|pls|not <piece>)?',
);

// How many are meant: as many as are named, if that is said at all.
const manyOf = (reader: Reader, match: Match): number | undefined => {
  const number = match.kept['n']?.number;
  if (number !== undefined) return isSingle(number) ? Number(number.amount) : undefined;
  const words = reader.tokens.slice(match.start, match.end);
  if (words.some(({ text }) => text === 'both')) return 2;
  const before = words[words.indexOf(match.kept['b'] as Token) - 1];
  // "the bride wants combs not crowns" is said of all of them.
  return /^(a|an|1|one)$/.test(before?.text ?? '') ? 1 : undefined;
};

/** Some of one kind made another, for those named or by number. */
export const oneWearersKind = (reader: Reader, part: Part): Finding | undefined => {
  const match = form.at(reader.tokens, part.start, part.end) ?? oneIs.at(reader.tokens, part.start, part.end);
  if (match?.end !== part.end) return undefined;
  const [from, to, many] = [kindNamed(match.kept['a']), kindNamed(match.kept['b']), manyOf(reader, match)];
  if (from === undefined || to === undefined || from === to || many === undefined || many < 1) return undefined;
  return found(reader, part.start, part.end, [
    { fact: 'change', what: 'count', by: -many, piece: from },
    { fact: 'change', what: 'count', by: many, piece: to },
  ]);
};
