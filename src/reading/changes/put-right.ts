// A number put right in the same breath: "bouts at 12, i meant 14", "bouts at 12, sorry 14", "bouts at 12, should be 14". The first holds no longer, whatever the second is of.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const takenBack = pattern('<number> <any>{0,4} (i|we) (meant|mean) <any>{0,3} <number>');
const putRight = pattern(
  "<number> (<each>|<all>|for (the|all|all the)? <piece>)? (,|-|\\.)? (sorry|soz|oops|whoops|no|nope|rather|make that|make it|correction|should be|should read|should have been|should've been|shouldve been|should of been) (,|no|sorry|make that|make it|that's|thats|its|it's){0,2} <number> (<each>)?",
);

/** Whether the part ends with a number in place of the one before it. */
export const isPutRight = ({ tokens }: Reader, { start, end }: Part): boolean =>
  takenBack.in(tokens, start, end) !== undefined || putRight.in(tokens, start, end)?.end === end;
