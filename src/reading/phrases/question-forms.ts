// The questions the studio asks, as forms. The first form found in a question decides what is asked; more telling forms stand first.

import type { Asked } from '../fact.ts';
import { type Pattern, pattern } from '../pattern.ts';

const anything = '<any>{0,6}';
const forms: readonly (readonly [Asked, readonly string[]])[] = [
  [
    'working',
    [
      'show (me)? (the|your)? (working|workings|sums|maths|math|breakdown)',
      `how (did|do|have) (you|u|we|it) (get|got|work|reach|come) <any>{0,3} (that|out|this|to)`,
      'break (it|that|this) down',
      '(full|price)? breakdown',
      'walk me through <any>{0,3}',
      'workings',
    ],
  ],
  [
    'client',
    [
      '(for|to send) (to)? (the|my|our)? (client|customer|couple|bride)',
      '(client|customer) (version|copy|quote|message|email)',
      'quote for the (client|bride|couple)',
    ],
  ],
  [
    'why',
    [
      '(what|how) (did|do|have) (you|u) (take|read|understand|make of|get|think|understood|interpret) <any>{0,6}',
      'why (that|this|so|is that|is it|did|are|do|the|not)',
      'why',
    ],
  ],
  [
    'taxStatus',
    [
      `(is|was|are|does|do|did|has|have|are we|is there|with|it) ${anything} <tax> ${anything} (in|included|on top|inc|incl|extra|inclusive|or|ex|added|excluded|include|already|plus)`,
      `(is|does|do|did|was|are|we|have) ${anything} (inc|incl|include|included|includes|including|inclusive|ex|plus|before|after|with|charge|charging|charged|add|adding|quote|quoting|quoted) (of)? ${anything} <tax>`,
      `<tax> (inc|incl|in|included|on top|extra) (or <any>{0,3})?`,
      'what (rate)? (of)? <tax>',
      "(what's|whats|how much is|how much|what is|what) (the|our|is the)? <tax>",
      `(do|are|is|should) (we|i|it|this|that) ${anything} <tax>`,
      '<tax> (on|in) (this|that|it|top|there)',
      'inc or ex',
      'ex or inc',
    ],
  ],
  [
    'priceFor',
    [
      `(what|how much) (must|should|do|would|shall|could|can|to|will) (i|we|you)? (have to|need to)? (charge|ask|quote|price|sell) ${anything} (keep|leave|get|have|make|hold|cover|if|at|for)`,
      `what should ${anything} cost if`,
      `(what|how much) ${anything} if (the)? stems (are|cost)`,
      `what (price|to charge) ${anything} (for|to) (keep|leave|get|have|cover|break even|make)`,
      'price <any>{0,3} to (keep|leave|cover)',
    ],
  ],
  [
    'countFor',
    [
      `how many <any>{0,4} (at|@|for|with|out of|from) (<amount>|<money>) ${anything} (for|out of|from|in|on|under|with|within|budget) <any>{0,3} <amount>`,
      `how many <any>{0,4} (for|can|could|would|out of|will|does|do) <any>{0,6} <amount> ${anything} (at|@) <amount>`,
      'how many <any>{0,6} (for|with|from|on|in) (a|our|the|their)? (budget|<money>)',
      'how many <any>{0,2} (can|could|do|would) <any>{0,2} (get|afford|buy) <any>{0,6}',
    ],
  ],
  [
    'ladder',
    [
      '(try|ladder|range|show|compare|prices) (from|between|it at|at|prices)? <number> (to|and|-|up to) <number>',
      'try <number>',
      'ladder <any>{0,6}',
      'price ladder',
      'compare <number> <any>{0,4}',
    ],
  ],
  [
    'fits',
    [
      `(have|got|is there|there) <any>{0,2} (time|room|capacity|space) ${anything}`,
      `(can|will) <any>{0,4} (finish|get it done|manage) ${anything}`,
    ],
  ],
  ['labourTime', [`how many ${anything} in <duration>`]],
  ['drying', [`when ${anything} (cut|pick|harvest|forage|gather) ${anything}`]],
  ['remaining', [`any ${anything} (left|still|to do|to make|outstanding|remaining)`]],
  ['price', [`what did (it|that|they|we|this) (cost|charge) ${anything}`]],
  ['packing', [`how many boards ${anything}`]],
  ['whatIf', [`(is|would|will) <amount> <any>{0,4} (enough|ok|okay|work|cover)`]],
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
  ],
  [
    'drying',
    [
      `(how many days|when|days|time|how far ahead|how early) ${anything} (dry|drying|hang|hanging|dried|press|silica)`,
      '(drying|hanging) (time|times|done|ready|days)',
      `(is|are|will|has|have) ${anything} dry (yet|by|in time|enough|now)?`,
      `(do|should|when) (we|i) ${anything} (hang|dry|check) ${anything}`,
    ],
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
  ['picture', ['(picture|image|month view|pic)']],
  ['card', ['(bench|recipe|make) (card|cards|sheet)', 'card for the wall']],
  ['pinOn', ['(pin-on|pin on|pinning) (sheet|list)', 'who gets (what|which) <any>{0,3}']],
  ['labels', ['(board|boards|box) (labels|label)', 'labels (for|please)? <any>{0,3}']],
  ['sheets', ['(all|every|print) (the)? (sheets|sheet|cards|print outs|printouts)', 'print (everything|it all|the lot)']],
  ['packing', ['(packing|pack|loading) (list|sheet)', 'what <any>{0,3} (to)? (pack|bring|load|take)']],
  ['calendar', ['(calendar|ics|ical|diary) <any>{0,2}', 'make-ahead <any>{0,2}', '(timeline|schedule|plan)']],
  [
    'review',
    [
      "(how did|how'd) <any>{0,4} (do|go|come out|turn out|work out)",
      '(look back|review|post mortem|actual against|planned against) <any>{0,4}',
      'what did <any>{0,4} (really|actually) cost <any>{0,2}',
      'did we make (any|a)? (money|profit|anything) <any>{0,4}',
    ],
  ],
  ['season', ['(season|year|all events) (table|so far|totals|summary|review)', 'season']],
  [
    'whatFits',
    [
      'what (fits|could i use|can i use|would fit|could go|can go) <any>{0,6}',
      '(suggest|propose) <any>{0,6}',
      'what (recipe|flowers) (fits|fit|can) <any>{0,6}',
    ],
  ],
  ['wearers', ['who (is|are|gets|wears|needs|has|have) <any>{0,6}', "(who's|whos) (getting|wearing|having|on|the) <any>{0,6}", 'wearers']],
  [
    'labour',
    [
      `(what|whats|what's|how much) ${anything} (labour|labor|wages|wage) ${anything}`,
      '(labour|labor) (share|cost|money|total|charge|percent|rate)',
      `how much ${anything} (labour|labor)`,
      `(<number>)? (labour|labor) ${anything}`,
      `(what|how much) ${anything} (pay|paid|paying) (us|me|for|myself|ourselves) ${anything}`,
    ],
  ],
  [
    'margin',
    [
      `(margin|profit|markup|mark up|mark-up|make on|clear on|earn)`,
      `(what|how much|are|do|will|did) ${anything} (make|earn|clear|pocket|made|making) ${anything} (on|off|from|out of) ${anything}`,
      `(are|is|will) ${anything} (making money|worth it|losing money|break even|profitable|in profit)`,
    ],
  ],
  ['spend', [`(did|have|has) (we|i|you) (spend|spent) ${anything}`, `(we|i) (spend|spent) ${anything} (last|on the last)`]],
  [
    'stemBudget',
    [
      `stem <budget>`,
      `(stem|stems|flower|flowers|material|materials|ingredients|plant|foliage) (budget|money|spend|cost|allowance|costs) (per|each|a|for|on)?`,
      `(budget|money|room|left|spend|allowance|much|allowed|afford) ${anything} (stems|stem|flowers|flower|ingredients|materials) ${anything} (per|each|a|ea|apiece)`,
      `how much ${anything} (per|each|on a|for a|in a|a|into each|in each) (<piece>|stems|flowers|piece|one) <any>{0,3}`,
      `(what|how much|whats|what's) ${anything} (left|leaves|leave|have|got|spend) ${anything} (for|on) (stems|flowers|the stems|the flowers|each|ingredients|materials|product|stem|flower)`,
      `(what|how much|whats|what's) ${anything} (per|each|<each>) (<piece>|piece|one)? ${anything} (stems|flowers|spend|budget)`,
      `how much ${anything} spend (per|each|on each|on a|a|on one) <any>{0,3}`,
      `how much (can|do|should|could|may) (i|we) (spend|put) (on|in|into) (each|a|one|every|the|flowers|stems) <any>{0,3}`,
      `(stem|stems|flower) (money|allowance|budget)`,
      `what (can|do) (i|we) (spend|have) (on|for|per) (stems|flowers|each|a|the stems|stem) <any>{0,3}`,
      `(what's|whats|what is) (left|there) for (stems|flowers) ${anything}`,
      `(how much|what) ${anything} (for|on) (stems|flowers)`,
      `budget (per|for each|a|each|for a) <any>{0,3}`,
      `<budget> <each> <any>{0,2}`,
      '<each> <budget>',
    ],
  ],
  [
    'spend',
    [
      `(what|how much) ${anything} (spend|spending|spent) ${anything}`,
      `(wholesale|wholesaler|market) (spend|cost|total|bill|budget|for|figure|all up|overall)`,
      `how much ${anything} (wholesale|market|wholesaler|at market)`,
      `(total|whole|overall) (stem|flower|stems|flowers|material|wholesale) (spend|cost|budget|bill)`,
      `(what|how much|whats|what's) ${anything} (buying|buy|flowers|stems) cost`,
      `(whats|what's|what is|what) (the|our|my|is the)? (<all>)? (wholesale|spend|stem spend|flower bill|flower spend)`,
      'spend',
      '<budget>',
    ],
  ],
  [
    'fits',
    [
      `(can|could|do|would|will|is|have) (we|i|you|there|it|this) ${anything} (take|fit|squeeze|add|manage|cope|handle|room|slot|accept|take on|capacity|get) ${anything} (another|more|<count>|extra|in|for|by|on|done|before|all|made|finish|finished|through)`,
      `(are|r|will) (we|u|you|things) <any>{0,2} (ok|okay|alright|on track|good|fine|sorted|set|behind|ahead|still ok|on schedule|ready|safe|right) ${anything}`,
      `(is|are) ${anything} (on track|too much|doable|possible|ready|tight|realistic|enough time|feasible|achievable)`,
      `(will|can|do|would) (we|i|it|they|this|that) ${anything} (finish|make it|be ready|be done|get there|done in time|have time|get done|fit|manage|have enough time|be finished|make them)`,
      '(on track|on schedule|enough time)',
      `(have we|do we have|we got|got) ${anything} (time|capacity|room) ${anything}`,
    ],
  ],
  [
    'latestStart',
    [
      `(latest|last) <any>{0,4} (start|begin|day)`,
      `(how late|when at the latest) ${anything}`,
      `(latest|last) (we|i) can (start|begin|leave) ${anything}`,
    ],
  ],
  [
    'start',
    [
      `(when|what day|which day|what date|how soon|how early|how far ahead|what time) ${anything} (start|begin|starting|make|making|get going|kick off|get stuck in|beginning|be made|made)`,
      `(start|starting|begin) (when|date|day)`,
      `(do|should|can|could) (we|i) (need to)? (start|begin) ${anything}`,
      `(when's|whens|what's|whats) ${anything} (start|starting|start date|start day)`,
      'start (date|day)',
    ],
  ],
  [
    'due',
    [
      `(what|what's|whats|anything|how many|how much|who|which|wats|wat|what're|whatre|show) ${anything} (due|today|tomorrow|tmrw|tomoz|this week|next week|on the bench|on bench|this morning|this arvo|this afternoon|tonight|for <weekday>|on <weekday>|<weekday>|on today|for today|on the list|first|weekend|this weekend|2day|tmr|tomorow|tommorow) <any>{0,3}`,
      `(today|tomorrow|tmrw|<weekday>) (what|list|jobs|bench|plan|whats|what's) <any>{0,3}`,
      `(bench|jobs|to do|todo|list) (today|tomorrow|this week|list|for|on) <any>{0,3}`,
      `(what|whats|what's) (due|on|next|up|to make|first|on now|to be made) <any>{0,4}`,
      `(what|which|how many) <any>{0,4} (should|do|must|shall|are|am|need|needs|to) <any>{0,3} (make|making|do|doing|made|be made|work on) <any>{0,3} (today|tomorrow|now|tmrw|this week|next|first|on <weekday>|<weekday>)`,
      'anything due <any>{0,4}',
      'due (today|tomorrow|tmrw|this week|<weekday>)',
    ],
  ],
  [
    'remaining',
    [
      `(how many|how much|what|what's|whats|how far|hw many|which) ${anything} (left|remaining|remain|to go|outstanding|still|to do|to make|more|short|unfinished|not done|pending|missing|behind|are we at|off|need making|needed|balance) ${anything}`,
      `(what|what's|whats) (left|remaining|still|outstanding)`,
      `(where|how) (are|r) (we|u) (at|up to|going|doing|with) ${anything}`,
      `(are|is|have|did|r) (the|all|we|they|you|any|those) ${anything} (done|finished|made|complete|completed|boxed) ${anything}`,
      `(left|remaining) (to make|to do|to go|over)`,
      `how (many|much|far) <any>{0,3} (done|made|finished|along|through|have we|did we|did you|completed|so far|complete) ${anything}`,
      'how many (are we|we) (down|short|at|on|up to|behind)',
      '(progress|tally|score)',
      `how many (have|did|has) ${anything}`,
      "how's it (going|looking) with <any>{0,4}",
      `(many|much) (to go|left)`,
    ],
  ],
  [
    'eventDate',
    [
      `(when|when's|whens|wen|wens|what date|what day|which day|what's the date|whats the date|which date|date|what time|wots the date) (is|was|are|again|of|for|do|does|did|will|the|this|that|'s|they|we|it|on|event|wedding) ${anything}`,
      `(when's|whens|wens) ${anything}`,
      `(what|which|remind|remember|what's|whats|wats) ${anything} (date|day|time) ${anything}`,
      `(is|was) ${anything} (on the|<ordinal>|<weekday>|<month>) ${anything}`,
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
  ['total', [`what (do|does|will|should) ${anything} (owe|pay)`, `${anything} damage ${anything}`]],
  ['price', [`what (did|do) (we|i|you) (say|agree|agreed|tell them|settle on|end up) ${anything}`]],
  [
    'total',
    [
      `(what|what's|whats|how much|wats|give me|show) ${anything} (total|<all>|altogether|overall|bill|invoice|come to|comes to|whole thing|whole lot|order worth|grand total|all together|add up to)`,
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
      `(what|how much|what's|whats|wat|wats|which) ${anything} (price|charge|charging|charged|quote|quoted|cost|costs|asking|going for|worth|pricing|sell|selling|paying|pay|rate) ${anything}`,
      `how much ${anything} (<piece>|each|ea|per|are|is|for|a|did) ${anything}`,
      `(price|cost) (of|for|per|each|again|list|on) <any>{0,4}`,
      `(what's|whats|what is) (a|the|one|each) <piece>`,
      `how much`,
    ],
  ],
  [
    'events',
    [
      '(open|all|upcoming|next|other|what|list|show|which|how many|any|whats|current|live) (the|our|other)? (open|upcoming|next|live|current|more)? (events|weddings|jobs|event|parties|orders) <any>{0,4}',
      "what('s)? (else)? (is)? (coming up|booked|in the book|in the diary) <any>{0,3}",
      '(events|weddings|jobs) (open|this|next|coming)',
    ],
  ],
  [
    'summary',
    [
      '(summary|summarise|summarize|recap|overview|status|where are we|sum up|the story|round up|rundown|details|full picture|everything so far|state of play|whats the story|catch me up|what have we got|what do we have|what do you know|what do you have|show (me)? (the)? (event|order|thread|job))',
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
      `(can|could|what if|what about|how about|what happens|if|would|wat if|suppose|and if|say|will|shall) ${anything} <number> ${anything}`,
      '(what if|what about|how about|suppose|what happens) <any>{0,6}',
      `<any>{0,3} (at|for|with|on) <amount> <any>{0,4}`,
    ],
  ],
];

export interface QuestionForm {
  readonly asks: Asked;
  readonly pattern: Pattern;
}

export const questionForms: readonly QuestionForm[] = forms.flatMap(([asks, sources]) =>
  sources.map((source) => ({ asks, pattern: pattern(source) })),
);
