// Of several hours on one day the event's own: "pickup 9am, ceremony 2pm, sat 13 feb" is at two.

import type { Reader } from '../phrase.ts';
import { isOccasion } from '../words/occasion-words.ts';
import type { TimeRead } from './clock-time.ts';

const itself = /^(service|vows|mass|starts|starting|start|begins|kickoff)$/;
const isOwn = (text: string | undefined): boolean => text !== undefined && (itself.test(text) || isOccasion(text));

// "20 feb 2pm church 4pm reception", "reception 4pm church 2pm": of hours that each have their word behind or ahead, the rite's is the event's.
const rite = /^(church|chapel|ceremony|service|vows|mass|nikah|nikkah|registry)$/;
const others = /^(drinks|dinner|party|tea|barn|hall|hotel|sit)$/;
/** The rite itself, whose hour is the event's: "ceremony", "church". */
export const isRite = (text: string): boolean => rite.test(text);
/** Whether an hour beside this word is the event's own. */
export const ownsHour = (text: string): boolean => isOwn(text);
const riteOf = (tokens: Reader['tokens'], times: readonly TimeRead[]): TimeRead | undefined => {
  for (const at of [({ end }: TimeRead): number => end, ({ start }: TimeRead): number => start - 1]) {
    const words = times.map((time) => tokens[at(time)]?.text ?? '');
    const rites = times.filter((_, index) => rite.test(words[index] ?? ''));
    if (rites.length === 1 && words.every((text) => rite.test(text) || isOccasion(text) || others.test(text))) return rites[0];
  }
  return undefined;
};

/** The hour that stands beside a word for the event, where only one does; else the first. */
export const mainHour = ({ tokens }: Reader, times: readonly TimeRead[]): TimeRead | undefined => {
  if (times.length < 2) return times[0];
  const ofRite = riteOf(tokens, times);
  if (ofRite !== undefined) return ofRite;
  const own = times.filter(
    ({ start, end }) =>
      isOwn(tokens[start]?.text) ||
      [1, 2].some(
        (by) => isOwn(tokens[start - by]?.text) && (by === 1 || /^(is|at|@|from|starts|,)$/.test(tokens[start - 1]?.text ?? '')),
      ) ||
      isOwn(tokens[end]?.text),
  );
  return own.length === 1 ? own[0] : times[0];
};

// "church half two, hotel from 5, wedding 6 august": what begins when the rite is over.
const later = /^(hotel|afters|dancing|dj|disco|band|bar|canapes|cocktails|buffet|music|evening|party|do)$/;
const sooner = /^(church|chapel|ceremony|service|vows|mass|registry|nikah|nikkah|temple|mosque)$/;
/** Whether the hour here is that of the feast behind a rite that is named with its own. */
export const isLaterHour = ({ tokens }: Reader, index: number): boolean => {
  const from = tokens[index]?.text === 'from' ? index : index - 1;
  if (tokens[from]?.text !== 'from' || !later.test(tokens[from - 1]?.text ?? '')) return false;
  return tokens.slice(Math.max(0, from - 14), from + 14).some(({ text }) => sooner.test(text));
};
