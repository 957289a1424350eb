// The hours of each of the hands: "5 hrs each", "5 hrs a day".

import type { Match } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { NumberRead, Token } from '../text/token.ts';
import { eachHours, forHours } from './crew-forms.ts';
import { hoursOf } from './pace.ts';

/** "5 hrs each", but "3 hrs each day" */
export const isEach = (tokens: readonly Token[], index: number): boolean =>
  (tokens[index]?.means['each'] !== undefined || tokens[index]?.text === 'a head') &&
  !/^(day|shift|morning|afternoon|week|night)$/.test(tokens[index + 1]?.text ?? '') &&
  tokens[index + 1]?.means['weekday'] === undefined;

// "for 3 days, 5 hrs a day": the first duration that is of hours. `whole`: "6 mins a bout" beside them is a pace.
export const hoursEach = ({ tokens }: Reader, { start, end }: Part, whole = false): Match | undefined => {
  let match = eachHours.in(tokens, start, end);
  const isOther = (token: Token | undefined): boolean => hoursOf(token) === undefined || (whole && token?.number?.unit !== 'hour');
  while (match !== undefined && isOther(match.kept['d'])) match = eachHours.in(tokens, match.end, end);
  return match;
};

/** "2 helpers at 15 for 6": hours without a word for them, asked only where no sum is said: in "64 hours total for 4 persons" the four are none. */
export const bareHours = ({ tokens }: Reader, part: Part): NumberRead | undefined =>
  forHours.in(tokens, part.start, part.end)?.kept['n']?.number;
