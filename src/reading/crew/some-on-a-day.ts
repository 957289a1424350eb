// Hands counted anew for a day: "2 juniors at 12 an hour, 1 on saturday". How many of them are there is not said, so the sentence is held.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const someThen = pattern(
  '(,|;|-|but) (and|but|then)? (only|just|maybe)? <n:count> (of them|of those|of em|more|others|other)? (in|free|here|there|available|working|on|for|this|next){0,2} <weekday>',
);
export const someOnADay = ({ tokens }: Reader, { start, end }: Part, people: number | undefined): boolean => {
  if (people === undefined || !someThen.might(tokens)) return false;
  const match = someThen.in(tokens, start, end);
  const next = match === undefined || match.end >= end ? undefined : tokens[match.end];
  // "me plus 3 9-1 on sat"
  if (match !== undefined && tokens[match.start]?.text === '-' && tokens[match.start - 1]?.number !== undefined) return false;
  return match !== undefined && next?.number === undefined && Number(match.kept['n']?.number?.amount) !== people;
};
