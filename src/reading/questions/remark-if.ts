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
const why = pattern(
  "(,|-|\\() (i've|ive|i'm|im|i|we've|weve|we're|she's|shes|he's|hes|they've|theyve|because|cos|coz|cause|it's|it|my|she|he|they|can't|cant|cannot|couldn't|couldnt|don't|dont|lost|forgot|forgotten|mislaid|misplaced) <any>{2,16}",
);
// "anything due on friday or can i go to the dentist": what one would do if nothing is.
const dueAsked = pattern(
  "(so|and|ok|hey|hi|morning|,|is|are|there|there's|theres|have we|we|got|do|have){0,4} (anything|any|any jobs|any orders|much|owt|what's|whats|what is|what) (else|still|is|are|orders|jobs|pieces|we got|have we got|do we have){0,2} (due|booked in|booked|going out|on)",
);
const orMay = pattern('(,)? or (can|could|may|might|should|shall|do|will) (i|we) <any>{1,12}');

/** Where a question ends whose reason, or what else one would do, stands behind it and counts nothing of ours. */
export const beforeReason = (reader: Reader, part: Part): number => {
  const due = dueAsked.at(reader.tokens, part.start, part.end);
  const match = (due && orMay.in(reader.tokens, due.end, part.end)) ?? why.in(reader.tokens, part.start + 4, part.end);
  if (match?.end !== part.end) return part.end;
  const counts = reader.tokens
    .slice(match.start, part.end)
    .some(
      ({ means, number, text }) =>
        means['piece'] !== undefined || means['ingredient'] !== undefined || (number !== undefined && text !== 'two' && text !== 'one'),
    );
  return counts ? part.end : match.start;
};
