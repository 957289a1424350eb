// Words that say a number is not this order's: another studio's, another time's, a wish's, a shelf's.

import { pattern } from '../pattern.ts';

const many = (sources: readonly string[]) => sources.map((source) => pattern(source));

/** Another studio, or another time: what follows goes on with it. */
export const elsewhere = many([
  '(other|another|different|previous|old|rival|local|first|last|next|their|her|his|that) (florist|florists|flower shop|studio)',
  "(other|another|different|rival|local|sister|their|her|his) (florist's|studio's|shop's|florists|studios) (doing|making|got|on|did|quoted|has|handling|supplying)",
  "(other|another|rival) (florist's|studio's|shop's|team's|place's|bench's) (only|just|already|now)? (done|made|finished|boxed|wired) (about|only)? <count>",
  "(the|that|their|her|own) (florist's|florist is|florist has|florist was) (doing|making|got|handling|supplying|on)",
  '(did|made|had|done) (about|like)? <count> (<material>)? (<piece>)? for (hers|theirs|her own|his own)',
  '(florist|florists) (in town|down|up|round|next|across|nearby|said|says|quoted|quotes|charges|charged|wants|wanted|does|who)',
  '(other|another|different|rival) (shop|place|vendor|company|seller)',
  '(place|shop|crowd|mob|studio|woman|lady|guy|girl|someone) (across|down|up|round|around|over|near|on|in|at) (the)? (other)? (road|rd|street|st|town|corner|way|market|side)',
  '(that|the|some|one|this) (shop|place|stall|crowd|mob|outfit|supermarket) (in|on|at|by|near|down|up) (the)? <word> (wants|want|charges|charge|asks|asking|does|do|sells|sell|quoted|quotes)',
  '(my|our|his|her|their) (niece|nieces|nephew|daughter|son|kid|kids|wee one|little one|mum|nan|gran|sister|brother|cousin|neighbour|neighbor|friend|mate|flatmate|housemate|aunt|auntie|mother in law) (made|did|makes|does|has made|once made|used to make) <any>{1,5} (once|years ago|for (her|his|their|my|our|the) (doll|dolls|school|birthday|friend|friends|teacher|class|own|dog|cat|teddy|teddies|mum|nan|play|concert|fair))',
  '(she|he|they|who|<word>) (did|made) (about|around|over|like|some)? <count> (<material>)? <piece> (for|at|in|on) <any>{1,3} (once|years ago|last year|one time|one year|back in the day)',
  '(elsewhere|competitor|competitors|competition|someone else|somebody else|market stall|going rate|industry average)',
  '(saw|seen|found|spotted|sells|selling) <any>{0,8} (online|on the web|on the internet|in a shop|in a magazine)',
  "(<role>|sister|sisters|brother|cousin|friend|friends|mate|neighbour|colleague|sister's|friend's|cousin's|aunt|auntie|neighbor|flatmate) (had|paid|got|did|ordered|spent|quoted|charged|bought|was quoted|was charged) (about|around|only|like)? <number>",
  "(last|previous) (year|year's|time|time's|season|season's|wedding|job|event|summer|spring|autumn|winter|client|bride|couple|one)",
  '(usually|normally|generally|typically|ordinarily|mostly|used to|tend to|tends to|years ago|ages ago|months ago|back then|back in)',
  'always (do|does|charge|charges|sell|quote|order|orders|get|gets|had)',
  '(remember|recall) (when|that|the)',
  "(they|she|he|client|couple|bride|groom|customer|planner|hotel|school|family|we|you|i|<word>'s|and) had (about|around|only|like|just)? <count> (<material>)? <piece> (in|last|back|then|that|right|at|for|from|before|and|,|<money>)",
  '(had|got|bought|ordered|took|did) (about|around|only)? <count> (<material>)? <piece> (from|off|with|by) (us|you|me|here|someone|another|somewhere|elsewhere)',
  '(we|i|you) (did|made) (about|around)? <count> (<material>)? <piece> (for (them|her|him|the|that|our|a|<role>) (<any>){0,3})? (in <month>|back in|last (year|month|week|summer|winter|spring|time)|that time|ages ago)',
  '(same|like|as) (as)? <any>{1,3} (,|-)? (they|she|he|who) had <count>',
  "still (have|got|have got) (my|mine|mum's|mums|gran's|nan's) <any>{0,3} <piece>",
]);

/** Only wished, feared or thought: the clause itself. */
export const unreal = many([
  '(imagine|imagining|hypothetically|in theory|theoretically|pretend|dreading|dreamt|dreamed)',
  '(i|we|they|she|he) (thought|assumed|figured|guessed) <any>{0,4} <number>',
  '(thought|assumed|figured|reckoned) (we|it|they|she|he|you|that) <any>{0,4} <number>',
  '(wish|wished|wishing|if only) <any>{0,3} <number>',
  'would (be|have been) (nice|great|good|lovely|amazing|ideal|better|perfect|fab|brilliant|mad|crazy|hell|handy|too)',
  '(would|will|could|gonna|might) (kill|break|finish|destroy) (me|us|him|her|them|everyone)',
  '(wonder|wondering|unsure|dunno|no idea|not sure) (if|about|whether|that)? (it|its|the|they|we)? <number>',
  "(never|no way|wouldn't|wouldnt|refuse) (to|we|i|they|do|go|sell|less|under|below|more|for|quote|take|are|can|that|<upTo>)",
  "(dont|don't|do not) (do|sell|go|quote|charge|take) <any>{0,3} (under|below|less|for)",
  '(work|worked|working|week) (done)? on (the|all|about)? <count> (of)? (the)? <piece>',
  'been worked on',
  '(<piece>|<number>) (minus|less) <count>',
]);

/** Sold, sent or lost: not said, and no order. */
export const gone = pattern('<count> (<material>)? <piece> (are|is|have|all|just)? gone');

/** What a shelf, a van or a box holds. */
export const holder = pattern(
  '(cooler|fridge|chiller|van|box|tray|rack|shelf|cupboard|coolroom|storeroom|crate|car|trolley|bucket|cool room|cold room|freezer|bench|board) (<number>)? (only|still|currently|now)? (has|have|holds|hold|takes|fits|contains|had|carries) (got|about|only|just|room for|space for)? <number>',
);

/** From here to the end of the sentence: a case that may not come. */
export const supposing = pattern(
  '((let|tell) (me|us) (know)? (when|once)|if|unless|in case|provided|assuming|suppose|supposing) <any>{0,8} <plain>',
);
// "8.50 if dried or 11 if fresh" prices them.
export const politeIf = pattern(
  "if ((it's|its|they're|theyre|they are)? <material>|possible|poss|ok|okay|any|needed|(u|you|we|i) (can|could|may)|(that's|thats|its|it's|that is|it is) (ok|okay|possible|alright|fine))",
);

/** The whole sentence tells of money asked for or paid, not of an order. */
export const billed = pattern('(invoice|inv|receipt|statement|refund|refunded) (for|of|on|sent)? (the)? <any>{0,2} <number>');
export const billDone = /^(sent|paid|overdue|raised|settled|cleared|went|refunded|refund)$/;
/** Said with no other number: "not 12 bouts, they changed their mind". */
export const onlyNot = pattern('not <count> (<material>)? <piece>');
export const butNot = pattern('(but|just|and)? not (the|those|for the)? <count> (for|that|who|from)');

/** "same as last time": said of this order after all. */
export const likeness = /^(same|as|like|than|from|since|unlike|what)$/;
export const workDone = /^(done|made|finished|ready|complete|completed|boxed|packed)$/;
