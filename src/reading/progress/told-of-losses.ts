// What still belongs to a loss just told: "dropped one n its wrecked", "lost 2 in the esky".

import { type Match, pattern } from '../pattern.ts';
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

// What they fell with: "dropped a tray and lost 5 bouts". A tray of some, or full of them, tells how many.
const withTray = pattern(
  '(dropped|knocked|tipped|spilt|spilled|upset|flipped|kicked|sat on|bumped) (over)? (a|the|one|my|our|another) (whole|full)? (tray|box|crate|shelf|bucket|rack|trolley|board|basket) (over|off|down)? ((off|on|onto) (the|my|our)? (bench|table|shelf|trolley|counter|floor|van|steps|step))?',
);
export const fellWith = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
  const match = withTray.at(tokens, index, end);
  return match === undefined || /^(of|with|full|from)$/.test(tokens[match.end]?.text ?? '') ? undefined : match;
};
/** "broke 2 halos so we're down to 6", "lost 5, so back to 19": as many are good. */
export const downTo = pattern(
  "((we're|we are|i'm|im|i am|were|that's|thats|that|which|it's|its|leaves|puts|brings|takes){0,2} (us|me|it)? (now)? (back|back down|back up|down) to|(which|that|this) leaves (us|me)? (with)? (just|only)?|(that|which|puts|brings|leaves|takes){0,2} (we're|we are|i'm|im|i am|were|us|me) (now)? back (at|on))",
);
/** "made 12 but binned one so 11": the number behind is what is left of the first where it comes out. */
const leaves =
  "(so|that's|thats|that is|which is|it's|its|i've|ive|we've|weve|i'm|we're|makes|makes it|that makes|that leaves|which leaves|this leaves|leaves|leaving|left with|got|have|now|only|just|me|us|at|with|=)";
export const leavesSo = pattern(
  `(,|and|-)? ${leaves}{1,5} <n:count> (of them)? (<p:piece>)? (good|usable|fine|ok|done|made|finished|now|good ones|in all|in total|so far|altogether|overall){0,3}`,
);
/** "broke 1, fixed 1, so still 14": as many as before. */
export const stillSo = pattern(
  "(we're|we are|i'm|we|i|it's|its|that's|thats)? still (at|on|have|got|with)? <count> (good|ok|fine|done|made|in all)?",
);
