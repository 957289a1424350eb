// Crowns that a dentist fits: "dentist says i need 2 crowns, $1800 each". The sentence is held, unless it speaks of an event too.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';

const tooth = /^(dentists?|dentist's|dental|orthodontist|tooth|teeth|molars?|fillings|veneers|root canals?)$/;
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
