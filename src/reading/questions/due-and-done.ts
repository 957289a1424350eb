// What must be ready for a day, what is left of a job, and whether it can be made in time: "what do we have to get finished for friday", "what's left to do on the gala".

import { anything, type Forms } from './question-pattern.ts';

const day =
  '(today|tomorrow|tmrw|tonight|this week|next week|the weekend|this weekend|this arvo|this afternoon|this morning|end of the week|eod|<weekday>|the <ordinal>)';
const must =
  '(have to|need to|needs to|has to|got to|gotta|must|should|supposed to|meant to|do we have to|have we got to|have i got to|do i have to|do we need to|do i need to|are we meant to|are we supposed to|am i meant to)';
const ready = '(finished|done|made|ready|out|out the door|boxed|completed|through|wired|sorted|off the bench)';

export const latestStarts: Forms = [
  // "when would i need to start at the very latest to have them finished in time"
  [
    'latestStart',
    [
      '(when|by when|what day|what date|which day|how late) <any>{0,7} (start|<from>|begin|starting|started) <any>{0,3} latest',
      "(what's|whats|what is|when's|when is) the (very|absolute)? latest <any>{0,4} (start|begin|starting|get going)",
    ],
    /\b(order|ordering|dry|drying|hang)\b/,
  ],
];

export const dueAndDone: Forms = [
  [
    'due',
    [
      `(what|what all|what else|whatever|anything|how many|which ones|what's|whats) <any>{0,1} ${must} <any>{0,1} (be|have|get|finish|make|do|have done|be done|get done|get finished|get through|get made) <any>{0,3} (for|by|before|on)? ${day} <any>{0,2}`,
      `(what|what all|anything|which ones|what's|whats) <any>{0,3} (got to|have to|need to|needs to|has to|must|gotta) (be|get) ${ready} (for|by|before|on)? ${day} <any>{0,2}`,
      `(what|what all|what else|what's|whats|anything|which ones|anyone know what's|any orders) <any>{0,2} (gotta|got to|have to|has to|have|need to|needs to|must|to|due to|meant to|supposed to|should) (be|go|get|going|head|leave)? (out|out the door|out of the door|gone|off|going out) (the door)? (for|by|before|on)? (this|next)? ${day} <any>{0,2}`,
      `(what|what's|whats|anything) <any>{0,4} (going out|leaving|heading out|out the door) (for|by|before|on)? (this|next)? ${day}`,
      `(which|what) (ones|orders|pieces|jobs|weddings|events)? (is|are|'s)? (to be|due to be|meant to be|supposed to be) ${ready} (for|by|before|on)? ${day} <any>{0,2}`,
      `(what|which) (all|other)? orders (are there|have we got|have we|do we have|are on|are due|is there) (for|on|by) <any>{1,3}`,
      `what (do|have) (we|i) (have|need|want|got|have to have|need to have|have to get) ${ready} (for|by|before|on)? ${day} <any>{0,2}`,
    ],
    /\b(order|buy|charge|spend|start|dry|hang|market|wholesaler)\b/,
  ],
  [
    'remaining',
    [
      `(what|what's|whats|how much|how many|anything) (is|are|do we have|have we got|have we)? (still)? (left|remaining|outstanding) (to (do|make|finish|wire|tape|box|go|complete))? (on|for|of|with|in) (the|that|this|our|<any>'s)? <any>{0,3} (order|job|wedding|event|gala|one|party|crowns|<piece>)`,
      "(how's|hows|how is|how are) (the|our|that|her|their)? <any>{0,5} (order|job|wedding|event|gala|party|do|prep|list|one) (going|looking|coming along|coming on|getting on|tracking|travelling) <any>{0,3}",
      "(if|say|suppose) (we|i) (did|do|made|make|finished|finish|get|got) (another)? <count> (more|others|of them)? (done|made)? (,)? (how many|what|how much|whats|what's) <any>{0,3} (left|remain|remaining|to go|to make)",
      `(what|how many|how much) does that leave (us|me|to (do|make|go|finish))? <any>{0,2}`,
      `(do|are|have) (we|i) still (need to|have to|got to|to|needing to)? (make|wire|tape|do|finish|box|need|owe) <count> <any>{0,8}`,
      `(is|are|was|were) (that|those|these|it|they) (all|all of them|everything|the lot|the last of them|the last) (now)? (done|finished|made|boxed|wired)? (then|now)?`,
      `(who's|whos|what's|whats|which|which ones are|how many are) (still|not) (to be)? (unboxed|untaped|unwired|unmade|to box|to tape|to wire) <any>{0,3}`,
    ],
    /\b(budget|spend|stems?|flowers? (budget|money)|labou?r|order by|ordered|bought|each|charge|cost|vat|gst|tax|total|profit)\b|[£$€]/,
  ],
  [
    'fits',
    [
      '(can|could|will|would|do) (we|i) (still|even|ever)? (make|hit|manage|meet) (it)? (by|for|to|on)? (<weekday>|tomorrow|the <ordinal>|the date|the day|the deadline|it) (now|in time|or not|then|still|ok|at all)?',
      '(can|could|will|would) (we|i) still (do|make|manage) (it|this|that|them|the lot|everything) <any>{0,3}',
      '(does|would|will) (adding|taking|taking on|doing|fitting in|fitting) <any>{0,2} <count> <any>{0,4} (push|tip|put|break|blow|kill|fit|work|sink) <any>{0,5}',
      `(is there|any|got any|have we any|do we have any|have we got any) (slack|wiggle room|gap|gaps|give|leeway|room|headroom) <any>{0,2} ${day} <any>{0,2}`,
      `(what|what's|whats|how) <any>{0,3} (biggest|most|max|maximum|largest) (number|amount|order|job)? (that)? (i|we) (could|can) (do|make|manage|fit|take|handle) <any>{0,4}`,
      `(can|could|will|would) (we|i|2 of us|<count> of us|<count> <bench>|the <count> of us|both of us|me (and|&|n) <word>) (still)? (get|have) (it|this|them|that|everything|these|it all|the lot|this lot) (all)? ${ready} (by|for|before|in time) <any>{0,4}`,
      `(can|could|will|would) (the|all|all the|those|these|they){1,2} <piece> be (done|made|finished|ready|boxed|wired) on <any>{0,4}`,
      `(are|r) (we|i) (stuffed|screwed|snookered|sunk|cooked|toast|in trouble|in strife|cutting it fine|pushing it|ok|alright) if ${anything}`,
    ],
  ],
  [
    'price',
    [
      'what (does|do|did|would|will) (it|they|that|this|these|those) (all)? (work|come|end) out (at|to|as|for)? (<each>|a piece|per <piece>|per head|apiece|for one) <any>{0,3}',
    ],
    /tax|vat|gst|stems?/,
  ],
  ['summary', ['what (are|am) (we|i) (making|doing) for (the)? <unlisted>{1,2}']],
  [
    'price',
    [
      '(did|have|has) (she|he|they|we|you|client|the client|bride|the bride|the couple) (agree|agreed|accept|accepted|sign off|ok|okay) (on|to|with|at)? (the)? (<amount>|<range>) <any>{0,3}',
    ],
    /\b(done|made|pieces|by)\b/,
  ],
  [
    'latestStart',
    [
      `if (we|i) (leave|left|hold|hold off|put) (it|them|this|off|making|starting)? <any>{0,2} (til|till|until|to) <any>{1,4} (are|is|will|would|can|do) (we|i|it|that) ${anything}`,
    ],
    /\bif .*\d+ (bout|crown|corsage|piece)/,
  ],
  [
    'labourTime',
    [
      // "60 buttonholes, would it take us all day"
      "(would|will|could|does|wouldn't|wont|won't) (it|that|they|those|these|this) (all)? (take|need) (us|me|you|<count> of us|the <count> <bench>|one person)? (all|the|a|a whole|the whole|more|less|over|under|about|most of|longer|long|half)",
      `how many (girls|lads|guys|ladies|people|hands|staff|bodies|ppl|folk|<bench>) (do|will|would|should) (i|we) (need|want|get|have|roster|book|put) (in|on|to|at|for <weekday>|for this|for that|to get)? (on|to|for)? (<weekday>|this|get|do|finish|make|the bench|the day|tomorrow|it) ${anything}`,
    ],
  ],
];
