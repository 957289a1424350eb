// Hours that are not settled: "2 of us fri, 4 or 5 hrs", "3 of us sat for 5-6", "2 of us fri for 4". How long they are there is not said.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';

const forSome = pattern('for <n:count> (each|max|tops|,)?');
// "10 till 3 or 4"
const tillEither = pattern('(<count>|<time>|noon|midday) (till|til|until|to|-) <range>');
/** "9 to 12 or 1" */
export const endsEither = pattern('<range> or (<count>|<time>)');
/** "8-10 bouts an hour": how fast they are is not said, and nobody orders so many. */
export const openRate = pattern('<range> (<piece>|of them)? (an|per|a|every|in an|/|p) (hour|hr|h)');
/** More are by the clock: "4-5" may be so many hours, "9-12" is not. */
export const fewHours = 8;

/** Whether a length of hours is a range, or a number alone behind "for" that may be hours and is not `told`. */
export const openHours = ({ tokens }: Reader, { start, end }: Part, told: readonly (number | undefined)[]): boolean => {
  if (tokens.slice(start, end).some(({ number }) => number?.unit === 'hour' && !isSingle(number))) return true;
  if (tillEither.in(tokens, start, end) !== undefined) return true;
  const match = forSome.in(tokens, start, end);
  const number = match?.kept['n']?.number;
  const closes = match !== undefined && (match.end === end || tokens[match.end]?.means['weekday'] !== undefined);
  return closes && Number(number?.max ?? number?.amount) <= fewHours && !told.includes(Number(number?.amount));
};
