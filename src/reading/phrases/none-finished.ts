// "haven't got a single lapel finished" is none of them; "haven't got the bouts finished", "haven't got 3 crowns done" leave open how many are, and are
// left unread.

import { firstIn, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { doneWord, stageWord, stepBefore } from '../progress/done-words.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';

const never = "haven't|havent|have not|hasn't|hasnt|has not|hadn't|hadnt|didn't|didnt|did not|ain't|aint";
const not = `(${never}|not|never)`;
const lead = '(yet|even|actually|still|managed to|quite|really){0,2} (got|gotten|get|had|have|seen)?';
const ends = `(is|are|been|all|fully){0,2} ((${stepBefore}|${stageWord}) (and|&|n|,){1,2})? (${doneWord}) (yet|so far|today|at all|as yet|up){0,2}`;
const none = pattern(
  `${not} ${lead} (a single|one single|a solitary|even one|even a single|even a|one|a|any) (one)? (of)? (the|our|my|those|them)? (<material>)? (<p:piece>)? ${ends}`,
);
const some = [
  pattern(
    `${not} ${lead} (the|my|our|those|these|her|his|all|every|all of|half|most of|most|both|the rest of|rest of){1,2} (<count>)? (<material>)? <p:piece> ${ends}`,
  ),
  // "12 not 21 done" puts a count right.
  pattern(
    `(${never}|(not|never) (yet|even|actually|quite|really)? (got|gotten|had)) ${lead} <count> (of the|of them|of)? (<material>)? (<p:piece>)? ${ends}`,
  ),
];

// "haven't got a single bout wired": none at a step, and others may be further on.
const begun = pattern(
  `(${never}|(not|never) (got|had)) ${lead} (a single|one single|even one|even a single|one|a|any|the|my|our|all|<count>){1,2} (of)? (the|our)? (<material>)? <piece> (is|are|been|all){0,2} (${stageWord})`,
);

const opens = [...some, begun];

const read = (reader: Reader, { start, end, asked }: Part): Finding[] => {
  if (asked) return [];
  const { tokens } = reader;
  const match = none.in(tokens, start, end);
  if (match !== undefined) return [found(reader, match.start, match.end, [{ fact: 'made', count: 0, ...kindOf(match.kept['p']) }])];
  const open = firstIn(opens, tokens, start, end);
  return open === undefined ? [] : [{ start: open.start, end: open.end, held: true }];
};

export const noneFinished: Phrase = {
  name: 'none finished',
  examples: [],
  find: (reader) =>
    none.might(reader.tokens) || opens.some((form) => form.might(reader.tokens))
      ? reader.untouched().flatMap((part) => read(reader, part))
      : [],
};
