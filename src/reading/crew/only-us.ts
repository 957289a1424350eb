// How many make this order, with no day and no hours: "Aoife's out sick so there's only two of us now", "just thandi n me making on this one".

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { isPerson } from '../progress/by-several.ts';
import type { Part, Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const opens =
  "(ok|so|and|,|-|but|then){0,2} (that|which|it|this)? (there's|theres|there is|there are|we're|were|we are|it's|its|it is|it'll be|is|leaves|means|just)? (only|just|down to|still|now){0,2}";
const job = '(this one|this job|this order|this wedding|this lot|these ones|this|these|those|it|them|the lot)';
const atIt = `((left|here|in)? (now|at the bench|on the bench)|(working|making|wiring|on|at it|doing){0,2} (on|for|at)? ${job})`;
const counted = pattern(`${opens} (the|about)? <n:count> <b:bench> ${atIt} (now|sadly|lol|ffs|unfortunately){0,2}`);
const me = '(me|myself|i)';
const pair = pattern(
  `${opens} (just|only|it's just|its just) (${me} (and|&|n|\\+|plus) (the|my|our)? <w:word>|(the|my|our)? <w:word> (and|&|n|\\+|plus) ${me}) (are|is|here|both){0,2} (working|making|wiring|on|at|doing|handling){0,2} (on|for|at|up)? ${job} (now|sadly|lol){0,2}`,
);
const reason = /^(sick|ill|off|out|away|home|poorly|leave|holiday|gone|left|quit|unwell|covid|flu|isolating|hols|cancelled|bailed)$/;

// "Aoife's out sick": why there are no more of them.
const tellsWhy = ({ tokens }: Reader, { start, end }: Stretch): boolean => {
  if (start === end) return true;
  const words = tokens.slice(start, end);
  return (
    words.length <= 8 &&
    words.some(({ text }) => reason.test(text)) &&
    words.every((token: Token) => token.number === undefined && token.means['piece'] === undefined && token.means['weekday'] === undefined)
  );
};

export const onlyUs = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  if (part.asked || (!counted.might(tokens) && !pair.might(tokens))) return undefined;
  for (let index = part.start; index < Math.min(part.end, part.start + 9); index++) {
    const some = counted.at(tokens, index, part.end);
    const two = some === undefined ? pair.at(tokens, index, part.end) : undefined;
    if ((some ?? two)?.end !== part.end || !tellsWhy(reader, { start: part.start, end: index })) continue;
    const number = some?.kept['n']?.number;
    const sure =
      some === undefined
        ? isPerson(two?.kept['w'])
        : some.kept['b']?.text === 'of us' && number?.max === undefined && number?.or === undefined;
    const people = some === undefined ? 2 : Number(number?.amount);
    return sure && people < 20 ? found(reader, part.start, part.end, [{ fact: 'crew', people }]) : undefined;
  }
  return undefined;
};
