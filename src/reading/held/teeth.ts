// Crowns that a dentist fits: "dentist says i need 2 crowns, $1800 each". The sentence is held, unless it speaks of an event too.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';

const tooth = /^((my )?dentists?|(my )?dentist's|dental|orthodontist|tooth|teeth|molars?|fillings|veneers|root canals?)$/;
const atVet = [
  '(vet|vets) (just|now|has|have|had|also|only){0,2} (say|says|said|reckon|reckons|thinks|quoted|quotes|found|rang|wants)',
  "(at|from|by|to) (the|my|our)? (vet|vet's|vets|my dentist)",
].map((source) => pattern(source));
const party = /^(bride|bride's|bridal|bridesmaids?|flowergirls?|floral|dinner|party|gala)$/;

/** Whether the words speak of teeth and of no event. */
export const speaksOfTeeth = (words: readonly Token[]): boolean =>
  words.some(({ text }, at) => tooth.test(text) || (text === 'filling' && !/^(in|up|out|the)$/.test(words[at + 1]?.text ?? ''))) &&
  !words.some(({ text }) => isOccasion(text) || party.test(text));

/** The sentence about somebody's teeth. */
export const teethStretches = ({ tokens }: Reader, { start, end }: Part): Stretch[] => {
  const words = tokens.slice(start, end);
  const pieces = words.filter(({ means }) => means['piece'] !== undefined && means['piece'] !== 'unspecified');
  if (pieces.length === 0 || !pieces.every(({ text }) => /^crowns?$/.test(text))) return [];
  const animal = anyIn(atVet, tokens, start, end) && !words.some(({ text, means }) => isOccasion(text) || means['role'] !== undefined);
  return speaksOfTeeth(words) || animal ? [{ start, end }] : [];
};

const bill = pattern(
  "(dentist|my dentist|dentists|dentist's|orthodontist|dental) (just|now|has|is|have|had|also|only|bill|surgery|lady|guy|reckons){0,2} (wants|want|says|said|say|quoted|quotes|quoting|charges|charging|charged|asked|asking|costs|cost|is|was|bill|told me|thinks)",
);
const manyCrowns = 5; // are no one's teeth
/** A crown that is surely a tooth's, whatever else is said beside it: "getting a crown thursday, dentist wants $1,650". "6 crowns done, off to the dentist at 3" are flowers. */
export const surelyTeeth = (reader: Reader, part: Part): Stretch[] => {
  const stretches = teethStretches(reader, part);
  if (stretches.length === 0) return [];
  const { tokens } = reader;
  const crowns = tokens.flatMap(({ means }, at) => (at >= part.start && at < part.end && means['piece'] !== undefined ? [at] : []));
  if (crowns.some((at) => Number(tokens[at - 1]?.number?.amount ?? 0) >= manyCrowns)) return [];
  const single = crowns.every((at) => /^crown('s)?$/.test(tokens[at]?.text ?? '') && tokens[at - 1]?.number === undefined);
  return single || bill.in(tokens, part.start, part.end) !== undefined ? stretches : [];
};
