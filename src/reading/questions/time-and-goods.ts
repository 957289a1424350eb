// Questions about time at the bench and what to order: "how long will 40 take", "how many stems of statice", "buying list".

import { anything, type Forms } from './question-pattern.ts';

export const goodsQuestions: Forms = [
  [
    'fits',
    [
      `(have|got|is there|there) <any>{0,2} (time|room|capacity|space) ${anything}`,
      `(can|will) <any>{0,4} (finish|get it done|manage) ${anything}`,
    ],
  ],
  ['labourTime', [`how many ${anything} in <duration>`]],
  // "can 2 of us get 60 lapels done by 4pm": the hours it takes
  [
    'labourTime',
    [
      `(can|could|will) (we|i|you|<count> (of us|people|of them)?) (get|make|do|finish|knock out|manage) (about|all)? <count> (<material>)? <piece> (done|made|finished|out|through)? (in|by|over|inside) (an|a|one|the|this)? (arvo|afternoon|morning|evening|<duration>|<time>|noon|midday|lunch|lunchtime)`,
    ],
  ],
  ['drying', [`when ${anything} (cut|pick|harvest|forage|gather) ${anything}`]],
  ['remaining', [`any ${anything} (left|still|to do|to make|outstanding|remaining)`]],
  ['price', [`what did (it|that|they|we|this) (cost|charge) ${anything}`]],
  [
    'packing',
    [
      `how many (boards|boxes|pins|spare pins) (do|will|would|should|are|does|to|have|we|i|go|needed|in|on){1,3} ${anything}`,
      'how many (boards|boxes|pins)',
    ],
  ],
  ['whatIf', [`(is|would|will) <amount> <any>{0,4} (enough|ok|okay|work|cover|too|fair|reasonable|right|silly|steep|mad|worth it)`]],
  [
    'labourTime',
    [
      `(is|are|will|would|be) <duration> (enough|ok|long enough|plenty|sufficient) ${anything}`,
      `how (long|many hours|many hrs|many mins|many minutes|much time|much longer) ${anything} (take|takes|need|make|for|do|per|us|each|spend|allow|be|to|left)`,
      'how (long|many hours|much time|many hrs|many mins|many minutes)',
      `(what|whats|what's) <any>{0,4} (time|hours|minutes|mins) ${anything} (per|for|each|on)`,
      '(hours|minutes|mins|time) (needed|for|per|each|on) <any>{0,4}',
      'how (fast|quick|quickly) <any>{0,6}',
      '(bench|making|labour) (time|hours)',
      'how many hours',
    ],
  ],
  [
    'away',
    [
      `(if|with) <any>{0,3} (one|1|two|<count>|<word>) <any>{0,4} (away|off|sick|out|missing|ill|on leave|not in|can't come|down)`,
      `(away|off|sick) <any>{0,2} (thursday|<weekday>|tomorrow)`,
      '(someone|somebody|anyone) <any>{0,3} (away|off|sick)',
    ],
    /(\d|£|\$|€|\bquid|\bbucks?|\bdollars?|\beuros?|\brand|knock|take|took|price|percent|money|each|pence)\b.{0,14}\boff\b|\b(run|ran|runs) out\b/,
  ],
  [
    'drying',
    [
      `(how many days|when|days|time|how far ahead|how early) ${anything} (dry|drying|hang|hanging|dried|press|silica)`,
      '(drying|hanging) (time|times|done|ready|days)',
      `(is|are|will|has|have) ${anything} dry (yet|by|in time|enough|now)?`,
      `(do|should|when) (we|i) ${anything} (hang|dry|check) ${anything}`,
    ],
    /\bwhen\b.*\b(order|event|wedding|job|one)\b(?!.*\bdry\b)/,
  ],
  [
    'orderBy',
    [
      `(when|what day|what date|by when|latest|last day|how late) ${anything} (order|buy|ordered|ordering|get the|orders|market)`,
      'order by (when|what|date)',
      '(order|ordering) (deadline|cutoff|cut off|day|date)',
    ],
  ],
  [
    'count',
    [`how many <any>{0,2} <piece> (did|do|does|have|has|are|is|were) ${anything} (order|ordered|want|need|wanted|booked|have|asked for)`],
  ],
  [
    'stemOrder',
    [
      `how (many|much) (stems|bunches|bunch|stem|bags|heads|wraps|packs|rolls|boxes|metres|m|spools|bundles|reels|sprigs|yards) <any>{0,6}`,
      `how (many|much) ${anything} <ingredient> ${anything}`,
      `(what|which) (stems|flowers|bunches|foliage) ${anything} (order|buy|need|get|want)`,
      `(do|have|did) (we|i|you) ${anything} (enough|order|ordered|need|got|any|have) ${anything} (<ingredient>|stems|flowers|foliage)`,
      `(is|are) there enough ${anything}`,
      `(what|what's|whats) ${anything} (order|buy) ${anything} (for|from|this|next)`,
      `(need|want) (to)? (order|buy) (any|more) <any>{0,4}`,
      `how (many|much) ${anything} (to order|to buy|order|buy)`,
    ],
  ],
  [
    'buying',
    [
      '(buying|shopping|order|market|flower|stem|wholesale|supplier) (list|order)',
      `(what|what's|whats) ${anything} (to buy|to order|buy|order|on the list|from the market|at the market)`,
      'what stems <any>{0,4}',
      'list for <any>{0,2} (market|wholesaler)',
    ],
  ],
];
