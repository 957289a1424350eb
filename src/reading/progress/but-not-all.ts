// All but so many, and so many beside what is left: "17 down, 23 to go", "all done except 2 corsages".

import { pattern } from '../pattern.ts';
import { didWord, doneWord, stageWord } from './done-words.ts';

const except = '(except|exept|ecxept|excpet|excep|bar|but|apart from|other than|excluding|minus|save)';
const done = `(${doneWord})`;

/** "17 down, 23 to go": "down" is finished only beside what is left. */
export const downAndLeft = pattern(
  '<n:count> (<p:piece>)? down (,|and|-)? (only|just)? <m:count> (<piece>)? (to go|left|more|remaining|more to go) ((on|of|for) (the|our)? <p:piece>)?',
);
/** "all done except 2 corsages": what is left. */
export const allBut = pattern(
  `(all|everything|the lot|all of them)? (the)? (<p:piece>)? (is|are|r)? ${done} ${except} (for)? (the)? (last)? <n:count> (of)? (the)? (<p:piece>)?`,
);
const but = '(all|everything|the lot|all of them|every one) (except|bar|but|apart from|other than|excluding|minus|save) (for)?';
const ofThem = `${but} (the)? (last)? (<n:count>|one) (<p:piece>)? (out of|of) (the|our|those|these|my)? <m:count> (<material>)? (<p:piece>)?`;
/** "all but 3 of the 20 bouts are done", "finished all but one of the 8 crowns" */
export const allButOf = [`${ofThem} (are|is|now|all|been|have|has){0,2} ${done}`, `(${doneWord}|${didWord}) ${ofThem}`];
/** "all but 3 of the 20", whatever is said of them. */
export const allButAny = pattern(ofThem);
/** "all bar 3 done", "all the bouts except 3 are done" */
export const allButFirst = pattern(
  `(all|every|each|everything|the lot|all of them|every one) (of)? (the|our|those|my)? (<p:piece>)? ${except} (for)? (the)? (last)? <n:count> (of)? (the|them)? (<p:piece>)? (is|are|r|now)? ${done}`,
);
/** "all of our bouts but 4 are wired": the four are those that are not. */
export const someExcepted = pattern(
  `(all|every|each|everything|the lot|every one) (of|the|our|those|my|<piece>){0,3} ${except} (for)? (the)? (last)? <count> (of)? (the|them)? (<piece>)? (is|are|r|now|been){0,2} (${stageWord}|${doneWord})`,
);
