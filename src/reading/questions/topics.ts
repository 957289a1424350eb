// What a question is about when it is asked in no form we know: by the telling words in it, whatever their order. More telling words stand first.

import type { Asked } from '../fact.ts';

type Topic = readonly [Asked, RegExp, RegExp?];

const some = '(<number>|\\bone\\b|\\btwo\\b|<piece>)';
const topics: readonly Topic[] = [
  [
    'taxStatus',
    /<tax>.*\b(in|out|inc|incl|included|inclusive|on top|extra|or|not|charge|charged|add|added|on)\b|\b(in|out|inc|incl|included|on)\b.*<tax>/,
  ],
  ['margin', /\b(profit|margin|mark ?up|earn|earning|our cut|my cut)\b/],
  [
    'labourTime',
    new RegExp(
      `\\b(hours?|hrs?|minutes|mins|how long|time)\\b.*${some}|${some}.*\\b(hours?|hrs?|minutes|mins|how long|in (a|an|one) (day|morning|afternoon))\\b`,
    ),
    /what time|in time|on time|last time|time off/,
  ],
  [
    'stemBudget',
    /\b(stems?|flowers?)\b.*\b(budget|left over|spend|money|allowance)\b|\b(budget|spend|money|allowance|afford)\b.*\b(stems?|flowers?)\b/,
  ],
  [
    'stemOrder',
    /(\b(stems?|bunch|bunches)\b|<ingredient>).*\b(order|buy|need|needed|get|how many|how much)\b|\b(order|buy|need|get|how many|how much)\b.*(\b(stems?|bunch|bunches)\b|<ingredient>)/,
  ],
  [
    'due',
    /\bdue\b|\b(on the bench|to be made|to make|to do)\b.*\b(today|tomorrow|tmrw|tonight|week)\b|\b(to be made|to make|to do)\b.*<weekday>/,
  ],
  ['remaining', /\b(to make|to do|still|left|remaining|remain|to go|outstanding|pending|so far|done|finished|made|completed|unmade)\b/],
  ['latestStart', /\b(latest|last)\b.*\b(start|begin)\b/],
  ['start', /\b(start|begin|starting|kick off)\b/],
  ['drying', /\b(dry|drying|hang|hanging)\b.*\b(when|how|days|long|ready)\b|\b(when|how|days|long|ready)\b.*\b(dry|drying|hang|hanging)\b/],
  ['eventDate', /\b(when|date|what day|which day)\b/],
  ['total', /\b(total|all up|altogether|in all|come to|comes to|owe|overall)\b/],
  ['price', /\b(charge|charging|charged|price|priced|quote|quoted|cost|how much)\b/],
  ['whatIf', /\bif\b.*<number>|<number>.*\b(instead)\b/],
  ['count', /\b(how many|count|qty)\b/],
];

/** `said` has the words as typed, with kinds in their place: <piece>, <ingredient>, <tax>, <weekday>, <number>. */
export const topicOf = (said: string): Asked | undefined =>
  topics.find(([, telling, unless]) => telling.test(said) && unless?.test(said) !== true)?.[0];
