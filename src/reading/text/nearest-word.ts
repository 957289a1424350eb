// Forgives a slip in a trade word, only when one trade word alone is near and the typed word is not a usual word of its own.
// Money and dates are never guessed.

import { distance } from 'fastest-levenshtein';
import { remembered } from '../../values/remembered.ts';
import type { Entry } from '../words/vocabulary.ts';
import { isKnownWord, namesFrom } from '../words/vocabulary.ts';
import { wordList } from '../words/word-list.ts';

const targets = wordList(`
  buttonhole, buttonholes, boutonniere, boutonnieres, corsage, corsages, lapel, lapels, crown, crowns, preserved, artificial, dried,
  fresh, included, including, inclusive, excluding, exclusive, wristlet, wristlets, piece, pieces, mixed, headpiece, headpieces,
  bridesmaids, groomsmen
`);
// Usual words that stand one letter from a trade word.
const usual = new Set(
  wordList(`
  label, labels, lapse, flesh, frees, frosh, crowd, crowds, crows, crow, drive, drier, dries, dined, fixed, mixer, mixes, place,
  places, price, prices, pierce, peace, course, message, corset, reserved, deserved, served, conclude, concluded, inclined, button,
  buttons, niece, fries, presence, pisces, pleases, please, plates, pies, pace, paces, pieced, inclusion, exclusion, fried, tried,
  cried, droid, druid, drops, drown, frown, grown, growns, clown, clowns, brown, fresco, refresh, mixing, minced, muxed, plumes,
  passes, groom, grooms, preferred, prefers
`),
);

const swapped = (typed: string, target: string): boolean => {
  if (typed.length !== target.length) return false;
  let at = 0;
  while (at < typed.length && typed[at] === target[at]) at += 1;
  return typed[at] === target[at + 1] && typed[at + 1] === target[at] && typed.slice(at + 2) === target.slice(at + 2);
};

const near = (typed: string, target: string): boolean => {
  if (typed[0] !== target[0]) return false;
  if (swapped(typed, target)) return true;
  const allowed = target.length >= 9 ? 2 : 1;
  return Math.abs(typed.length - target.length) <= allowed && distance(typed, target) <= allowed;
};

/** The entries of the one trade word this slip must mean; none when it is a word of its own or two are near. */
export const nearestWord = remembered((typed): readonly Entry[] => {
  if (typed.length < 5 || typed.length > 16 || isKnownWord(typed) || usual.has(typed)) return [];
  const found = targets.filter((target) => near(typed, target));
  const meant = new Set(found.map((target) => namesFrom(target).find((entry) => entry.words.length === 1)?.value));
  const first = found[0];
  if (meant.size !== 1 || first === undefined) return [];
  return namesFrom(first).filter((entry) => entry.words.length === 1);
});
