// What stands behind the last line of a recipe and puts nothing in: "… and 30cm of ribbon, the soft grey one", "80cm of ribbon to tie at the back".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const forms = [
  '(,|-|\\() (the|that|those|my|our|not the|only the) (<word>){1,4} (one|ones|kind|sort|stuff|colour|color) (please|\\))?',
  'to (tie|finish|wrap|bind|trail|hang|cover|hide|hold|fasten|knot) (it|them|the|off|round|around|at|on|down|with|over|that|together|a|in|bow|back|behind|stem|stems|mechanics|ends|tails|loose|long|wrist|wires|wire|<piece>){0,7}',
].map((source) => pattern(source));

/** The part without such words at its end. */
export const withoutTail = ({ tokens }: Reader, part: Part): Part => {
  for (const form of forms)
    for (let index = form.next(tokens, part.start + 2, part.end); index < part.end; index = form.next(tokens, index + 1, part.end)) {
      const match = form.at(tokens, index, part.end);
      const counts = tokens
        .slice(index, part.end)
        .some(({ means, number, text }) => means['ingredient'] !== undefined || (number !== undefined && text !== 'one'));
      if (match?.end === part.end && !counts) return { ...part, end: index };
    }
  return part;
};
