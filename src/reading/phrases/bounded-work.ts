// "not even 12 done", "barely 10 corsages made", "less than 12 finished": a bound of what is made, and no number of it.

import { pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { didWord, doneWord } from '../progress/done-words.ts';

const bound =
  "(not (even|quite|yet|nearly)|(haven't|havent|have not|hasn't|hasnt|didn't|didnt) (even|quite|yet) (got|gotten|done|made|finished|do|make|get|finish|hit|reached)?|barely|hardly|scarcely|(fewer|more) than|(just)? (under|over|<b:upTo>|<b:from>)|nowhere near|nowhere close to|not far off|close to)";
const many = '(<count>|half|a dozen|a third|a quarter) (of)? (the|our|them|those|all)? (<count>)? (<material>)? (<piece>)?';
const forms = [
  `${bound} (got|done|made|had|about|up to|hit|the)? ${many} (are|is|of them|been|have been|all|now|yet){0,2} (${doneWord}|so far)`,
  `(${didWord}|got) (barely|hardly|scarcely|not even|not quite|(fewer|more) than|(just)? (under|<b:upTo>|<b:from>)|nowhere near) ${many} (${doneWord})?`,
  `(haven't|havent|have not|hasn't|hasnt|didn't|didnt) (even|quite) (done|made|finished|do|make|finish|got through|get through) ${many}`,
].map((source) => pattern(source));
// "up to 12 done" and "made up to 12" are twelve; "from 12" says nothing of the work.
const counted = /^(up to|upto|from|starting|starts|start)/;
const find = (reader: Reader): Finding[] => {
  if (!forms.some((form) => form.might(reader.tokens))) return [];
  return reader.untouched().flatMap((part) => {
    for (const form of part.asked ? [] : forms) {
      const match = form.in(reader.tokens, part.start, part.end);
      if (match === undefined || counted.test(match.kept['b']?.text ?? '')) continue;
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
