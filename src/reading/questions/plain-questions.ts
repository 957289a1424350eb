// Questions whose own words leave no doubt, tried before all others: "how many did they order", "what if i charged 16", "how long does it dry".

import { anything, type Forms } from './question-pattern.ts';

const them = '(are|is|have|has|do|did|we|i|you|u|us|of|the|them|these|those|more|<piece>|been|got|so|far|now|still|there|our|all|yet)';
const finished =
  '(left|done|made|finished|wired|taped|boxed|still|remaining|outstanding|unfinished|complete|completed|broke|broken|snapped|to go|to make|to do|to wire|to tape|to finish|need wiring|need making|need doing|through)';
const client = '(they|she|he|client|customer|bride|groom|couple|family|mum|mob|planner)';

export const plainQuestions: Forms = [
  [
    'prices',
    [
      '(show|see|give|list|view|send|whats|what is|where is)? (me|us)? (on|in)? (the|our|my|your|full|whole)? (price list|pricelist|prices list) (:)? <any>{0,3}',
      'what prices <any>{0,4}',
      'prices',
    ],
    /\b(vat|gst|hst|pst|tax)\b/,
  ],
  ['pinOn', ['<sheet>']],
  [
    'eventDate',
    ["(when's|when is|whens|when) (is)? (the|our|this|that) <any>{0,3} (order|job|one|wedding|event) (for|on|again)?"],
    /\b(start|begin|dry|drying|hang|due|latest|last|order by|ordered|cut|made|make)\b/,
  ],
  ['latestStart', ['(latest|last) <any>{0,4} (start|begin|starting)', '(start|begin) <any>{0,3} at (the)? (very|absolute)? latest']],
  [
    'stemBudget',
    [
      '(what|how much) (have|do|did|will|would) (i|we) (got|have|get)? (left|over|to spend)? (for|on) (the|my|our)? (stems|flowers|stem) (each|in each|per <piece>|then|now|again)?',
    ],
    /\b(order|buy|total|altogether|recipe)\b/,
  ],
  [
    'withHands',
    [
      "(if|with|say) (we're|were|we are|we) (only|just) <count> (<bench>|strong|people|on|at|there){0,2} <any>{0,3}",
      '(if|with|say) <any>{0,3} (only|just)? <count> (<bench>|of you|people|person|pairs of hands|pair of hands|hands|at the bench|on the bench) (instead|there|on|at|in|free|around|for it|to do it|then|that week|all week)? <any>{0,3}',
      '(if|with|say) <any>{0,3} (only|just) (me|myself|(me|you|us) (and|&) <word>|the two of us|us two|you) <any>{0,4}',
      "(if|could|can|will|would|am) (i|i'm|it's|its|we|im) <any>{0,4} (on my own|by myself|on my tod|single handed|single - handed|alone)",
    ],
    /how (long|many|much|quick)|away|sick|ill\b|missing|on leave|not in|can't|cant|poorly|\boff\b|\bout\b|charge|price|[£$€]/,
  ],
  [
    'away',
    [
      '(if|suppose|supposing|say|imagine|can|could) <any>{0,2} <count> (people|of (us|them|you|the team)|girls|lads|staff|<bench>) (call|calls|called|phone|phones|ring|rings|are|were|be|go|went|is|get|was){0,2} (in|off)? (sick|ill|poorly|away|off)',
      "(if|with|say) <any>{0,2} (one|1|two|2|both|three|all|only|<bench>|i|i'm|im|she|he|me|someone|somebody|<word>) <any>{0,4} (away|sick|ill|missing|on leave|not in|can't come|cant come|on holiday|poorly|off|out)",
    ],
    /(<?\d(?! (?:of us|of you|of them|people|staff|girls|lads)\b)|£|\$|knock|take|took|price|percent|money).{0,12}\boff\b|sold out|in or out|out or in|run out|ran out|runs out|turn.{0,8}out|\b(work|works|working|worked|figure|figuring|find|finding|sort|sorting|hand|handing|point|pointing) (it |that |this |them )?out\b/,
  ],
  [
    'drying',
    ['(when|by when|what day|what date|which day) <any>{0,5} (start|starting|begin|beginning|to)? (dry|drying|hang|hanging)'],
    /cut|forag|harvest/,
  ],
  [
    'start',
    [
      `(when|by when|what day|what date|which day|how early|how soon|how far ahead|how far in advance) <any>{0,5} (start|starting|begin|beginning) <any>{0,4}`,
      `how (far ahead|far in advance|early|soon) <any>{0,4} (make|do|wire|begin|made|prep)`,
      'how many (bench|making|working) days <any>{0,4}',
      'how many days (at|on|of) (the)? (bench|making|work) <any>{0,4}',
    ],
    /cut|forag|harvest/,
  ],
  [
    'drying',
    [
      `how (long|many days|many weeks) <any>{0,5} (dry|drying|hang|hanging|press|silica|dried out)`,
      `(drying|hanging) (time|times) <any>{0,4}`,
    ],
  ],
  [
    'remaining',
    [`how (many|far) ${them}{0,7} ${finished} <any>{0,3}`, `how many (did|have) (we|i|you|u) (make|do|finish|wire|break|lose)`],
  ],
  [
    'count',
    [
      `how many (<piece>|pieces|of them|of each)? (was it|is it|were there|did|do|have|does|has) (the|our)? ${client} <any>{0,3}`,
      `how many (<piece>|pieces)? (did we say|have we said|did i say|did you say|was it|is it|are we making|are we doing|all up|in all|again)`,
      `((did|do|are) (it|we|they|she|he|i|you|that|this|the client){1,2}|(was|were|is|are) (it|we|they|she|he|i|you|that|this|the client|there){0,2}) (say|said|doing|making|want|wanting|order|ordered|need|after|it|having|quote for)? (the)? <count:range> (<piece>|<role>)? (now|then|in the end|again)?`,
      '(was|is|were|did|do|are) (it|they|we|she|he|i|you|that|there) (say|said|want|order|ordered|have|need)? <count> or <count> (<piece>)? <any>{0,3}',
      `(what|what's|whats) (is|was)? (the|our)? <piece> (count|number|total number|qty|quantity|tally) <any>{0,2}`,
      '(did|does|do|is|was|are|were) (the|that|those|your|our)? <count> (<piece>)? (already)? (include|including|includes|included|incl|count|counting|with) <any>{1,5}',
      'how many <piece> <any>{0,3} (on|in) (the|this|our) (list|order|job|event) <any>{0,2}',
    ],
    /left|each|\bea\b|charg|price|\b(vat|gst|hst|tax|delivery)\b|[£$€]/,
  ],
  [
    'whatIf',
    [
      '(what (-)? if|what - if|suppose|and if|say|what about|how about|imagine|if) <any>{0,4} (charge|charged|charging|priced|price|price it|quote|quoted|sold|sell|asked|ask|went|go|did|do|made|make|dropped|raised|upped|put|cut|was|were) <any>{0,4} <amount>',
      'what - if <any>{0,6}',
      '(what|how) <amount>', // "what about 18.50": "about" has gone into the number
    ],
    /\bto (keep|leave|cover)\b|stems (are|cost|were)|left for (the )?(stems|flowers)/,
  ],
  [
    'price',
    [
      `((did|do|are) (it|we|they|she|he|i|you|that|this|those){1,2}|(was|were|is) (it|we|they|she|he|i|you|that|this|those){0,2}) (say|said|charge|charging|quote|quoted|doing|at|them)? (the)? (<money>|<amount> <each>) <any>{0,6}`,
    ],
    /enough|ok\b|okay|too|would|work\b|cover|\bif\b|stems|\b(vat|gst|hst|pst|tax)\b/,
  ],
  [
    'ladder',
    [
      'should (we|i) (charge|ask|price|go|quote|do|sell) <any>{0,3} <range>',
      '(charge|price at|sell at|sell for) <range> (each)?',
      '(compare|show me|show us) <range>',
      'compare <amount> (and|or|with|to|against|v|vs) <amount>',
    ],
  ],
  ['whatFits', ['what (can|could|should) (i|we|you) (use|put in|make it with) <any>{0,3} (for|with|at|under|within) <amount>']],
  [
    'recipe',
    [
      `how (many|much) (<ingredient>|stems|flowers|sprigs|leaves|bits|pins){1,2} <any>{0,3} (in|per|into) (a|an|each|every|one|the)? (<piece>|one|each)`,
    ],
  ],
  [
    'other',
    [
      // "do they want cream ribbon or white?", "which ribbon does she like"
      `(do|does|did|are|is|has|have|will|would) (they|she|he|(the|our)? ${client}) (want|wanted|like|prefer|having|have|chosen|picked|pick|going for|after|using|use) <any>{0,3} (<ingredient>|colour|color|colours|colors) <any>{0,6}`,
      `(what|which) (colour|color|kind of|sort of|type of)? (<ingredient>|colour|color) (is|are|do|does|did|will|should|shall|they|she|we) <any>{0,6}`,
      `(is|are) (the|our|their) <ingredient> <word>{1,3} or <any>{1,3}`,
      `(who|who's|whos|whose) (is|are|else is)? (can|could|in|on|working|rostered|on the bench|at the bench|making|free) ${anything}`,
    ],
  ],
  ['orderBy', ['order (them|it|stems|flowers|everything)? by when', 'by when <any>{0,4} (order|ordered|ordering)']],
  ['picture', ['(picture|image|photo|pic) of (the|my|our)? (calendar|plan|schedule|month|bench)']],
  ['material', ['<material> or <material>']],
  ['events', ["(what|whats|what's|anything) (else|is)? (coming up|booked in|booked|in the book|in the diary) <any>{0,3}"]],
];
