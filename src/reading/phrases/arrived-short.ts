// "statice came but 4 dead", "roses are here, 3 stems snapped": what has come, and how much of it can't be used. No pieces broke, and none are left to make.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase } from '../phrase.ts';

const come =
  "(the|our|all the)? <i:ingredient> (has|have|'s|is|are|was|were|all|just|only|finally){0,3} (arrived|came|come|here|delivered|landed|in|turned up|received|got here) (today|this morning|ok|in|early|late|yesterday){0,2} (,|but|and|with|-|though|only){0,3}";
const unusable =
  '(dead|broken|broke|snapped|squashed|no good|bad|wilted|mouldy|rotten|crushed|bent|limp|in the bin|binned|damaged|gone off|useless|unusable|rubbish|knackered|bruised)';
const dead = pattern(
  `${come} (about)? <n:count> (of them|of those|stems|stem|heads)? (are|were|was|is|came|arrived|had|look|looked){0,2} ${unusable}`,
);
const short = pattern(
  `${come} (about)? <n:count> (of them|of those|stems|stem|heads)? (are|were|was|is|came|arrived|had){0,2} (short|missing|light|under|down|too few|less|fewer|not there|to come)`,
);

export const arrivedShort: Phrase = {
  name: 'arrived short',
  examples: ['statice came but 4 dead'],
  find: (reader): Finding[] =>
    reader.untouched().flatMap(({ start, end, asked }) => {
      const { tokens } = reader;
      const match = asked ? undefined : (dead.at(tokens, start, end) ?? short.at(tokens, start, end));
      const [item, number] = [match?.kept['i']?.means['ingredient'], match?.kept['n']?.number];
      if (match === undefined || item === undefined || number === undefined || number.max !== undefined) return [];
      // How many short is told to whoever sold them.
      if (dead.at(tokens, start, end) === undefined) return [{ start: match.start, end: match.end, held: true }];
      const unused = { fact: 'actual' as const, what: 'unused' as const, count: Number(number.amount), item };
      return [found(reader, match.start, match.end, [{ fact: 'step', step: 'received', item }, unused])];
    }),
};
