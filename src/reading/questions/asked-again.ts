// What is asked of an order in many a word: what was logged, who wears one, where a number comes from, what tax is in it.

import { anything, type Forms } from './question-pattern.ts';

const client = '(they|she|he|client|customer|bride|groom|couple|family|mum|mob|planner)';

export const askedAgain: Forms = [
  [
    'remaining',
    [
      `(did|has|have|was|were|is|are) <any>{0,5} (log|logged|noted|counted|tallied|recorded|entered|put in|marked off|ticked off|written down|counted in) <any>{0,5}`,
      '(did|has|have|was|were) <any>{0,3} (count|note|record|enter|get|got|put down|add|include|write down) (my|the|those|that|all|these)? <count> <any>{0,6}',
      '(did|has|have) (my|the|those) <count> <any>{0,2} (go|gone|get|got) (in|through|logged|counted|down|on)',
      '(are|is|have|has|were|was|did) (we|it|this|that|things|everything|all|they|those|the lot) (nearly|almost|all|getting|been|get|got){0,2} (there|done|finished|boxed|made|wired|taped|packed|complete|completed|ready)',
      '(what|whats) (percentage|percent|share|fraction) <any>{0,6}',
      "(how's|hows|how is|how are) (it|things|we|that|they|the <piece>|<piece>) (going|looking|coming|doing|getting) (along|on)? <any>{0,5}",
      '(where|how far) (are|r|have) (we|u|you|i) (up to|at|got to|got|along|on)? <any>{0,4}',
      '(did|have|has) (we|i|you|they|anyone) (finish|finished|do|done|make|made|get through|box|wire) (the|all|all the|our|those)? <piece> <any>{0,3}',
    ],
    /\beach\b|\bea\b|pric|charg|quot|[£$€]/,
  ],
  [
    'latestStart',
    [
      '(too late|late enough|ok|okay|soon enough) <any>{0,3} to (start|begin|make|be starting)',
      '(can|could|should|shall) (it|we|i|this|they|the start) (leave|wait|hold off|put off|delay|sit|start late) <any>{0,4} (till|until|til|to|for) <any>{0,3}',
      "(what's|whats|what is|how) (the)? (latest|late|longest) <any>{0,2} (i|we) (can|could) (leave|wait|put off|hold off) <any>{0,4}",
    ],
  ],
  [
    'orderBy',
    [
      '(too late|still time|in time|time) to (order|get|buy|place) <any>{0,4}',
      '(deadline|cut off|cutoff|last date|last day) <any>{0,3} (order|ordering|orders|buy)',
    ],
  ],
  [
    'taxStatus',
    [
      '(say|said|tell|told|agree|agreed|decide|decided|put|noted|note) <any>{0,3} (about|re|regarding|on) (the)? <tax>',
      '(how much|what|which) (of|is|bit|part|rate|the)? <any>{0,4} <tax> (rate|amount|bit|part|percentage)? (on|in|are|is|do) <any>{0,5}',
      '(rate|amount|percentage) of <tax> <any>{0,3}',
      '<tax> (rate|percentage|percent)',
      `how much of ${anything} <tax>`,
      '(take|knock|strip) (the|off)? <tax> (off|out) (of)? <any>{0,5}',
      "(what's|whats|what is|what would) <any>{0,3} (<amount>|that|it|this) (<onTop>|<included>|less|with|after|before) (the|of)? <tax>",
      '(does|do|did|will|would|has|have) <any>{0,4} (cover|have|got|include|carry|need|take) <any>{0,3} <tax> <any>{0,3}',
      '(have|has|did) (we|i|you|anyone) (add|added|put|include|included|charge|charged|allow|allowed) (for)? <any>{0,2} <tax> <any>{0,4}',
      '(with|inc|incl|including|before|after|plus) or (without|ex|excl|excluding|after|before|no|not) <any>{0,1} <tax>',
    ],
    /\bprice\b.*\b(inc|incl|plus|with|ex|excl)\b (the )?(vat|gst|hst|tax)$|per \w+ (inc|incl|plus|with|ex|excl) (vat|gst|hst|tax)$/,
  ],
  [
    'eventDate',
    [
      'how long (till|until|til|to|before|have we got|do we have|is it till|is it until) <any>{0,6}',
      'how (far|close) (off|away|to) <any>{0,5} (wedding|event|gala|party|do|big day)',
      '(when|what time|what day) <any>{0,4} (pick|picking|picked) (them|it|this|everything|the flowers|<piece>)? up <any>{0,3}',
      '(is|was) (it|that|this|the <any>{0,2}) (still|for|on|definitely|not)? (this|next|the) (<weekday>|weekend|week|<ordinal>) (or <any>{0,2})?',
    ],
    /\b(start|begin|start|make|making|dry|hang|order|took|take|due|spare|free|ok|okay|alright)\b|have we got left/,
  ],
  [
    'wearers',
    [
      '(is|are|does|do|has|have|will) (the|his|her|their|both|all)? (the)? <role> <any>{0,2} (get|getting|wear|wearing|have|having|got|need|needing|want|wanting) <any>{0,2} (one|ones|any|<piece>|something|flower|flowers|anything)',
      'how many <role> <any>{0,5}',
      "(who's|whos|who is|who) <any>{0,2} (on the wearers list|on the wearer list|down for|getting|wearing|having|gets|wears|has) <any>{0,4}",
    ],
  ],
  [
    'recipe',
    [
      "(what's|whats|what is|what goes|what do we put|what are we putting|whatd we put) (in|into|on) (it|them|these|those|this|each|each one|one|a <piece>|the <piece>|<piece>)",
    ],
    /for (us|me|you)/,
  ],
  [
    'summary',
    [
      "(what's|whats|what is|what was) (the|their|this|that|her|his) (order|booking|job) (again|now|then|for this|on this)?",
      'read (it|that|this|me|the order|everything){0,2} (back|out) <any>{0,4}',
      '(update|news) (on|for|about) (the|our|that)? <any>{0,3} (order|job|wedding|event|gala|party)',
      "(what|what's|whats|anything|whatever) (else|more)? <any>{0,3} (missing|need|want) <any>{0,2} (from me|from us|to know|to quote) <any>{0,3}",
      '(what|anything) (else)? (do|are) you (need|need from|missing|short of|after) (me|us)?',
      '(anything|what is|whats) (missing|not filled in)',
      'what have you got (down|so far|for|on|noted|written)? <any>{0,3}',
    ],
    /\bdone\b|\bmake\b|left|stem|flower|budget|order (value|deadline|total|date|by|list|price|cost|cutoff)/,
  ],
  [
    'count',
    [
      `what (did|have|has|do|does|is|are|was|were) (the|our|this)? ${client} (order|ordered|want|wanted|wanting|ask for|asked for|book|booked|after|having|down for) <any>{0,3}`,
    ],
    /\b(pay|price|charge|date|day|time|colour|color|stems?|flowers?)\b/,
  ],
  [
    'why',
    [
      'how come <any>{0,8}',
      'where (is|are|did|does|do) <any>{0,4} (<number>|that|it|this) <any>{0,2} (come|coming|came|got|get) from',
      'what makes (it|that) <number>',
    ],
  ],
  [
    'working',
    [
      'show me how <any>{0,6}',
      "(how's|hows|how is|how was|how are) (that|it|this|the <any>|the <any> <any>) (worked|calculated|figured|made up) (out)?",
    ],
  ],
  [
    'labourTime',
    [
      'how many <any>{0,6} (an|per|in an|each|a|in a|in one|in the) (hour|hr|day|morning|afternoon|shift|evening) <any>{0,4}',
      "(what's|whats|what is) (our|my|the|your) (pace|speed|rate per hour|hourly rate of making|output)",
      '(is|are|will|would) (a|one|half a|the|an)? (day|morning|afternoon|hour|shift|evening) <any>{0,3} (enough|do it|cover it|ok|okay|plenty)',
      '(could|can) (one|two|three|<count>|1|a) (person|people|pair of hands|of us) (do|make|finish|get through|knock out|manage) <any>{0,8}',
    ],
  ],
  [
    'labourTime',
    ['(will|would|do|does) <any>{0,2} <count> <piece> (take|need) <any>{0,5}'],
    /how (much|many)|stem|roses|pins|order|\beach\b|water|mist|ribbon|wire|box|fridge|cooler|veil|magnet/,
  ],
  [
    'due',
    [
      'what (should|must|do|shall|are) (we|i|you) (be)? (working on|doing|making|getting on with|cracking on with|on with|wiring) (today|now|next|tomorrow|first)?',
      '(next|first) (job|thing) (up|to do|on|due) <any>{0,3}',
    ],
    /\bhow\b|when|long|start/,
  ],
  ['material', ["(what|what's|whats) (is|are|was|were)? <any>{0,3} made (of|from|out of|with) <any>{0,2}"]],
  [
    'buying',
    [
      'what (stems|flowers|foliage)? (am|are|do|should|must|did) (i|we) (need|have|got|want|buying|getting|ordering|picking up) (to)? (buy|get|order|pick up)? (from|at|in)? <any>{0,3}',
    ],
    /\b(make|made|start|done|do|know|each|per|spend|left|on|due|for)\b/,
  ],
  [
    'fits',
    [
      '(do|will|would|should) (we|i) (need|want|get) <any>{0,3} (hands|people|help|freelancer|freelancers|helper|person|body|bodies|casual) <any>{0,4}',
      '(have|got|are) <any>{0,3} (enough|sufficient) (hands|people|help|staff|<bench>|time) <any>{0,6}',
    ],
  ],
  ['labourTime', ['how many (<bench>|people|hands|staff|bodies) <any>{0,3} (need|needed|will|would|to (do|make|finish)) <any>{0,6}']],
  ['other', ['how many (<bench>|people|hands|staff|helpers|bodies) <any>{0,6}']],
  [
    'stemOrder',
    [
      '(enough|short on|short of|low on|out of|run out of) <any>{0,2} (<ingredient>|stems|flowers|foliage) <any>{0,6}',
      '(are|is|will) (we|i) (short|low|out) <any>{0,6}',
    ],
  ],
  ['buying', ["(what|whats|what's) <any>{0,5} (market|wholesaler|wholesalers|wholesale run|flower run)"]],
  [
    'material',
    [
      '(did|do|was|were|is|are|will|should|have) <any>{0,4} (say|want|wanted|go|going|using|use|doing|do|be|for|ask for|agree on|settle on|these|it|this|all) <any>{0,2} <material> (or not|again|for this|for them|ones|flowers|in the end)?',
    ],
    /\b(how|when|which|what|order|buy|dry|stem|yet|by|time|enough)\b|\d/,
  ],
  [
    'whatIf',
    [
      'any (chance|hope|way|possibility) (of|we|you|they|to|that|for) <any>{0,6} <count> <any>{0,6}',
      '(suppose|supposing|imagine) <any>{0,8} <number> <any>{0,4}',
    ],
  ],
  [
    'margin',
    [
      '(are|is|will|do|did) (we|it|this|i) (even|actually)? (make|making|earn|earning|clear|clearing) (anything|money|any money|enough|owt) <any>{0,4}',
      "(what's|whats|what is) in it for (us|me)",
      'break even (price|point|at)?',
    ],
  ],
  [
    'price',
    [
      '(is|was|are|were) (the|our|my|that)? (price|rate|cost|quote) (still|now|per|for|definitely|really)? <any>{0,5}',
      '(did|have|has) (we|you|i|anyone|u) (price|priced|quote|quoted|cost|costed) (it|this|them|that|these|up|<piece>|the <piece>|for <piece>){0,3} (yet|up|already|for)? <any>{0,4}',
      '(lowest|cheapest|least|minimum|bare minimum) <any>{0,5} (go|charge|price|do|sell|quote|be|make) <any>{0,4}',
      'what (do|does|did|are|have|is|were|was|should|would) <any>{0,4} <piece> (come in at|down at|down as|at|cost|be|priced at|set at|in at|going at|listed at) (now|again|then|each)?',
      'remind me (of)? (the|our)? (price|cost|rate) <any>{0,4}',
    ],
    /\b(vat|gst|hst|pst|tax|margin|stems?|incl?|inclusive|excl?) or\b|\b(vat|gst|hst|pst|tax|margin|stems?)\b|\b(incl?|excl?|inclusive|included|extra)$/,
  ],
  [
    'other',
    [
      '(do|should|shall|would|does|did|can) (you|u|ya|we|i|ye|one) (just|usually|normally|always|need to|have to|ever){0,2} (wire|tape|glue|pin|mist|seal|condition|dethorn|strip|hydrate|spray|feather) (the|these|those|all|each|every|your|my|our)? (of the)? (<ingredient>|stems|flowers|foliage|greenery|heads) <any>{0,8}',
      "(what|which|what's) (gauge|size|sort of|kind of|type of)? (wire|tape|glue|pins|ribbon) (do|should|for|would|goes|to use) <any>{0,6}",
    ],
    /how (much|many)|left|order|buy|need/,
  ],
];
