// Whether so many hands can make so many: "can 3 of us get 90 bouts done by 2" asks for the hours, "... by friday" whether the bench has room.

import type { Forms } from './question-pattern.ts';

const hands = '((the|just|only)? <count> (<bench>|of you|of them)|(me|us) (and|&|n) <word>|both <bench>|all <bench>)';
const make = '(get|have|make|do|finish|wire|manage|knock out|turn out|churn out|get through|get thru|get done|cope with)';
const ready = '(done|made|finished|boxed|wired|ready|out|through)?';
const work = `(can|could|will|would) ${hands} ${make} (about|all|the|all the|another)? <count> (<material>)?`;
const some = `${work} (<piece>|pieces)? ${ready}`;

export const countedHands: Forms = [
  [
    'fits',
    [`${some} (by|for|before) (this|next|the)? (<weekday>|tomorrow|tmrw|tomoz|weekend|<ordinal>|<slashed>|<plain> <month>|<month>)`],
    /\beach\b|[£$€@]/,
  ],
  [
    'labourTime',
    [`${some} (by|before) (about|around|half)? (<time>|<plain>|noon|midday|lunch|lunchtime|tea|dinner|home time|knock off|close|closing)`],
    /\beach\b|[£$€@]/,
  ],
  ['labourTime', [`${work} <piece> ${ready}`], /\b(by|for|before|in|into|on|at|each)\b|[£$€@]/],
];
