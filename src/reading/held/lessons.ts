// A lesson is sold by the head: "corsage workshop 15 people £40 each", "crown class 8 ladies 55pp". Who comes and what they pay is no order.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { firstWhere } from '../text/token.ts';

const lesson = /^(workshop|workshops|masterclass|masterclasses|class|classes|course)$/;
const longest = 5; // tokens before the word: "our first flower crown workshop"
const heads =
  '(people|persons|ppl|pax|ladies|girls|women|kids|children|adults|guests|teens|students|heads|hens|mums|beginners|spots|spot|places|seats|tickets|booked|attending|coming|signed up|sold|max)';
const sold = [
  pattern(`<count> (<unlisted>)? ${heads}`),
  pattern('<amount> (each|<each>|a head|pp|p/p|per head|per person|a ticket|per ticket|a seat|a spot|apiece)'),
];
const comers = pattern(`<count> ${heads} (booked|coming|signed up|in|on)? (for|in|on|at|to) (the|our|my|a)? <any>{0,3} <w:word>`);

/** The part, where it begins with a lesson and tells what is sold of it, or how many come to it. */
export const lessonStretches = ({ tokens }: Reader, part: Part): Stretch[] => {
  const at = firstWhere(tokens, part.start, part.end, ({ text }) => lesson.test(text));
  if (at < 0 || part.asked) return [];
  // "4 people for the crown class"
  const come = comers.at(tokens, part.start, part.end);
  if (come !== undefined && come.end > at) return [part];
  // "20 crowns for the workshop at 30 each" are ordered.
  const early = at - part.start <= longest;
  const counted = firstWhere(tokens, part.start, at, ({ number, text }) => number !== undefined || text === 'for') >= 0;
  return early && !counted && anyIn(sold, tokens, at + 1, part.end) ? [part] : [];
};
