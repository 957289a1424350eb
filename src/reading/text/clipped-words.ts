// Words typed without their vowels or with one letter of a double: "drd", "frm", "wntd", "buttnhole", "weding".

import { isKnownWord } from '../words/vocabulary.ts';
import { wordList } from '../words/word-list.ts';

// Short ones only where no other word of the trade has the same consonants: "lst" may be last or list, "grm" is a gram.
const usual = wordList(`
  buttonhole, buttonholes, boutonniere, boutonnieres, corsage, corsages, crown, crowns, lapel, lapels, wrist, dried, fresh, preserved,
  artificial, wanted, wants, from, left, with, needed, month, price, prices, budget, client, wedding, event, bunch, bunches, stems,
  ribbon, ribbons, finished, making, morning, afternoon, evening, tomorrow, tonight, delivery, between, about, before, after, instead,
  dozen, twenty, thirty, forty, fifty, each, total, altogether, included, wholesale, changed, moved, cancelled, broken, snapped,
  remaining, ready, groomsmen, bridesmaid, bridesmaids, grandmother, grandmothers, grandfather, grandfathers, waxflower, strawflower,
  eucalyptus, lavender, gypsophila, statice, ranunculus, lisianthus, carnation, carnations, rosemary, spray, magnet, magnets, ceremony,
  collection, monday, tuesday, wednesday, thursday, friday, saturday, sunday, january, february, august, september, october, november,
  december, quoted, confirmed, people, minutes, recipe
`);

const bare = (word: string): string => word[0] + word.slice(1).replace(/[aeiou]/g, '');
const single = (word: string): string => word.replace(/([a-z])\1/g, '$1');
const skeleton = (word: string): string => single(bare(word));

const bySkeleton = new Map<string, string>();
for (const word of usual) bySkeleton.set(skeleton(word), word);
// "evnt" and "vnt".
for (const word of usual) if (/^[aeiou]/.test(word) && word.length > 4) bySkeleton.set(skeleton(word).slice(1), word);

// Whether the typed letters are the word's, in order, with only vowels and second letters left out.
const leavesOut = (typed: string, word: string): boolean => {
  let at = 0;
  for (let index = 0; index < word.length; index++) {
    if (typed[at] === word[index]) at += 1;
    else if (!/[aeiou]/.test(word[index] ?? '') && word[index] !== word[index - 1] && word[index] !== word[index + 1]) return false;
  }
  return at === typed.length;
};

/** The usual word that was meant; a long word may keep some of its vowels, a short one none after its first letter. */
export const unclipped = (typed: string): string | undefined => {
  if (typed.length < 3 || typed.length > 14) return undefined;
  if (isKnownWord(typed)) return undefined;
  const word = bySkeleton.get(skeleton(typed)) ?? bySkeleton.get(typed);
  if (word === undefined || word === typed) return undefined;
  const short = word.length < 7;
  if (short && /[aeiou]/.test(typed.slice(1))) return undefined;
  if (typed.length >= word.length || !leavesOut(typed, word)) return undefined;
  return word;
};
