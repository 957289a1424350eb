// "ten bouts take twenty thistles, if you're working out what to cut": whom it may help is a remark behind what is told, and asks nothing.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const remark = pattern(
  "(,|-|\\() (in case|if) (you're|you are|youre|ur|you|u|anyone's|anyone is|anyone|anybody's|it|that|someone's|we're|i'm) (still|just|already|ever|about to|needing to|trying to|want to|wanting to|need to|going to){0,2} (working|work|adding|add|figuring|doing|planning|pricing|writing|wondering|wonder|costing|making|off|ordering|order|cutting|picking|checking|asking|counting|helps|is any help|matters|is useful|helpful) <any>{0,10}",
);

/** The part without such a remark at its end. */
export const withoutRemark = (reader: Reader, part: Part): Part => {
  const match = part.asked ? undefined : remark.in(reader.tokens, part.start + 1, part.end);
  return match?.end === part.end ? { ...part, end: match.start } : part;
};

// "which day does it fall on, I've got two different ones in the book": why it is asked.
const why = pattern("(,|-|\\() (i've|i'm|i|we've|we're|she's|he's|they've|because|cos|coz|cause|it's|it|my|she|he|they) <any>{2,16}");
/** Where a question ends whose reason stands behind it and counts nothing of ours. */
export const beforeReason = (reader: Reader, part: Part): number => {
  const match = why.in(reader.tokens, part.start + 4, part.end);
  if (match?.end !== part.end) return part.end;
  const counts = reader.tokens
    .slice(match.start, part.end)
    .some(
      ({ means, number, text }) =>
        means['piece'] !== undefined || means['ingredient'] !== undefined || (number !== undefined && text !== 'two' && text !== 'one'),
    );
  return counts ? part.end : match.start;
};
