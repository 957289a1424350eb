// Two letters the wrong way round in a usual word: "prcie", "satruday", "anohter". The word with its letters in order is the only one meant.

import { wordList } from '../words/word-list.ts';

// No pair of these, and no other usual word, is one swap apart.
const usual = wordList(`
  price, prices, priced, quote, another, wedding, event, party, ceremony, handover, delivery, actually, should, would, could, please,
  sorry, instead, change, changed, moved, total, altogether, budget, each, apiece, included, plus, before, already, finished, made,
  making, completed, broken, snapped, left, remaining, monday, tuesday, wednesday, thursday, friday, saturday, sunday, tomorrow,
  weekend, january, february, march, april, june, july, august, september, october, november, december, twenty, thirty, forty, fifty,
  eleven, twelve, fifteen, dozen, hundred, stems, bunch, bunches, hours, minutes, people, afternoon, morning, evening, recipe,
  groomsmen, bridesmaids, bride, groom, mothers, client, first, second, third, fresh, dried, ribbon, roses
`);

const swaps = (word: string): string[] =>
  Array.from(
    { length: word.length - 2 },
    (_, at) => word.slice(0, at + 1) + (word[at + 2] ?? '') + (word[at + 1] ?? '') + word.slice(at + 3),
  ).filter((slip) => slip !== word);

const meant = new Map(usual.filter((word) => word.length >= 5).flatMap((word) => swaps(word).map((slip) => [slip, word] as const)));

/** The usual word of which this is a slip. */
export const inOrder = (typed: string): string | undefined => (typed.length < 5 ? undefined : meant.get(typed));
