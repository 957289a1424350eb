// The words in which work is told, each with what they tell.

import { type Pattern, pattern } from '../pattern.ts';
import { familyAtBench } from '../words/bench-people.ts';
import { wordList } from '../words/word-list.ts';
import { didWord, doneWord, stageWord, stepBefore } from './done-words.ts';
import { goneWrong, lossVerb, moreGoneWrong, stillToDo } from './losses.ts';

export type Told =
  | 'count' // so many, perhaps of a kind
  | 'kind' // a kind and no number: "bouts: 12 done"
  | 'none' // "none of the crowns started"
  | 'share' // "half the crowns"
  | 'target' // "of 20 bouts, …"
  | 'reach' // "that brings us to": the whole so far
  | 'done' // finished, said before or behind its count
  | 'did' // finished, said before its count only
  | 'stage' // begun, not finished
  | 'lost'
  | 'good' // "15 still good"
  | 'down' // finished, where what is to go stands beside it
  | 'left' // behind its count
  | 'toMake' // still to be made, said before its count
  | 'again' // made again
  | 'instead' // "to replace the broken ones"
  | 'join' // "and", a comma
  | 'stop' // a dash, a line: what follows may be another matter
  | 'whole'; // "so far", "in total"

const before =
  '(all|about|around|roughly|another|a further|just|only|the|first|last|next|final|remaining|exactly|a total of|our|my|these|those|us|other){0,3}';
const between =
  "(x|nos|no|pcs|of|the|our|my|those|these|them|em|more|further|other|new|fresh|replacement|little|small|big|yesterday's|today's|yesterdays|<material>){0,3}";
// What they are called is heard only before their name: "30 made" is no name, "the 3 broken combs" is.
const likeThat =
  '(finished|done|made|completed|broken|damaged|dodgy|wonky|squashed|snapped|ruined|crushed|<material>|little|small|new|fresh){0,2}';
const ofKind = `(${likeThat} <p:piece> (<piece>)?|(broken|damaged|dodgy|wonky|squashed|snapped|ruined|crushed)? ones)?`;

export const counted = pattern(`${before} <n:count> ${between} ${ofKind}`);
export const share = pattern(
  `${before} (<s:slashed>|<n:count> (<p:piece>)? (out of|of|from|outta|/) (the|our|a total of|all|those|these|my|them)? <m:count>) ${between} ${ofKind}`,
);
export const kindFirst = pattern('(the|our)? <p:piece> (:|-|,|=|x){0,1} <n:count> (nos|pcs)?');
export const single = pattern('(a|an|another) (<material>|dried|little|big|small|single|finished)? <p:piece>');
export const couple = pattern('(a)? couple (of)? (the|them|our)? (<p:piece>)?');
export const both = pattern('both (of)? (the|our|my)? (<p:piece>)');
export const named = pattern('(on|of|for|with)? (the|our|my|those|all the|all)? <p:piece> (:|-)?');
export const ofAll = /^(the|our|my|those|all|with)$/;
/** "12 made out of the 20 bouts" */
export const outOf = pattern(`(out of|of|from|outta|off) (the|our|a total of|all|those|these|my|them)? <m:count> (<p:piece>)?`);
/** "20 bouts wanted: 12 made", "of the 20 bouts, 12 made" */
export const target = pattern(
  '((of|out of|from|target|target of|target is) (the|our|all|:|=|-)? <m:count> (<p:piece>)? (wanted|ordered|needed|required|<all>)?|<m:count> (<p:piece>) (wanted|ordered|needed|required|<all>|on the order|in the order|for the order)) (,|:|-)?',
);

const some = '(no|none|zero|nil|nada|zilch|nothing|not (a single|one|any|a|even one|even a)) (one|single)? (of)? (the|our|them|those|my)?';
const have = "(haven't|havent|have not|hasn't|hasnt|has not|didn't|didnt|did not|not|never|ain't|aint)";
const ends = '(yet|so far|today|at all|as yet|up){0,2}';
export const nobody =
  "(nobody|nobody's|nobodys|noone|noones|noone's|no one|no one's|no ones|no - one|no - one's|no - ones|not a soul|none of us|none of the team)";
export const noneForms: readonly Pattern[] = [
  pattern('none of (the|our|my|those) (<material>)? <p:piece> (yet|so far|as yet|today)'),
  pattern(
    `(none|zero|nil|not (a single one|one|any)|nothing) of (the|our|those|these|my) <count> (<material>)? (<p:piece>)? (are|is|have been|has been|been|got|getting|yet){0,2} (started|begun|touched|${doneWord}) ${ends}`,
  ),
  pattern(
    `${nobody} (has|have|is|had|even|yet|actually){0,2} (started|begun|touched|start|begin|got to|got round to|gotten to|begun on|made a start|got started|(made|done|finished|completed|built) (any|a single|one|even one|even a single)) (making|wiring|on|with|of){0,2} (the|any|our|those|single)? (<material>)? <p:piece> ${ends}`,
  ),
  pattern(
    `${some} (<material>)? (<p:piece>)? (are|is|have been|has been|been|got|getting|yet){0,2} (started|begun|touched|${doneWord}) ${ends}`,
  ),
  pattern(
    `${have} (yet|even|actually)? (made|started|done|finished|begun|make|start|finish|got|do|begin|completed|built|managed) (making|on)? (a single|even one|one|any|anything) (one)? (of)? (the|our|them)? (<material>)? (<p:piece>)? (done|made|started|finished)? ${ends}`,
  ),
  pattern(
    `${have} (yet|even|actually)? (started|begun|touched|start|begin|made|done|make|got to|got round to|got onto|begun on|begun with|started with) (making|on|with)? (the|any|our|those)? (<material>)? <p:piece> ${ends}`,
  ),
  pattern(
    `(the|our)? <p:piece> (are|is|were|have|has)? (still|all)? (not|haven't|havent|hasn't|hasnt|aren't|arent|isn't|yet to be|still to be|un) (yet|even)? (been)? (started|begun|touched|done yet|made yet) ${ends}`,
  ),
];

const be =
  "(are|is|now|all|were|was|have|has|had|been|just|already|got|get|'s|fully|actually|properly|completely|totally|really|truly|both|finally|also|and|being|that|which|there|look|looking|looks|gone|went|going|come|came|so){0,4}";
const ofThem = '(of them|of it|of those|up|off|out|again|already)?';
/** What happened, and whether the words can only stand behind their count. */
export const toldForms: readonly (readonly [Told, Pattern, true?])[] = [
  [
    'instead',
    pattern(
      '(to replace|in place of|instead of|for|to make up for) (the|those|them)? (broken|damaged|snapped|squashed|ruined|dodgy|lost){0,2} (ones|one|<p:piece>)',
    ),
  ],
  // "12 corsages banded and boxed": the last step says that they are finished.
  ['done', pattern(`${be} (${stepBefore}|${stageWord}) (and|&|n|,|\\+|then){1,2} (all|now|fully)? (${doneWord})`)],
  ['stage', pattern(`${be} (${stageWord}) ((and|&|n|\\+) (all|now)? (${stageWord})){0,2} (up)?`)],
  ['toMake', pattern("(we are|we're|i'm|im|now|ok)? down to (the|my|our) (last|final)")],
  ['done', pattern('(are|is|now){0,2} <all> (the|our)? (box|boxes|fridge|cooler|chiller|cool room|coolroom|walk-in|bag|bags)')],
  ['done', pattern('(progress|tally|made|done|finished) (so far|today|report|sofar|to date)? (:|-)')],
  ['done', pattern('(progress|tally) (so far|today|report|sofar|to date)? ,')],
  ['done', pattern(`${be} (${doneWord}) ((and|,|&) (${doneWord}))? ${ofThem}`)],
  ['did', pattern(`(${didWord})`)],
  ['toMake', pattern('(still)? (missing|short|waiting on|waiting for) (of|by)?')],
  ['toMake', pattern('(which|that|this|so that|so it) (leaves|left) (us|me)? (with)? (just|only|another)?')],
  ['toMake', pattern('(balance|remaining|outstanding|pending) (is|:|now)?')],
  ['toMake', pattern('(we|i|you)? (still|yet) (need|have|has|got|gotta)? (to)? (make|do|finish|wire|tape|box|build|assemble|made)')],
  ['left', pattern(`(are|is|still|there|now|be){0,2} (${stillToDo})`)],
  ['good', pattern('(are|is|were)? (still)? (good|usable|intact|sound|salvageable) (left|ones left|ones|remaining)?')],
  [
    'again',
    pattern(
      '(had to (redo|remake|replace|rebuild|rewire)|fixed|mended|remade|redid|rebuilt|rewired|redone|re-made|re-did|replaced|re-done|re-wired|reworked|re - (made|did|done|wired))',
    ),
  ],
  ['lost', pattern(`${be} (${moreGoneWrong})`), true],
  // "one fell n its broken"
  [
    'lost',
    pattern(
      `(fell|toppled|tipped|rolled|slipped) (off|over|down|from|onto|on|in)? (the|my)? (bench|table|shelf|trolley|counter|rack|stand|box|floor)? (and|n|&|,)? (it's|its|is|they're|theyre|now|got|are){0,2} (${goneWrong})`,
    ),
    true,
  ],
  ['lost', pattern(`(had to|have to|has to|having to)? (${lossVerb}) (away|out|off)?`)],
  ['lost', pattern(`${be} (${goneWrong})`), true],
  ['down', pattern('down')],
];

/** "that brings us to 24": the whole so far. The last ones need a word of finishing or of now beside them. */
export const reaching = pattern(
  "(so|and|which|now)? ((we're|we are|i'm|i am|im|were|currently|sitting) (now)? (at|on|up to|<reaching>)|(that's|thats|that is) (us|me) (now)? (at|on|up to)|(that|which|this) (now)? (brings|takes|gets|puts|makes) (it|us|me|the total|total) (now)? (to|up to|at|on)?|(stopped|stopping) at|(ended|ending|ended up|closed|finished|finishing) (the day|the shift|today|up|the night)? (on|at)|got (as far as|up to)|made it (as far as|to)|(ran|run|running) out of <any> (at|after)|(total|tally|grand total|running total|count) (done|made|finished|completed|so far) (is|:|now|-|of|at|=|stands at){0,2})",
);
export const reachingIf = pattern(
  "(so|and|which|now)? ((that's|thats|that is|that makes|this makes|making|makes|makes it|that'll be)|(up to|<reaching>|at|on)|(<all>|total|tally|grand total|running total|overall|overall total) (is|:|now|-|of|at|stands at|=){0,2})",
);

export const whole = pattern('(so far|sofar|to date|up to now|up till now|till now|until now|altogether|thus far|as of now|all together)');
export const wholeWord = new Set(wordList('all up, in total, in all, all told, altogether, overall, total, all together, sofar'));
export const joins = pattern('(and|+|&|plus|also|then|,|n)');
export const stops = /^(-|;|\(|\)|but|:|so|with|while)$/;
const well =
  '(ok|okay|well|fine|nicely|good|great|slow|slowly|alright|all right|grand|steady|steadily|smoothly|to plan|lovely|brilliantly|badly|terribly)';
const howItGoes = `(are|is)? (not)? (nearly there|almost there|slow going|a nightmare|a pain|a faff|fiddly|very slow|slow|(going|coming along|coming on|moving along|ticking along|progressing|coming together) (really|pretty|very|quite|too|so|a bit)? ${well}|coming along|ticking along|moving along|getting there|(are|is) (really|pretty|very|quite|too|so|a bit)? (slow|slow going|fiddly|tricky|hard work|a pain|painful|a nightmare|a faff|a breeze|killing me|doing my head in))`;
export const quiet = pattern(
  `((that's|thats|which is|that is|its|it's)? (<count>|a few|one|a couple|way|a lot|loads|far) (more|fewer|less|better|up|down) (than|on) (yesterday|last (time|week|night)|the day before|planned|i thought|expected|this morning|friday|usual)|(and|but|with)? (not|none|nothing|no) (a single|one|even one|a)? (one|of them|of those|piece)? (broken|broke|lost|damaged|squashed|crushed|snapped|ruined|wasted|breakages|casualties|losses)|without (losing|breaking|dropping|ruining) (a single|a|one|any|even one) (one|of them)?|no (<filler>){1,2} (on|in|added|attached|put on|stuck on|tied on)? (them|it|top|any of them)? yet|${howItGoes}|this (morning|arvo|afternoon|evening|avo|lunchtime)|last night|as of (this morning|today|<time>|yesterday|last night|noon|midday|lunch|lunchtime|tea|teatime)|(since|before|after|by|at) (this morning|now|today|<time>|yesterday|last night|last time|lunch|lunchtime|breakfast|noon|midday|tea|tea time|teatime|smoko|break|breaktime|the break|my break|morning tea|coffee|knock off)|since then|since|in the (last|past) (hour|half hour)|(on|by) (my|our) own|between (us|the two of us)|(just)? in case|at (last|least)|as well|(to|in|with) the (heat|cold|frost|draught|wind)|on the (floor|way|road|drive|bench)|in (transit|the van|the heat|the cold|the boot|the fridge|the chiller|the cooler|the coolroom|the (cold|cool) room|the shop|the car)|(by|in) (accident|one go)|on me|thank (god|goodness)|(just)? (to say|letting you know)|for you)`,
);
const day =
  '(on)? (yesterday|today|tonight|yest|tday|2day|last night|this (morning|arvo|afternoon|evening|avo)|<weekday>|in the (morning|afternoon|evening)|(before|after|since) (lunch|tea|breakfast|smoko|noon))';
/** "made 6 yesterday 4 today": each count with its day, and nothing between them. */
export const byDay = pattern(
  `<count> (more)? (<piece>)? (done|made|finished|boxed)? ${day} (,|and|then|&|plus|n)? (another)? <count> (more)? (<piece>)? (done|made|finished|boxed)? ${day}`,
);
export const dayTold = pattern(day);
/** Where they were lost: elsewhere "in the fridge" is finished. */
export const lostWhere = pattern(
  '(in|at|from|off|on|over) (the|my|our) (esky|chilly bin|chillybin|cool box|coolbox|cold box|cooler box|cooler bag|ice box|van|car|boot|ute|bakkie|truck|fridge|cooler|chiller|box|boxes|tray|cool room|coolroom|bench|table|shelf|trolley|counter|rack|ladder|stand)',
);
/** "dropped one n its wrecked", "dropped 2 crowns, both wrecked": the same loss once more. */
export const lostAgain = pattern(
  `(and|n|,|&|-|so|now|which){0,2} (<w:word>|it is|they are|both of them|all of them) (is|are|was|were|now|all|both|totally|completely|fully|properly|got|have|had|of them|well and truly){0,2} (${goneWrong}|${moreGoneWrong})`,
);
export const ofTheLost = /^(it|its|it's|it is|that|thats|that's|they|they're|theyre|they are|both|both of them|all|all of them)$/;
export const fillers =
  /^(i|we|we've|i've|ive|weve|have|has|had|just|today|tonight|now|already|yesterday|overnight|finally|ok|okay|well|there|there's|theres|are|is|were|was|only|still|got|too|sadly|unfortunately|sorry|then|update|progress|status|report|fyi|that's|thats|the|girls|lads|team|between|us|been|yay|phew|woo|grand|right|done|oh|damn|ugh|argh|eek|oops|whoops|bugger|sofar|earlier|here|lovely|guys|someone|somebody|we're|we are|i'm|\.|,|!)$/;

/** "Jo did 15, Ana ten": not what these count. */
export const noName =
  /^(\w+(ed|ing|ly)|said|put|only|just|still|but|need|needs|about|maybe|plus|another|then|now|meant|wrote|told|sent|went|got|lost|took|around|roughly|nearly|almost|over|under|balance|total|rest|left|spare|spares|table|tray|crate|batch|round|bay|van|page|phase|room|shelf|gun|fan|drill|number|no|tally|stock|est|est\.|eta)$/;
/** "Sam did 6", "Priya has made 4": whoever it was. */
export const somebody = pattern(
  `(me and|i and|and)? (<w:unlisted>|(the|my|our)? (<bench>|${familyAtBench})) (and (i|me|<unlisted>))? (has|have|just|had|also|and i){0,2}`,
);
