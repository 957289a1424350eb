// How people say that something said before was wrong or has changed.

import { pattern } from '../pattern.ts';
import { wordList } from '../words/word-list.ts';

const wrongCount =
  '((count|counting|tally|numbers|sums|maths|math) (was|is|were) (off|out|wrong)|(double|over|under|mis) (-)? counted|overcounted|undercounted|counted (<any>){1,4} twice)';
// "oops only 9 made, counted a dud", "make that 9 made": the finished ones are counted again.
const again =
  "((oops|whoops|ooops|woops|actually) (,|-|:|no|sorry|and){0,2} (its|it's|that's|thats|that is|it is|only|just)|(my bad|my mistake)) (,|-|:|its|it's|thats|that's|i|we|only|just|really|actually){0,3}";
const workAgain = `${again} (<count> (<piece>)? (done|made|finished|completed|boxed)|(did|made|done|finished) <count>)`;
const iOnlyMade = '(oops|whoops|ooops|woops) (,|-|no|sorry){0,2} (i|we|ive|weve) (only|just) (did|made|done|finished) <count>';
const onlyMade = `(wait|hang on|hold on) (,|-|:|no|sorry|and|actually){0,2} (its|it's|that's|thats|only|just) (only|just)? <count> (<piece>)? (done|made|finished|completed|boxed)`;
const makeThatMade = '(make|call) (that|it) (only)? <count> (<piece>)? (done|made|finished|completed|boxed)';
const countedIn =
  "(oops|whoops|ooops|woops|my bad|only|sorry|soz|actually) <any>{1,8} (counted|included|counting|including|id counted|i'd counted) (in)? (a|the|an|one|two|some|couple|both|yesterday's|a couple of|my|those){0,2} (<word>)? (dud|duds|broken|broken one|spare|spares|reject|rejects|unfinished|sample|test|dodgy one|dodgy|wonky one)";

const one = '<count> (x)? (<material>)? <piece> ((at|@) <amount> (<each>)?)?';
const pair = `${one} (and|&|,|n|plus){0,2} ${one}`;
const backwards =
  '((had|got|have|put|wrote|typed|gave you|sent|said) (them|it|those|these|that|the two|the numbers|the counts|both)? (backwards|back to front|the wrong way (round|around)|wrong way (round|around)|mixed up|muddled|muddled up|swapped|reversed|the other way (round|around)|flipped)|(mixed|muddled|swapped|switched|flipped|jumbled) (them|those|these|the two|the numbers|the counts) (up|round|around|over)|(the)? other way (round|around))';

/** A word that marks a correction by itself. */
export const markers = [
  '(actually|correction|oops|whoops|typo|instead|amend|edit|scratch that|scrap that|scrub that|forget that|strike that|my bad|my mistake|ooops|woops|mistyped|misread|miscounted|recounted|recount|mistake|rather|soz|apologies)',
  '(sorry|no|nope|wrong|wait|hang on|hold on|ah|argh|ugh|er|um|nah|ok|update|change|changed|oh) (,|-|:|no|wait|i|\\.)',
  '(sorry|correction|update|amendment)',
  "(hang|hold) on (its|it's|that's|thats|it is|<count>)",
  // "its 3 crowns and 5 combs, I had them backwards"; "bouts 18 and corsages 32" may be prices, and is asked.
  `${pair} (,|-|;|sorry|soz){0,2} (i|we|she|he|they)? ${backwards}`,
  `${backwards} (,|-|:|;|so|its|it's|it|is|should|be|sorry){0,4} ${pair}`,
  // "pick up the day before" changes nothing.
  'up (that|it|this|them|those|these|the|our|my|all|order) (<piece>|<material>|count|order|numbers|number|price|prices|total|each|all|of|the){0,4} (to|by|<upTo>|<number>)',
  '(make|made|put|mark|set|change|bump|update|switch|turn|log|drop|cut|reduce|increase|raise|lower|take|bring|lift|revise|push|alter|correct|fix|amend|move|shift|slide|shove|go) (that|it|this|them|those|these|order|count|price|the|to|up|down|my|her|his|date|number|total|material|basis|everything|the lot|all|our|back|with)',
  // "will get back to u" changes nothing.
  '(get|call) (that|it|this|these|order|count|price|the|to|up|down|my|date|number|total|material|basis|everything|the lot|all|our|with|back (down|up)? to <number>|back (down|up))',
  // "get them a quote for 18" makes one.
  // "call her back on 555 0142" changes nothing.
  '(get|call) (them|those|her|his) (to|at|up|down|back (to|down|up)|all|each|both|<count>|<piece>|count|order|number|numbers|price|prices|total|date|material|dried|fresh|moved|changed)',
  '(knock) (that|it|this|them|those|these|order|count|price|the|to|up to|down|back|my|her|his|number|total|everything|all|our)', // "knock up a quote" makes one
  "(should|shld|shoulda|shouldve|should've) (be|have been|read|say|been|of been|have said|have read)",
  '(set|change|update|adjust|amend|correct|alter) (the|our)? <piece>',
  '(put|bump|raise|lift|lower|push|bring|take|knock|move|jack|nudge|drop|cut) (the|our)? <piece> (price|prices)? (up|down|back)? (to|<upTo>|up to|down to) <amount>',
  wrongCount,
  workAgain,
  iOnlyMade,
  onlyMade,
  makeThatMade,
  countedIn,
  '(supposed|meant|ought) to (be|say|read|have been)',
  '(need|needs) to be <count>',
  '(was|were|is|are) (a typo|my typo|a mistake|incorrect|an error)',
  '(wrong|incorrect) (number|count|qty|quantity|figure) (of|for|on)',
  '(i|we) (meant|mean|said|typed)',
  'meant (to)? (be|say|type|put)?',
  '(nah|nope|na|naw|naah|nay) <plain>',
  '(wrong|bad) (entry|number|count|figure|amount)',
  '(counted|typed|entered|added|wrote) (it|that|them)? (up|in)? wrong',
  '(counted|entered|typed) (one|some|it|them|a few|two) twice',
  "(no|nope|nah) (its|it's|that's|thats|is|we)",
  '(<taxName>|<included>|<onTop>) (,|-)? (no|nope|nah) (ex|excl|exc|inc|incl)', // "incl VAT, no excl"
  "(is|are|'s|it's|its|that's|at|only|needs|wants|want) now",
  "(wedding's|event's|date's|party's|do's|ceremony's|handover's|price's|count's|total's|order's) (now|actually|moved|changed)",
  "(date|date's|day|day's|dates|month|month's|count|price|number|numbers|total|tax) ((i|you|we|they) (gave|have|put|wrote|typed|said|got|had|sent)|there|here|on it|is|was|are|were|all|a bit|,){0,3} (wrong|incorrect|not right|isn't right|isnt right)",
  '(wrong|incorrect) (date|day|dates|month|weekday)',
  "(date|date's|day|day's|dates) (is|was|were|are)? (off|out) by (one|a day|a week|<count>|<duration>)",
  'now (on)? (the)? (<weekday>|<month>|<ordinal>|<slashed>)',
  '(earlier|before|previously) (i|we) (said|told|wrote|put|quoted|gave)',
  '(go|goes|going|gone|went) (up|down) (to|by)',
  "now (is|are|at|it's|its|only|just|wants|want|need|want|going|be|down to|up to|to be|<count>|<money>|<material>)",
  'back (up|down|on|over|it|date|them)? (to|from|for) (<number>|<material>|<piece>|<weekday>|<month>|<tax>|<included>|<onTop>|the|our|a|how|what|original|normal|before|all|first|plan)',
  '(down|up|changed|dropped|gone|went|cut|bumped|moved|reduced|increased|revised|pushed|switched|shifted|shifting|moving|brought|raised|lowered|amended|trimmed|rescheduled|postponed|delayed|swapped|changing|switching|updated|goes|going|corrected) (up|down|out|back|forward|on|over|from|it|date|them)? (to|from|for)',
  // "they shifted the date to the 26th"
  '(moved|shifted|changed|pushed|switched|bumped|put|swapped|brought|slid) (the|their|our|her|his|that) (whole)? (date|day|wedding|event|party|ceremony|do|gala|thing|prom|function|reception) (back|forward|forwards|out|up|on|over)? (to|from)',
  '(same|as before|same again|same order|same as before|as above) (but|except|only|just|,|again|as (before|above|it|is|now|already|quoted|ever|agreed|you|the (order|quote)))', // "same as last time" is another job
  '(new|revised|updated|corrected|final|latest) (date|day|time|price|count|total|number|headcount|qty) (is|:|=|now)?',
  '(same price|same prices) (but|except|only)',
  '(change|swap|switch|amend|alter|update) ',
  '(has|have|had|got|been|date|event|wedding) (changed|moved|shifted|been moved|been changed|pushed|been pushed|rescheduled)',
  'same (day|date) (,|but|-|just|only){1,2} (a)? <time> start', // "same day but 4pm start"
  // "was 15 each, they've haggled to 14"
  '(haggled|haggle|bargained|negotiated|beaten|beat|talked|knocked|argued) (me|us|him|her|them|it|that|the price|each)? (down|back)? to (<amount>)',
  '(went|gone|go|goes|bumped|put|moved|up|going|raised|increased|jumped) <upTo>',
  '(now|after all|in the end)',
].map((source) => pattern(source));

/** Strong enough to correct even beside "done". */
export const strongMarkers = [
  pattern('(correction|typo|meant|supposed|instead|mistyped|miscounted|recounted|recount|mistake|wrongly|should be|shld be|should read)'),
  pattern("(should|shld|shoulda|should've|shouldve) (be|have been|of been|of be|read|say|been)"),
  pattern('(was|were|is) (supposed|meant) to (be|say|read)'),
  pattern(
    '(wrong (entry|number|count|figure)|(counted|typed|entered) (it|that|them)? wrong|(counted|entered|typed) (one|some|it|them|a few|two) twice)',
  ),
  ...[wrongCount, workAgain, iOnlyMade, onlyMade, makeThatMade, countedIn].map((source) => pattern(source)),
  pattern('(i|we) (meant|said|put|typed|wrote|logged|entered)'),
];

/** The only words that may stand around a bare number that corrects another. */
export const bareWords = new Set(
  wordList(`
  make, that, it, this, sorry, actually, no, nope, oops, whoops, correction, i, meant, mean, said, should, be, have, been, read, say,
  supposed, to, was, were, is, are, its, it's, thats, that's, the, not, count, number, order, change, changed, instead, of, rather,
  than, now, ok, okay, please, pls, plz, typo, update, up, down, bump, wait, hang, on, ah, my, bad, mistake, just, only, they, want,
  we, need, them, call, put, set, from, go, we're, at, er, um, soz, all, after, then, but, and, lets, let's, so, nah, na, naw, naah, nay, thanks, ta,
  cheers, bring, drop, cut, reduce, increase, raise, apologies, mistyped, miscounted, place, scrap, scrub, forget, ignore, scratch, shoulda, shld, numbers, qty, quantity, piece, pc, headcount, kindly, they've, we've, i've, she's, he's, dropped, bumped, final,
  edit, amend, you, can, x, bride, client, wants, says, she, he, has, in, end, pieces, me, pcs, nos, argh, ugh, oh, hold, for, one,
  again, last, message, reckons, up to, down to, move, set, update, lift, lower, trim, correct, alter, revise, shift, fix, typed, figure, went, gone, goes, wrong, meaning, as, wrongly, entered, logged, put, told, even, round, flat, an, accidentally, by, in, error, mistake, recounted, recount, must, double, counted, twice, double-counted, overcounted, undercounted
`),
);
