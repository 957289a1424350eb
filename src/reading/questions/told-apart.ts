// Questions that share most of their words with another and are told from it by one or two: tried before all other forms.

import { countedHands } from './counted-hands.ts';
import { anything, type Forms } from './question-pattern.ts';

const some = '(flowers|flower|stems|stem|materials|material|ingredients|product|foliage)';
const whole =
  '(<all>|overall|in the end|for (the|this) (whole)? (lot|job|order|one|wedding|event|thing)|for everything|for it all|all round)';
const day = '(today|tomorrow|tmrw|tonight|this week|next week|the weekend|this weekend|<weekday>)';

export const toldApart: Forms = [
  [
    'spend',
    [
      `(what|how much) (can|could|do|should|may|must|shall|will|would|am|are) (we|i) (be|need to|have to|going to|gonna)? (spend|spending|pay|paying|lay out) (on|for|at) (the|our)? (${some}|market|wholesale|wholesaler|wholesalers) <any>{0,2} ${whole}`,
      `(what|how much) (will|would|do|does|are|is|did|should) (the|our|all the)? ${some} <any>{0,2} (cost|come to|set (us|me) back|run (us|me) to|run to|add up to) <any>{0,4}`,
      `(what|how much) (can|could|do|should)? (we|i) (can|could|should|may)? (spend|spending|lay out) ${whole} (on|at|for) (the)? (${some}|market|wholesale|wholesaler|wholesalers)`,
      "(what|what's|whats) (is|are)? (it|this|that|the job|this one) (costing|gonna cost|going to cost|cost|setting) (us|me|back)? (in|for) (the)? (flowers|stems|materials|foliage)",
      `(total|whole|overall|full) (flower|flowers|stem|stems) (total|spend|cost|bill|money|<budget>)`,
    ],
    /\b(per|each|apiece|a (bout|buttonhole|corsage|crown|comb|lapel)|flower (girl|crown|halo|comb)s?|labou?r)\b/,
  ],
  // What is taken off is no price to try.
  [
    'other',
    [
      'if (we|i|you|they) (knock|knocked|take|took|shave|shaved|drop|dropped|lop|lopped) (a|another)? <amount> (of|from)? off <any>{0,6}',
      '(what|how) (would|does|will|do) (a|another)? <amount> off <any>{0,3} (do|be|look|make|mean|leave|come) <any>{0,3}',
    ],
  ],
  [
    'review',
    [
      "(what|what's|whats|how much|how many) (was|were|is|are|did)? (the|our|my)? (actual|real|true|final) <any>{0,2} (cost|costs|spend|hours|time|margin|profit) <any>{0,4}",
    ],
  ],
  [
    'stemBudget',
    [
      `(stem|stems|flower|flowers) (<upTo>|limit|cap|ceiling|max|maximum|money|allowance|<budget>) ${anything}`,
      `how much (in|of|worth of)? (the)? (flowers|flower|stems|materials) (money)? (goes|go|going|can go|should go|do we have|to put|to use)? (in|into|per|for|<each>)? (a|an|each|one|every)? (<piece>|one|<each>) <any>{0,2}`,
      `(what|how much) (can|could|do|should|may|must|shall) (we|i) (spend|have|put|use|allow|put aside|set aside) (on|for|in|towards) (the|our)? ${some} (<each>|on|in|for)? (a|an|<each>|one|every)? (<piece>|one|<each>) <any>{0,2}`,
    ],
    /\b(order|buy|total|altogether|recipe|flower (girl|crown|halo|comb))\b/,
  ],
  [
    'taxStatus',
    [
      `(is|was|are|were) (the)? <tax> (a)? part of <any>{0,4}`,
      `(is|was|are|were) (the|that|this|our|it|price){1,2} (<amount>)? (price|total|one|each)? (<included>|<onTop>) (of)? (the)? <tax>`,
    ],
  ],
  [
    'stemOrder',
    [
      `(is|are|will|would|should) (<count>|a|the|one) (more|extra|big|full)? (<ingredient>|<pack>|bunch|bunches|stem|stems|wrap|wraps|box|boxes|roll|rolls|spool|spools|metre|metres) <any>{0,3} (enough|do|cover|last|be enough|suffice|plenty) ${anything}`,
    ],
    /each|left for|budget/,
  ],
  [
    'whatFits',
    [
      `what (flowers|stems|flower|foliage|else)? (can|could|should|would) (i|we|you) (use|put in|get|fit in|do) <any>{0,3} (for|with|at|under|within|on|below|<upTo>) <amount> <any>{0,5}`,
    ],
    /how many|how much|charge/,
  ],
  [
    'start',
    [
      'how (many days|many weeks|far|long|soon) (ahead|in advance|before|beforehand) (can|could|should|do|must|may) (we|i|the|they|these|you) <any>{0,3} (make|made|do|done|wire|wired|start|started|prep) <any>{0,4}',
    ],
    /\border|cut\b|hang\b|market|wholesal/,
  ],
  [
    'latestStart',
    [
      "(what if|what happens if|is it ok if|ok if|can it wait if|if) (we|i) (only|don't|dont)? (start|begin|leave it|wait|hold off|leave the start) (till|til|until|on|to)? (<weekday>|tomorrow|next week|the <ordinal>) <any>{0,5}",
    ],
  ],
  [
    'other',
    [`how long (will|do|does|would|can|should) <any>{0,4} (last|keep|survive|stay fresh|hold up|hold|live) ${anything}`],
    /make|dry|order|ahead/,
  ],
  ['packing', [`how many (boxes|trays|crates|boards|cartons|baskets) (for|do|will|to|does|needed|should|are) ${anything}`]],
  [
    'prices',
    [
      `(is|are|was|were|has|have|did|does|do) (the|our|a)? <ingredient> <any>{0,2} (gone up|go up|went up|going up|dearer|cheaper|still <amount>|<money>|<amount> (a|per|<each>)) <any>{0,5}`,
      `did (we|i|you|they) (pay|get charged|spend) <amount> (for|on) (the|our|a)? <ingredient> <any>{0,4}`,
      "(what's|whats|what is|what are) (a|the|one|our)? (bunch|bunches|stem|stems|wrap|wraps|box|roll|pack|bag|head) of <ingredient> (now|at|going for|these days|this week|again|at the minute|cost|costing)?",
      `how much (is|are) (a|the|our|those|one)? <ingredient> (now|at the minute|at the moment|these days|this week|going for|<each>|a stem|a bunch|at wholesale|at market)?`,
    ],
    /\b(order|need|left|enough|should|have to|in (a|each|the))\b|per (piece|bout|corsage|crown|comb|lapel)/,
  ],
  [
    'start',
    [
      `(when|what day|which day|what date|what time) (do|should|must|can|shall|would|could|will|are|am) (we|i) (need to|have to|be|getting|get|gonna|going to)? (get|getting)? (start|started|starting|begin|beginning|going|stuck in|cracking|kick off) <any>{0,4}`,
      `(when|when's|whens|what|what's|whats) (is|was)? (my|our|the) first (bench|making|work)? day <any>{0,3}`,
      '(start|starting|begin) (on)? (what|which) (day|date) <any>{0,2}',
      '(when|day|date|what day|which day) to (start|begin) <any>{0,3}',
    ],
    /\b(dry|drying|hang|hanging|order|ordering|cut|wedding|party|ceremony|latest|late)\b/,
  ],
  ['latestStart', [`(latest|last) <any>{0,3} (we|i) (can|could|should) (get going|get started|get stuck in|get cracking) <any>{0,3}`]],
  [
    'eventDate',
    [
      '(is|was) (the|it|their|that|this|her){0,2} <any>{0,2} (wedding|ceremony|event|party|gala|pickup|handover|collection|it|do|one) (at|from|for|on) (the)? (<number>|<range>) <any>{0,4}',
      // "wedding's the 20th right?"
      "(wedding|event|party|ceremony|pickup|collection|date|wedding's|event's|party's|ceremony's|pickup's|date's) (is|still|on|for|the){0,3} (<weekday>|<ordinal>|<plain> <month>|<month> <plain>|<slashed>) (of)? (<month>)? (,)? (right|yeah|correct|still on|isn't it|isnt it|innit)",
      'how many (days|weeks|sleeps|more days|more sleeps) (have (i|we) got|do (i|we) have|have (i|we)|till|until|til|to go|left|away|before) <any>{0,5}',
      `what time (is|was|does|do) (the|that|this|their|our|her|it) <any>{0,3} (wedding|event|gala|party|ceremony|formal|ball|function|handover|pickup|prom|do)? (on|at|start|begin|again)?`,
      "(when|what day|what date|what time) (are|is|do|does|will|did)? (they|they're|she|she's|he|the client|client|the bride|it|it's) (be|getting|being)? (collecting|collect|collected|picking|picked|pick|coming|come|needing|need|want|wanting|having|take|taking) (them|it|these|everything|up|the flowers|by|for){0,3} <any>{0,2}",
      `(when|what time|what day|by when|how early) (am|are|do|should|must|will|is) (i|we|you|u|someone|anyone) (supposed to|meant to|need to|needing to|have to|got to|to)? (be)? (have|having|get|getting|drop|dropping|bring|bringing|deliver|delivering|take|taking|hand|handing) (these|those|them|it|everything|the flowers|this|the lot|(the|all the)? <piece>) (all)? (off|over|in|out|ready|there|to|at|round) <any>{0,4}`,
      `(when|what time|what day|what date|by when) (do|does|must|should|will) (these|they|it|the <piece>|this|those|everything) (all)? (need to|have to|got to|must)? (be|been) (ready|done|finished|there|delivered|collected|handed over) <any>{0,3}`,
      `(when|what time|what day|what date) (are|is) (these|those|they|it|this) (all)? (for|wanted|needed|due|going out|wanted for|needed for) <any>{0,3}`,
    ],
    /\b(how much|start making|bench|order|dry|hang|hanging)\b/,
  ],
  [
    'due',
    [
      `(what's|whats|what is|whats all|anything) (still)? (on|on for|due|going) (for|out)? ${day} <any>{0,2}`,
      `(what|anything) (do|have|must|should) (we|i) (have|got|need|still have)? (to make|to be made|to do|to finish|on|due) (by|for|on)? ${day} <any>{0,2}`,
    ],
  ],
  [
    'remaining',
    [
      'how many (<piece>)? (do|did|must|should) (we|i) (have|need|got)? (to)? (remake|redo|replace|rebuild) <any>{0,3}',
      `(are|is|have) (all|all the|the|those|my|our|both|any of the) <piece> (all|been|now|nearly)? (ready|done|made|finished|boxed|complete|completed|wired|taped) (yet|now|already)?`,
      // "did I tell you 12 done or 20?"
      `(did|have) (i|we|she|he|they) (already|just|not)? (tell|told|say|said|give|gave|put|log|logged|report|send|text) (you|u|it|that|them|down|in){0,2} (it was|that|as|we had|i had|had)? <count> (<piece>)? (are|were|as)? (done|made|finished|boxed|ready|complete|completed) (or (was it|is it)? <count>)? <any>{0,2}`,
      `(was|is) (it|that) <count> (<piece>)? (done|made|finished|boxed|ready|complete|completed) or <count> <any>{0,2}`,
      `how (are|r) (we|you|u|things|they) (going|doing|getting on|looking|tracking|travelling) (on|with|for) (the|those|these|our|all the)? <any>{0,3}`,
      `(any|anything|many) (left|still)? (to go|to make|to do|to finish|outstanding|unmade|pending)`,
      `(where|what) (are)? (we|you|u) (at|up to) (with|on) (the|these|those|this|our)? <any>{0,3}`,
    ],
    /\bmade (of|from|out)\b|\b(for|by|in time) (mon|tue|wed|thu|fri|sat|sun|today|tomorrow)|\b(today|tomorrow|tonight|week|next)\b/,
  ],
  [
    'count',
    [
      `how many (are|were|is) (there)? (in|on) (this|the|that|their|her) (order|job|one|list|event|booking) <any>{0,2}`,
      `(was|is|were|are) (it|they|there|that) (meant|supposed) to be <count> (or <count>)? (<piece>)? <any>{0,2}`,
      `(was|is|were|are) (it|they|there|that) (meant|supposed) to be <range> (<piece>)? <any>{0,2}`,
    ],
  ],
  [
    'whatIf',
    [
      '<amount> (<each>)? (,|-)? (is|be|sound|sounds|seem|seems|look|looks|feel|feels) (a|a bit|way|really|far|much|about|just|any){0,2} (too|ok|okay|fair|right|steep|cheap|dear|much|reasonable|good|low|high|better|mad|silly) <any>{0,4}',
      "(how's|hows|how is|how about) <amount> (<each>)?",
      '(can|could|would|will|should) (we|i|you|she) (just|still|really)? (get away with|justify) (charging|asking|quoting|a price of)? <amount> (<each>)?',
      // "what if she wants 6 more bouts"
      '(what (-)? if|and if|suppose|supposing|say|imagine) (she|he|they|we|i|there|client|bride|couple|the <word>) (<word>)? (want|wants|wanted|need|needs|needed|add|adds|added|ask for|asks for|asked for|has|have|had|are|is|were|order|orders|ordered|go for|goes for) (just|only|about|another)? <count> (more|extra|fewer|less|additional|another) <any>{0,3}',
      // "what would it come to if she had 30 instead of 24"
      '(what|how much) (would|will|does|did|is)? (it|that|the total|the price|they|we|i|she|he|be|come to|cost|make|total|pay|owe|work out at){0,4} if (she|he|they|we|i|it|there|client|bride|couple|the <word>) (<any>){0,2} <plain> (<material>)? (<piece>)? (instead|not|rather than) <any>{0,4}',
    ],
    /\b(done|made|finished|hours?|hrs|mins|minutes)\b/,
  ],
  [
    'why',
    [
      "(how|what|what's|whats|how's|hows) (is|was|'s)? (the|that|this)? <amount> (each)? (made up|made of|worked out|based on|coming from|about) <any>{0,3}",
      "(why's|whys) (it|that|this|the) <any>{0,6}",
    ],
  ],
  ['working', ['break (the|that|this) <amount> down <any>{0,3}']],
  [
    'margin',
    [
      `(is|was|was there|will) there (any|much|enough) (money|profit|anything) (in|on) (it|this|that|these|them|the job) <any>{0,4}`,
      `(how much|what) (do|did|will|are|would)? (we|i) (do|did)? (clear|clearing|earn|earning|pocket|net|make|making) (<each>|on|per|off|out of|from|for) (a|an|<each>|each|one|this|these|it|that|the)? <any>{0,3}`,
      `(any|much) money in (it|this|that|these|them) <any>{0,3}`,
    ],
  ],
  [
    'total',
    [
      'what (do|does|will|did|must)? (they|she|he|the (bride|client|couple|hotel)) (owe|owes) (us|me)? (in total|<all>|now|still|altogether)?',
      `(what|how much) (am|are|do|should|shall|must|will|would) (we|i|you) (be)? (invoice|invoicing|bill|billing) (them|her|him|for|the)? <any>{0,4}`,
      `(what|what's|whats|how much|how much's) (will|would|do|does|did|are|is|were|was|should|could)? (the|all|about)? <count> (<material>)? <piece> (would|will)? (be|cost|come to|come out at|run|come in at|total|add up to|set)? (them|us|her|him)? (at|@|for) <amount> (<each>)? <any>{0,3}`,
      `<count> (<material>)? <piece> (at|@|for) <amount> (<each>)? (,|-|is|are|comes|come|makes|equals|would be|=){0,2} (to)? how much`,
    ],
    /\b(left|stems?|profit|margin|if)\b/,
  ],
  [
    'price',
    [
      'what (the|our|a|an|my)? <piece> (are|is|cost|costs|go|goes|come|comes|work|works|sell|sells) (in|out|for|at){0,2} (again|now|each|<each>)?',
      'what (did|do) (we|i|you) (do|sell|have) (it|them|these|those|the <piece>|<piece>) (for|at) <any>{0,3}',
      `(what|how much) (do|does|will|would|are|is|did) (they|she|he|the client|the bride|client|bride|the couple|customers?|people|we) (paying|pay|to pay|charging|charge|asking|get|getting) (for)? (<each>|for a|for one) (<piece>|single one|of them)?`,
      `(what's|whats|what is|what are|what does|how much is|how much does) (a|each|one|every)? (single)? (one|<each>|one of them|one of these|one of those) (going for|cost|costing|costs|come to|comes to|worth|priced at|sell for|come in at|come out at) <any>{0,2}`,
      `(how much|what) (did|do|have) (we|i|you|u) (say|said|tell them|quote|quoted|agree|agreed) (for|on)? (a|an|<each>|one|every) (single)? (<piece>|one)? <any>{0,2}`,
    ],
    /\b(tax|vat|gst|hst|stems?|spend)\b/,
  ],
  [
    'labourTime',
    [
      `how many <any>{0,3} (can|could|do|will|would) (we|i|you|<count> (<bench>|of you|of them)|a <bench>) (make|do|get done|get made|get through|knock out|finish|turn out|churn out|manage) (in|per|an|a|each) <any>{0,4}`,
      `(can|could|will|would) (we|i|<count> (<bench>|of you|of them)|me (and|&) <word>|the <count> <bench>|both <bench>) (make|do|get through|knock out|finish|get|wire|turn out|manage|get done) (about|all|the|all the)? <count> (<material>)? <piece> (done|made|finished)? (in|before|over|within|inside) (an|a|one|the|this|half)? (day|morning|afternoon|arvo|evening|<duration>|lunch|lunchtime|noon|midday|shift)`,
      `(time|hours|hrs) (will|would|does|do) (it|they) take <any>{0,6}`,
    ],
  ],
  ...countedHands,
];
