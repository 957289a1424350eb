// "not even 12 done", "barely 10 corsages made", "less than 12 finished": a bound of what is made, and no number of it.

import { firstIn, type Match, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { didWord, doneWord } from '../progress/done-words.ts';

const bound =
  "(not (even|quite|yet|nearly)|(haven't|havent|have not|hasn't|hasnt|didn't|didnt) (even|quite|yet) (got|gotten|done|made|finished|do|make|get|finish|hit|reached)?|barely|hardly|scarcely|(fewer|more) than|(just)? (under|over|<b:upTo>|<b:from>)|nowhere near|nowhere close to|not far off|close to)";
const many = '(<count>|half|a dozen|a third|a quarter) (of)? (the|our|them|those|all)? (<count>)? (<material>)? (<piece>)?';
const forms = [
  `${bound} (got|done|made|had|about|up to|hit|the)? ${many} (are|is|of them|been|have been|all|now|yet){0,2} (${doneWord}|so far)`,
  `(${didWord}|got) (barely|hardly|scarcely|not even|not quite|(fewer|more) than|(just)? (under|<b:upTo>|<b:from>)|nowhere near) ${many} (${doneWord})?`,
  // "they cost 5 to make": money or time for one, and nothing left to do.
  '(cost|costs|costing|take|takes|took|taking|set|sets) (me|us|you|back|about|around|only|roughly|just|at least|nearly){0,3} <count> to (make|do|build|finish|wire|tape|box)',
  // "rose up to 12 in the bouts": stems, and no price.
  '<ingredient> (go|goes|going|went|is|are|now)? <b:upTo> <count> (in|into|for|on) (the|each|every|a|our|her|his) (<material>)? <piece>',
  `(haven't|havent|have not|hasn't|hasnt|didn't|didnt) (even|quite) (done|made|finished|do|make|finish|got through|get through) ${many}`,
].map((source) => pattern(source));
// "up to 12 done" and "made up to 12" are twelve; "from 12" says nothing of the work.
const counted = /^(up to|upto|from|starting|starts|start)/;
// "8 done, 4 of them corsages", "5 each done", "mon 6, tues 8, weds 5 so far": of which kind, by how many or on which days the rest was made is not said.
const each = `(are|is|now|all|been|have been){0,2} (${doneWord})`;
const unsure = [
  `<count> (of them)? ${each} (,|-|and|but)? (with)? <count> of (them|those|which|that|em) (are|is|being|were|just)? (<material>)? <piece>`,
  `(made|did|finished|done) <count> (,|-|and|but)? (with)? <count> of (them|those|which|em) (are|is|being|were|just)? (<material>)? <piece>`,
  `<count> <each> (${doneWord}|so far)`,
  '<count> (<material>)? <piece> the now',
  // "did 8 bouts, 4 corsages next"
  '(did|made|finished|done|completed) <count> (<material>)? <piece> (,|and|then|-){1,2} (the|our|other)? <count> (<material>)? <piece> (next|after (lunch|that|tea|smoko)|tomorrow|tmrw|later|then|to do (next|tomorrow)?)',
  `<count> (<material>)? (<piece>)? (bar|except|but for|apart from) <count> ${each}`,
  '<weekday> (:|-|was)? <count> (more)? (,|and|then|;|-)? <weekday> (:|-|was)? <count> (<any>){0,6} (so far|done|made|total)',
  `<p:piece> <n:count> ${each} (,|and|-|;){0,2} <q:piece> <m:count> (<any>){0,3}`,
  // "sam has done 10 and im on 8", "i did 8 tom did 2 and priya 4"
  `(<unlisted>|<role>|<bench>) (has|have|'s|had)? (done|made|did|finished|boxed) <count> (<piece>)? (,|and|&|n|but){1,2} (i'm|im|i am) (now|only)? (on|at|up to) <count>`,
  `<unlisted> (did|made|done) <count> (<piece>)? (and|&|n) <unlisted> <count>`,
  // "tally: 14 bouts 3 cors": made, or wanted?
  '(the|my|our)? tally (:|-|is|at|now){0,2} <count> (<material>)? <piece>',
].map((source) => pattern(source));
const labelled = ({ p, n, m }: Match['kept']): boolean =>
  p === undefined || (!/s$/.test(p.text) && Number(m?.number?.amount) === Number(n?.number?.amount) + 1);
const unsaid = (reader: Reader): Finding[] =>
  unsure.some((form) => form.might(reader.tokens))
    ? reader.untouched().flatMap(({ start, end, asked }) => {
        const match = asked ? undefined : firstIn(unsure, reader.tokens, start, end);
        // "crown 1 done, crown 2 done": which of them, not how many
        return match === undefined || !labelled(match.kept) ? [] : [{ start, end, held: true }];
      })
    : [];

const find = (reader: Reader): Finding[] => {
  const held = unsaid(reader);
  if (held.length > 0 || !forms.some((form) => form.might(reader.tokens))) return held;
  return reader.untouched().flatMap((part) => {
    for (const form of part.asked ? [] : forms) {
      const match = form.in(reader.tokens, part.start, part.end);
      if (
        match === undefined ||
        (counted.test(match.kept['b']?.text ?? '') && reader.tokens[match.start]?.means['ingredient'] === undefined)
      )
        continue;
      // "made less than 12 today": the day is none of the event's.
      const more = reader.tokens
        .slice(match.end, part.end)
        .some(({ number, means }) => number !== undefined || means['piece'] !== undefined);
      return [{ start: match.start, end: more ? match.end : part.end, held: true }];
    }
    return [];
  });
};

export const boundedWork: Phrase = { name: 'bounded work', examples: [], find };
