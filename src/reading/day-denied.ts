// "no jo cant do fri", "not the 23rd" behind an offer of days: what is denied is none of them chosen. "no the sat after" is the later of two.

import { addDays, parseDay } from '../values/day.ts';
import type { Choice } from './reading.ts';

const denies = /\b(can'?t|cannot|can not|won'?t|isn'?t|aren'?t|doesn'?t|don'?t|not|never|unable|no longer|neither|busy|away)\b/i;
const day = '(mon|tue|tues|wed|thu|thur|thurs|fri|sat|sun)[a-z]*|one|week|weekend|day';
const after = new RegExp(
  `\\bthe (${day}) (after|following)( that| it)?( one)?\\W*(please|pls|sorry|thanks)?\\W*$|\\bthe following (${day})\\W*$`,
  'i',
);

/** The later of two days a week apart where that is said, none where a day is denied; `fits` gives the one that is named. */
export const dayAnswered = (
  text: string,
  choices: readonly Choice[],
  dayOf: (choice: Choice) => string | undefined,
  fits: () => Choice | undefined,
): Choice | undefined => {
  if (!after.test(text.trim())) return denies.test(text.replaceAll('’', "'")) ? undefined : fits();
  const [first, second, third] = choices.toSorted((a, b) => (dayOf(a) ?? '').localeCompare(dayOf(b) ?? ''));
  const [from, to] = [first, second].map((choice) => parseDay((choice && dayOf(choice)) ?? ''));
  return third === undefined && from !== undefined && to === addDays(from, 7) ? second : undefined;
};
