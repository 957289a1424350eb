// How people say who is at the bench, for how long, at what wage and how fast.

import { pattern } from '../pattern.ts';
import { roughly } from './roughly.ts';

/** "helpers 2 nos" */
export const handsBehind = pattern('<bench> (:|-|x)? <n:count> (nos|no|pax)');

export const peopleForms = [
  pattern('<n:count> (of us|people|staff)? (on|at) (the)? (bench|benches|it|this|this one|them)'),
  pattern('<n:count> (x|\\*) <duration>'),
  pattern('(crew|team|gang|group) of <n:count>'),
  // "saturday we are 3, six hours each"
  pattern(
    "(we are|we're|were|we'll be|we will be|we shall be) <n:count> (people|strong|altogether|in all)? (on|this|next|for)? (<weekday>|tomorrow)? (,|-|;|for|doing|working|with|on|at){0,2} <duration>",
  ),
  handsBehind,
  pattern('<bench> (x|\\*) <n:count>'), // "casuals x3"
  pattern('<n:count> (extra|more|other|good|new|of the|part time|casual|bench)? (<bench>)'),
  // "crew 4 / 5 hrs / fri", "staff: 3, hours: 6 each", "apprentices (2) 7 hours each"
  pattern('<ahead:bench> (:|=|x|\\()? <n:count> (\\))? (,|/|-|;)? (for)? (<duration>|(hours|hrs|hr) (:|=|-)? <count> <each>)'),
  pattern('<n:count> <unlisted> <bench>'),
  pattern('<n:count> (extra|more|other) (on|in|for|<weekday>|tomorrow|this)'),
  pattern('<n:count> of (the|our|my) (<role>|<unlisted>) (are|is)? (helping|in|coming|working|on)'),
  pattern('<n:count> (on|in) <weekday> (,|-|for)? <duration> (<each>|a head|per person)'),
  pattern('<n:count> (extra|more)? (<role>) (in|on|at|helping|working|coming|free)'),
];
export const pairForms: readonly (readonly [ReturnType<typeof pattern>, number])[] = [
  [pattern('(me|myself) (and|&|\\+|n|plus) (one|another|someone|1) (other|more|helper|else)?'), 2],
  [pattern('both (of us)'), 2],
  [pattern('both <bench>'), 2],
  [pattern('(me|myself) (and|&|\\+|n) (the|our|a|my)? (new|young|other)? <word>'), 2],
  [pattern('<word> (and|&|\\+|n) (me|i|myself)'), 2],
  [pattern('(just|only) (me|myself|i|one of us)'), 1],
  [pattern('(on my own|by myself|meself|solo|on my tod|myself|just me|only me|me)'), 1],
  [pattern('(a|one|an|another|extra) (extra)? <bench>'), 1],
];
export const meAnd = pattern(
  '(me|myself|i) (and|&|plus|\\+|n) <n:count> (<bench>|others|more|helpers|of the girls|of the team|friends|girls|lads|casuals|freelancers)',
);
/** "we have 15 hours in total for it": the bench's own. */
export const weHave = pattern("(we|we've|weve|i|i've|ive) (have|got|have got)? (about|around|only)? <duration>");
/** Whose rate is a wage. */
export const paidByRate =
  "casual|casuals|casual's|casuals'|freelance|freelancer|freelancer's|freelancers|junior|junior's|juniors|senior|senior's|seniors|staff|helper|helper's|helpers|temp|temps|student|student's|students|apprentice|weekend|hourly|award|pay|wage";
export const wageForms = [
  pattern('<w:money> (per|an|a|/|p|p/h|ph|each per|-) (/)? (hour|hr|h|hrs|hourly)'),
  pattern('<w:money> (ph|p/h|phr|hourly|hr|hour)'),
  pattern(
    '(pay|paying|paid|wage|wages|rate|on|at|@|get|gets|getting|is|cost|costs|charge|charges) (is|of|rate|at|:|=|her|him|them|me|us|now|hourly|the)? (<bench>)? <w:amount> (per|an|a|/|p|ph|p/h) (/)? (hour|hr|h|hrs)?',
  ),
  pattern(
    '(pay|paying|paid) (the|my|our)? (myself|<bench>|<word>) (now|about|only)? <w:amount> (per|an|a|/|p|ph|p/h|phr) (/)? (hour|hr|h|hrs)?',
  ),
  pattern(
    '(wage|wages|hourly rate|pay|pay rate|casual rate) (has|have|is|are|just)? (went|gone|go|goes|going|moved|up|put|bumped){1,2} ((up)? to|<upTo>) <w:amount> (per|an|a|/|p|ph|p/h|phr) (/)? (hour|hr|h|hrs)?',
  ),
  pattern(
    '(bump|raise|put|change|make|set|update) (the)? (wage|wages|hourly rate|pay|pay rate|casual rate) (up)? (to)? <w:amount> (per|an|a|/|p|ph|p/h|phr) (/)? (hour|hr|h|hrs)?',
  ),
  pattern('(hourly|wage|wages|hourly rate|wage rate) (rate|wage|cost|is|of|:|now|=|at)? (is|at|now|of)? <w:money>'),
  pattern('hourly (is|at|now|=|:){1,2} <w:amount>'),
  // "casual's rate goes to $33 from monday"
  pattern(
    `(${paidByRate}) (rate|rates) (has|have|is|are|just|will|now|be|'s|:|=|of|at){0,2} (gone|going|goes|go|went|up|moved|moves|put|bumped|down){0,2} (to|<upTo>)? <w:amount>`,
  ),
  pattern('<w:money> (an|a|per) (hour|hr)'),
  pattern('<w:amount> (an|per|/|p/|p) (hour|hr|hrs)'),
  pattern('<w:amount> (ph|phr)'),
];
// "a corsage eats up 15 mins": takes, in livelier words
const eats =
  '(eat|eats|eating|use|uses|soak|soaks|swallow|swallows|gobble|gobbles|burn|burns|chew|chews) (up|through)?|(suck|sucks|take|takes) up|(cost|costs|costing) (me|us)|(run|runs|come|comes|work|works) (to|out at|out to|in at)|want|wants|will take|can take|ends up|end up';
const atMost = '(or so|tops|max|maximum|at most|at the most|at best|or less|or thereabouts|ish|give or take)';
export const paceForms: readonly ReturnType<typeof pattern>[] = [
  // "crowns 40 mins each and 3 girls on it"
  pattern(`<p:piece> (:|-|at|about|=)? <d:duration> ${atMost}? <h:each>`),
  pattern('(a|one|1|an) <p:piece> (every|per|in) (about|around)? <d:duration>'),
  pattern(
    `<d:duration> ${atMost}? (per|a|an|each|for each|for a|for an|for one|/|on a|on each|to make a|to do a|to make one|to do one|for every|to make each|per each|every) (<p:piece>|one|piece)?`,
  ),
  pattern('<d:duration> (<each>|for one)'),
  pattern(
    `<p:piece> (each)? (take|takes|taking|need|needs|is|are|:|=|-|about|at|took|${eats}) (me|us|her|him|you|one|avg|an average of|on average|${roughly})? ${roughly}? <d:duration> (each|per|a piece|apiece)?`,
  ),
  // "each crown's 25 min to make"
  pattern(`(a|an|each|one|1|every) <o:piece> ${roughly}{0,2} <d:duration>`),
  pattern(
    `(a|an|each|one|1|every|per) <p:piece> (is taking|is|takes|=|:|needs|at|-|about|in|takes about|takes me|takes us|${eats}) (me|us|a|an|a good|up|${roughly}){0,2} <d:duration>`,
  ),
];
// "15 corsages takes me 3 hrs", "half an hour for 6 bouts i take": what so many take in all.
export const paceOfSome = [
  pattern(
    '<n:count> (<material>)? <p:piece> (take|takes|taking|need|needs|took) (me|us|her|him|you)? (about|around|roughly)? <d:duration>',
  ),
  pattern(
    '<d:duration> (for|to do|to make) <n:count> (<material>)? <p:piece> (i take|it takes|takes me|it takes me|is what i take|usually)',
  ),
  pattern(
    "<n:count> (<material>)? <p:piece> in (about|around|roughly)? <d:duration> (is|is about|'s|,|would be)? (my|our|the|her|his|<unlisted>)? (usual|usually|normal|normally|average|on average|pace|my pace|going rate|standard|typical)",
  ),
  pattern('(takes|take) (me|us|her|him)? (about|around|roughly)? <d:duration> (for|to do|to make) <n:count> (<material>)? <p:piece>'),
];
const speed =
  "((,|-|and|so|,){0,2} (that's|thats|that is|this is|is|it's|its|which is|i'd say|,){0,2} (about|roughly|more or less|just|around|pretty much)? ((my|our|her|his|the|a)? (usual|normal|average|typical|going|top|best|steady|current|working)? (speed|pace|rate|average|norm|tempo|usual)|how (fast|quick|quickly) (i|we|she|he) (go|work|am|goes|works|can go|do|make them|do them|are|is|can work))|(,|-|and|so|then|we|let's|lets|can|i){0,3} (plan|go|work|use|count|reckon|figure|budget|run|allow|base it) (on|with|at|to|off|by|from)? (that|this) (as)? (my|our|the|a|for)? (speed|pace|rate|tempo|average))";
export const speedSaid = pattern(speed);
// "timed myself on practice bouts and it's 6 in 45 min", "my pace is 6 bouts in 45 mins": a speed by the words before it.
const ahead =
  '((timed|clocked|timing|clocking) (myself|us|meself|me) (on|making|doing|at|with|for)? (the|some|a few|my|our|a)? (practice|practise|test|trial|sample|spare|dummy)? (<p:piece>|ones|run|runs|go)? (and|,|:|-|at|today|yesterday){0,2}|(my|our) (usual|normal|average|typical|best|going|working)? (speed|pace|rate) (is|:|=|was|-))';
export const speedAhead = pattern(ahead);
/** "90 mins for 9 corsages, that's my speed", "9 in 90 mins, thats my pace": what so many take, told as a speed. */
export const paceAsSpeed = [
  pattern(
    `${ahead} (it's|its|it is|it was|i|i'm|im|got|did|do|make|made|can do|that's|thats|about|around|came out at|at){0,3} <n:count> (<material>)? (<p:piece>)? (done)? (in|every|per) (about|around|roughly|just)? <d:duration>`,
  ),
  pattern(
    `(about|roughly|around|say|it's|its|takes|took|takes me|took me|i do|i make|me)? <d:duration> (for|to do|to make|on|=) <n:count> (<material>)? <p:piece> ${speed}`,
  ),
  pattern(
    `(i|we|she|he)? (do|make|does|makes|can do)? <n:count> (<material>)? <p:piece> (in|every|per|takes|took|takes me|took me|=) (about|roughly|around)? <d:duration> ${speed}`,
  ),
];
export const oneInAll = pattern(
  '(a|an|one|each|every|1)? <p:piece> (:|,|-|=|about|approx|roughly|around){0,2} <d:duration> (from)? (start to finish|end to end|all in|all up|all told|each|or so|ish|roughly|tops|max)?',
);
/** "all day", "for a half day" */
export const shiftSaid = pattern('(half a day|half day|half days|full day|whole day|all day|full days|half a shift|a full shift)');
/** "Rs 400 a day each": a wage that is not by the hour. */
export const dayWage = pattern('<money> (a|per|/|p) (day|shift|session|morning|afternoon) (each|a head|apiece)?');
/** Sundays' pay: no day of an event, and no rate of its own. */
export const premium = pattern('(time and a half|double time|triple time|penalty rates|overtime rates)');
/** "3 hrs for 20 lapels": a guess, a rate or what it took; no order. */
export const timeForSome = pattern('(about|say|allow|figure)? <duration> (for|per|to do|to make) <n:count> (<material>)? <p:piece>');
export const payWord = /^(labour|labor|rate|wage|wages|pay|overtime|hourly|cost|costs|paying)$/;
/** "mum's helping saturday, 4 hours" */
export const helping = pattern(
  "(my|our|the)? <who:word> (is|are|'s|s|will be|can be)? (can help|could help|will help|is free to help|helping|working|rostered|coming in|helping out|doing|does|can do|wiring)",
);
export const thisWeek = pattern('(this|next|all|for the) (week|weekend)');
export const rateForms = [
  pattern('<n:count> (<p:piece>) (an|per|/|a|every|in an|p) (hour|hr|h)'),
  pattern(
    '(do|does|make|makes|making|doing|can do|did|manage|(knock|knocks|bang|bangs|churn|churns|crank|cranks|smash|smashes|pump|pumps|turn|turns|bash|whip|whips) (out|up|off|through)|get|gets|can make|averaging|average|avg|at|about|pace|speed|rate|done) (is|of|about|around|through)? <n:count> (<p:piece>)? (an|per|/|a|every|in an|p) (hour|hr|h)',
  ),
];
// A habit, not work done: "she does 20 lapels in 2 hours".
export const paceIn = pattern(
  '(does|do|makes|make|can do|can make|gets through|get through|knocks out|turns out) (about|around)? <n:count> (<p:piece>)? (in|every|per) (about|around)? (<d:duration>|an hour|a day)',
);
export const hourlyPiece = pattern('(an hour|1 hour|one hour) (per|a|each|for each|for a|/) (<p:piece>)?');
export const totalHours = [
  pattern('<d:duration> (of)? (labour|labor|bench time|making time|bench work)'),
  pattern(
    '<d:duration> (of)? (bench|work|making|labour|labor)? (time|work|hours)? ((split|shared|divided|shared out) (even|evenly|equally|up)?)? (between|among|amongst|by|across) (the|all)? (<count>|us|them|both|everyone)',
  ),
  pattern(
    '<d:duration> (of)? (work|making|bench|bench work|labour|labor|graft|wiring)? (<all>|all together|between us|between them|total|in all|of labour|combined|altogether|overall)',
  ),
  pattern('(total|altogether|combined|all up|<all>) (of|:|is)? <d:duration>'),
];
export const eachHours = pattern('<d:duration> (<each>|a head|per person|each of us|every one|apiece|p/p)?');
export const awayWord = /^(away|off|sick|ill|out|leave|missing|absent|unavailable|holiday|holidays)$/;
export const perDay = pattern('(per|a|/) day');
export const talk =
  /^(drive|drives|away|flight|delay|wait|queue|parking|meeting|course|van|train|bus|dentist|late|battery|charge|ferry|nap|break|kettle|oven|ago|cake|film|invoice|rent|traffic|electrician|plumber|courier|delivery|stuck|walk|football|match|soak|rehydrate|condition|conditioning|cooler|class|workshop)$/;
export const hand = /^(in|on|at|bench|working|free|available|making|helping|coming|wiring|can|here|us|rostered|making)$/;
// "16 bench hours on friday"
export const benchHours = pattern('<n:count> (bench|labour|labor|making|staff|man|person|people|crew|team) (hours|hrs|hour)');
// "no one in on sunday"
export const nobody = pattern(
  "((studio|bench|studio's|the studio is|studio is|the bench is|bench is)? (closed|shut) (on|for)?|(there's|theres|there is|we've got|we have|got)? (no one|noone|nobody|no - one|no staff|no hands|none of us) (is|are|will be|'s)? (in|on|working|available|free|here|at the bench|on the bench|making))",
);
// "helper at $18/hr for 5 hours": one, by the word alone.
export const oneHand = pattern(
  '(our|my|the|extra|new)? (helper|freelancer|casual|florist|junior|student|apprentice|assistant|temp|trainee|designer|volunteer|part timer|maker)',
);
// Words that name hands at the bench and nothing else.
export const strongHand =
  /^(pairs of hands|pair of hands|extra hands|hands|sets of hands|staff|workers?|karigars?|freelancers?|helpers?|casuals?|florists?|juniors?|apprentices?|assistants?|temps?|trainees?|designers?|volunteers?|makers?|of us)$/;
// "me and jo on saturday": nothing but people, a day and a place.
export const meAndOne = pattern(
  "(just|only|it's|its|so|it is|ok|now|prob|probably|,){0,3} (me and <word>|<word> and me|me & <word>|me \\+ <word>) (in|on|at|for|working|are|is|the|bench|making){0,4}",
);
/** "2 of us 5 hrs each last week": what has been is nobody's plan. */
export const longAgo = pattern(
  '(yesterday|yday|last (week|wk|night|weekend|month|year|time|<weekday>)|(a|<count>|few|couple of)? (days|weeks|day|week|weekends) ago|<weekday> gone|the other day)',
);
// "casuals are 31.19 an hr, got 2 sat for 5": beside a wage a bare number of hands and of hours is plain enough.
export const gotSome = pattern('(got|have|need|with|want|booked|had) <n:count>');
export const forHours = pattern('for <n:count> (each)?');
/** "hours: 6 each" */
export const hoursNoted = pattern('(hours|hrs|hr) (:|=|-)? <n:count> <each>');
// "i only have 2.5 hours tomorrow", "i can do 3 hrs sat"
export const alone = pattern(
  "(i|i've|ive|i'll|ill|i'm|im) (only|just|can|have|got|could|might|free|'ve|do|am|for|in|give you|give u|give ya|offer|manage|put in|spare){1,4} (about|in)? <d:duration>",
);
/** "10 mins to wire, 5 to tape", "£11.44 min wage": no count of pieces and no price. */
export const noCount = [
  pattern('<duration> to <word> (,|and|&|then){1,2} (another|about)? <count> to <word>'),
  pattern('<money> (an hour)? (is)? (the)? (min|minimum|national|living|award) (minimum|min|living)? (wage|rate)'),
];
/** Hours and people of these are none of the bench's. */
export const otherMatter =
  /^(invoice|course|dentist|flight|parking|parking's|hire|rent|hall|room|charger|workshop|going|birthday|drinks|pub|gig|holiday|match|quiz|beach|park|zoo|cinema|movies|pool|gym|footy|airport|festival)$/;
