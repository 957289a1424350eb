// Questions about the event itself: its date, recipe, material, price, count; and what-ifs.

import { anything, type Forms } from './question-pattern.ts';

export const eventQuestions: Forms = [
  [
    'eventDate',
    [
      `(when|when's|whens|what date|what day|which day|what's the date|whats the date|which date|date|what time) (is|was|are|again|of|for|do|does|did|will|the|this|that|'s|they|we|it|on|event|wedding) ${anything}`,
      `(when's|whens) ${anything}`,
      `(what|which|remind|remember|what's|whats) ${anything} (date|day|time|date's|day's|dates|time's) ${anything}`,
      `(is|was) ${anything} (on the <plain>|<ordinal>|<weekday>|<month>) ${anything}`,
      `how (long|many days|many weeks|soon|far) ${anything} (until|till|til|away|off|to)`,
      `(when|what time) ${anything} (wedding|event|handover|pickup|hand over|due|deliver|delivery|collected|collection|pick up|ceremony|needed|party|function|gala|boarded|one)`,
    ],
  ],
  [
    'recipe',
    [
      `(what|what's|whats|which|remind) ${anything} (goes in|go in|in the|in each|recipe|in a|goes into|stems in|flowers in|per piece|make up|going in) ${anything}`,
      'recipe (for|please|again|of)? <any>{0,3}',
      `how many (stems|flowers|roses) (in|per|go|each|for) ${anything}`,
    ],
  ],
  [
    'material',
    [
      `(is|are|was|were) ${anything} (fresh|dried|preserved|silk|artificial|mixed|fake|real|<material>) ${anything}`,
      `<material> or <material>`,
      'what <any>{0,2} (material|flowers) <any>{0,4}',
    ],
  ],
  [
    'total',
    [
      `(how much|what|what's|whats) (is|are|has|have|do|does)? ${anything} (left|still|outstanding|remaining) (they|she|he|for them|for her)? (have|has|got|left)? to pay`,
      `what (do|does|will|should) ${anything} (owe|pay)`,
      `${anything} damage ${anything}`,
    ],
  ],
  ['price', [`what (did|do) (we|i|you) (say|agree|agreed|tell them|settle on|end up) ${anything}`]],
  [
    'total',
    [
      `(what|what's|whats|how much|give me|show) ${anything} (total|<all>|altogether|overall|bill|invoice|come to|comes to|whole thing|whole lot|order worth|grand total|all together|add up to)`,
      `(total|order total|grand total) (price|cost|again|now|for|so far|please|value)`,
      `how much (is|are|does|for|will|do) (it|this|that|they|the order|the lot|everything|the whole|the job|we charging all|all) ${anything}`,
      `(what|how much) (does|do|is|will|would) (it|they|that|this|the order) (all)? (come|add|work|cost|owe|pay|total) ${anything}`,
      'total',
      `how much (do|does|will) (they|she|he|the client|the bride|the couple|client|bride|customer) (owe|pay) <any>{0,4}`,
    ],
  ],
  [
    'price',
    [
      `(what|how much|what's|whats|which) ${anything} (price|charge|charging|charged|quote|quoted|cost|costs|asking|going for|worth|pricing|sell|selling|paying|pay|rate) ${anything}`,
      `how much ${anything} (<piece>|each|ea|per|are|is|for|a|did) ${anything}`,
      `(price|cost) (of|for|per|each|again|list|on) <any>{0,4}`,
      `(what's|whats|what is) (a|the|one|each) <piece>`,
      `how much`,
    ],
  ],
  [
    'events',
    [
      '(open|all|upcoming|next|other|what|list|show|which|how many|any|whats|current|live) (me|us)? (the|our|other|all)? (open|upcoming|next|live|current|more)? (events|weddings|jobs|event|parties|orders) <any>{0,4}',
      "what('s)? (else)? (is)? (coming up|booked|in the book|in the diary) <any>{0,3}",
      '(events|weddings|jobs) (open|this|next|coming)',
    ],
  ],
  [
    'summary',
    [
      '(summary|summarise|run (me|us) through|talk (me|us) through|remind me of the details|what do (we|you) know|summarize|recap|overview|status|where are we|sum up|the story|round up|rundown|details|full picture|everything so far|state of play|whats the story|catch me up|what have we got|what do we have|what do you know|what do you have|show (me)? (the)? (event|order|thread|job))',
      `what ${anything} so far`,
    ],
  ],
  [
    'count',
    [
      `how many <any>{0,3} (<piece>|pieces|did|do|are|ordered|order|in|on|does|have|for|was|were|total|altogether|all up|all told) ${anything}`,
      `(what|what's|whats) ${anything} (count|order|number|numbers|qty|quantity) ${anything}`,
      `how many <any>{0,2} (again|total|altogether|<all>)?`,
    ],
  ],
  [
    'whatIf',
    [
      `(can|could|what if|what about|how about|what happens|if|would|suppose|and if|say|will|shall|should) ${anything} <number> ${anything}`,
      '(what if|what about|how about|suppose|what happens) <any>{0,6}',
      `<any>{0,3} (at|for|with|on) <amount> <any>{0,4}`,
    ],
  ],
];
