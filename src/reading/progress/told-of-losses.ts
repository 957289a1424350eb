// What still belongs to a loss just told: "dropped one n its wrecked", "lost 2 in the esky".

import type { Match } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import type { Event } from './event.ts';
import { lostAgain, lostWhere, ofTheLost } from './work-forms.ts';

export const afterLoss = (events: readonly Event[]): boolean =>
  events.at(-1)?.told === 'lost' || (events.at(-1)?.told === 'count' && events.at(-2)?.told === 'lost');
// Where they were lost, or that they were.
export const lossMore = (tokens: readonly Token[], index: number, end: number, events: readonly Event[]): Match | undefined => {
  const again = lostAgain.at(tokens, index, end);
  const who = again?.kept['w']?.text ?? 'all of them';
  const count = events.findLast((event) => event.told === 'count')?.count;
  const fits = ofTheLost.test(who) && (/^(both|both of them)$/.test(who) ? count === 2 : !/^it/.test(who) || count === 1);
  return again !== undefined && fits ? again : lostWhere.at(tokens, index, end);
};
