// Changes and losses of counted pieces told in one clause of its own, every word of it understood: "15 bouts not needed", "the heat got to 4 of the corsages".

import { type Pattern, pattern } from '../pattern.ts';

export type ToldAs = 'more' | 'fewer' | 'now' | 'now if why' | 'now or price' | 'broke' | 'remade' | 'made';

const many = '(<n:count>|one)';
const kind = '(<material>)? <p:piece>';
const of = '(of)? (the|those|these|our|my|them)?';
const some = `${many} ${of} ${kind}`;
const tally = '(count|number|numbers|qty|quantity|tally|total|order)';
const moving = '(bump|push|take|lift|bring|drop|trim|raise|knock|nudge|cut|reduce|increase|get|lower|shift|move|put|set|up|whack|stick)';
const moved =
  '(revised|amended|changed|gone|dropped|come|increased|reduced|cut|settled|updated|corrected|bumped|raised|lowered|trimmed|went|adjusted)';
const culprit =
  '(heat|frost|cold|sun|damp|humidity|wind|rain|fridge|cooler|cat|cats|dog|dogs|kids|toddler|mice|mouse|mould|mold|draught|weather|moths|storm|aircon|ac|moisture|freezer|van|puppy)';
const took =
  '(got to|gets to|got at|got into|got|ruined|killed|wrecked|ate|froze|cooked|chewed|took out|took|claimed|destroyed|melted|fried|snapped|finished off|trashed|squashed|munched|did for|done for)';
const stuff = '(<ingredient>|tape|ribbon|wire|pins|glue|magnets|stems)';

// "corsages are going to be 6 instead of 4"
const soon =
  "((is|are|is now|are now|should be|will be|'ll be|(are|is)? (going to|gonna) be|need to be|needs to be|have to be) (now|only|just)?)?";
// "bouts were 10-12, make it 11"
const was = '((was|were) (going|meant|supposed)? (to be)?|used to be)';
const rightNow = '(make it|make that|they want|we want|they need|we need|she wants|he wants)';

const bad = '(broken|wilted|snapped|squashed|crushed|damaged|lost|ruined|bad|dud|dodgy|wonky|dropped|cracked|bent|limp|rejected)';
// "order is minus 3 corsages", "its -2 bouts now"
const orderIs =
  "((the)? (order|count|<all>)|it's|its|it is|so it's|so its|that's|thats|make it|make that|make the order|call it|now|so|order's) (is|now|at|'s|so|then|to|order){0,2}";

// "200 lapels not required, 150 enough", "don't need 200 bouts, 150 is plenty"
const unneeded =
  "(are|is|were|we|really|definitely){0,2} (not needed|no longer needed|not required|no longer required|not wanted|no longer wanted|not necessary|too many|too much|isn't needed|aren't needed|arent needed|more than enough|not needed now|surplus)";
const needless = "(don't|dont|do not|doesn't|doesnt|won't|wont|no longer|no need for|not) (need|want|require|be needing)?";
const enough =
  "(is|are|will be|would be|should be|'s|its|will|would|should|ll|'ll)? (enough|plenty|sufficient|fine|ok|do|do it|suffice|needed|required|wanted|ample|the number)";
const newly = '(,|-|;|so|just|only|now|anymore|any more|and|&|but|make it|do|we need|they need|we want|need){0,3}';
const rather = `(${newly} <n:count> ${enough}|(,|-|;|so|now){0,2} (just|only|make it|do|we need|need|we only need|only need) <n:count>)`;

const told: readonly (readonly [ToldAs, readonly string[]])[] = [
  [
    'fewer',
    [
      `${some} (are|is|were|now|just|being|to be|have been|has been){0,2} (cancelled|canceled|not needed|no longer needed|not required|no longer required|not wanted|no longer wanted|too many|can go|can come off|to come off|off the order|off the list|off|surplus|aren't needed|arent needed|isn't needed|not happening) (now|anymore|any more|after all)?`,
      `(don't|dont|do not|doesn't|doesnt|won't|wont|no longer) (need|want|require) ${many} of (the|those|these|our) ${kind} (now|anymore|any more|after all)?`,
      `(don't|dont|do not|doesn't|doesnt|won't|wont|no longer) (need|want|require) (the|those)? ${many} ${kind} (anymore|any more|after all)`,
      `(scrap|strike|strike off|axe|nix|scratch|scrub) (the|those)? ${some} (off)?`,
      `(a)? (decrease|reduction|drop) of ${some}`,
      `(the)? <p:piece> ${tally}? (are|is|now)? (down|reduced|cut|dropped) by <n:count>`,
      `(bring|take|get|push|move|knock) (the|our)? <p:piece> ${tally}? (down|back) by <n:count>`,
      `(the)? <p:piece> (minus|less) <n:count>`,
      `(less|minus|make it|only|just|we need|they need|they want|she wants|now)? (<n:count>|one) (fewer|less) ${kind} (now)?`,
      `(less|minus) ${some}`,
      "(the)? <p:piece> for (the|his|her|their|our)? <role> (is|'s|are|has been|been)? (now)? (cancelled|off the (order|list)|canceled|not needed|no longer needed|not wanted|not required|not happening|scrapped) (now|after all)?",
      `${orderIs} (less|minus|-) ${some} (now|then|please|pls)?`,
      `(they|they've|theyve|they have|client|client's|bride|bride's|couple|customer|mob|planner|she|she's) (has|have|had|just)? (dropped|cancelled|canceled|taken off|cut) ${some} (off)?`,
      `(take|knock|pull|cut) ${some} off`,
      `(dropped|knocked|took|taken|pulled|cut|crossed|struck) ${some} (off|from|off of) (the|their|her|his|our|that)? (order|list|quote|job|sheet|booking|brief)`,
    ],
  ],
  [
    'more',
    [
      `<n:count> ${kind} (more|extra|on top|on top of that|additional|in addition|to add|to be added|to add on|over and above)`,
      `(on top|on top of that|additionally|in addition|additional|further|extra) (,)? ${many} (more|extra)? ${kind}`,
      `${many} (further|additional|more|extra|new) ${kind} (to add|to be added|needed|wanted|requested|required|to go on)?`,
      `(throw in|add|add in|add on|chuck in|tack on|pop in|include|squeeze in) (another|an extra)? ${many} (more|extra|additional)? ${kind}`,
      `(up|increase|raise) (the|our)? <p:piece> ${tally}? by <n:count>`,
      `(i forgot|we forgot|forgot|forgot to add|forgot to mention|forgot to say|forgot about|left out|i missed) (to add|to say|to mention|about|out)? (the|another)? ${many} ${kind}`,
      `(also|and also|we'll also|i'll also) (need|want|require|having|doing|do|needs|wants) (another)? ${many} (more|extra)? ${kind}`,
      `(a|an)? (increase|rise|jump) of ${some}`,
      `(the)? <p:piece> ${tally}? (are|is|now)? (up|increased|raised) by <n:count>`,
      `(bring|take|get|push|move|lift|bump) (the|our)? <p:piece> ${tally}? up by <n:count>`,
      `(stick|pop|whack|put|chuck|throw|tack|bung) (another|an extra) ${many} ${kind} on`,
      `(stick|pop|whack|put|chuck|throw|tack|bung) ${many} (more|extra) ${kind} on`,
      `(the)? <p:piece> (plus|+) <n:count>`,
      `${orderIs} (plus|+) ${some} (now|then|please|pls)?`,
    ],
  ],
  [
    'now',
    [
      `${moving} (the|our|those|all the)? <p:piece> ${tally}? (right|back)? (up|down|back)? (to|<upTo>) <n:count>`,
      `(change|turn|make|update|amend|correct|switch) (the|those|our|that)? <a:count> <p:piece> (to|into|<upTo>|=) (be)? <n:count>`,
      `(the|those|our|all)? <a:count> <p:piece> (is|are|'s|should|needs|need|must|becomes|become|goes|go){1,2} (now|to|to be|be|down to|up to|<upTo>){0,3} <n:count>`,
      `(the|those|all)? <a:count> <p:piece> ${unneeded} ${rather}`,
      `${needless} (the|those|all)? <a:count> <p:piece> (anymore|any more|now)? ${rather}`,
      `<n:count> (<material>)? <p:piece> ${enough} (,|-|;|so|and){0,2} (the)? <a:count> ${unneeded}`,
      `<n:count> ${enough} (,|-|;|so|and){0,2} (the)? <a:count> <p:piece> ${unneeded}`,
      `(scrap|forget|scratch|ignore|not|i said|i put|we said|said|i wrote|was|it was|they were) (the)? <a:count> <p:piece> (,|but){0,2} (it's|its|it is|now|should be|should've been|shouldve been|should have been|shld be|make it|make that|that's|they're) (now|only|actually)? <n:count>`,
      `(scrap|forget|scratch|ignore|disregard|bin|never mind) (the|that|what i said about)? <a:count> (,|but|-){0,2} (it's|its|it is|now|should be|make it|make that|that's|they're|we need|actually|we want|they want){0,2} <n:count> ${kind}`,
      `(make it|make that|do|need|its|it's|now|actually|just|want|we need|they want)? <n:count> ${kind} (now)? (,|-|and|;){0,2} (forget|scrap|scratch|ignore|disregard|bin|never mind|nevermind) (the|that|what i said about|about)? (the)? <a:count>`,
      `(the)? (final|new|revised|updated|latest|confirmed|corrected|current) (head)? ${tally} (for|of|on) (the)? <p:piece> (is|are|:|now|=|to)? (now)? <n:count>`,
      `(the)? (final|new|revised|updated|latest|confirmed|corrected|current) <p:piece> ${tally} (is|are|:|now|=)? (now)? <n:count>`,
      `(the)? <p:piece> (count|number|numbers|qty|quantity|tally) (is|are|:|=|now|-|up|down|gone|goes){0,2} (now|at|to|<upTo>|up to|down to)? <n:count>`,
      `(the|our)? <p:piece> (are|is|have|has|been|now|just){0,2} (${moved}|up|down)? (up|down|back)? from <a:count> (up|down)? (to|<upTo>) <n:count>`,
      "(the)? <piece> for (the|his|her|their|our)? <role> (is|'s|has been|been)? (now)? (off|cancelled|canceled|not needed|no longer needed|not wanted|scrapped) (,|-|so|now|that's|thats|makes|leaves|its|it's){1,4} <n:count> <p:piece> (now|total|in total)?",
      `(the|our)? <p:piece> (:|-|,)? (not|${was}) <a:count> (,|but|now|it's|its|are|is|-|${rightNow}){1,2} <n:count>`,
      `(the|our)? <p:piece> ${soon} <n:count> (,|-)? (now)? (,|-)? (not|instead of|rather than) <a:count>`,
      `<n:count> ${kind} (,|-)? (now)? (,)? (not|instead of|rather than|vs) <a:count>`,
      `(not|instead of) <a:count> (but|,|now|make|make it|it's|its){1,2} <n:count> ${kind}`,
      `(not|instead of|it was|${was}) <a:count> <p:piece> (but|,|now|make|it's|its|${rightNow}){1,2} <n:count>`,
      `(revised|amended|corrected|revised to|amended to|corrected to|correction) (:|-|to)? <n:count> ${kind}`,
    ],
  ],
  [
    'now if why',
    [
      `(we're|were|we are|that's|thats|that is|it's|its|makes it|that makes it|so)? (now)? (at|on|up to|<upTo>|down to)? (a total of|total of)? <n:count> ${kind} (now|in total|total|all up|altogether)`,
      `(we're|we are|that's|thats) (now)? (at|on|up to|<upTo>|down to) <n:count> ${kind}`,
    ],
  ],
  [
    'now or price',
    [
      `(the|our)? <p:piece> (is|are|have|has|been|now|just|all|be){0,3} ${moved} (up|down|back)? (now)? (to|at|<upTo>) <n:count>`,
      '(the|our)? <p:piece> at <n:count> now',
      '(put|set|pop) (the|our)? <p:piece> (down)? at <n:count> (now|instead)?',
    ],
  ],
  [
    'broke',
    [
      `(the)? ${culprit} (has|had|have|'s)? (just)? ${took} ((another|about)? ${some}|(a|an|another) ${kind})`,
      `${some} (have|has|just)? (didn't make it|didnt make it|did not make it|didn't survive|didnt survive|won't survive|carked it|are toast|is toast|were toast|lost to <any>|lost to the <any>|succumbed|gave up the ghost|gave up|lost their heads|bit the dust|are goners|are history|are beyond help) (in the heat|in the van|overnight|the night|in the fridge|the trip|the journey)?`,
      `${many} of (the|her|his|our|their|my)? (<role>|<owner>) (<material>)? <p:piece> (has|have|had|just|got|is|are|was|were|both|all){0,2} (broke|broken|snapped|fell apart|fallen apart|ruined|squashed|crushed|damaged|wilted|died|cracked|bent|binned|smashed)`,
      `(sat|trod|stood|stepped|leant|leaned|slept|knelt) on (another)? ${some}`,
      `(the|a)? (<ingredient>){0,2} (head|heads|petal|petals|top|tops|leaf|leaves|bloom|blooms|pin|pins|wire|wires|magnet|magnets|stem|stems|ribbon|ribbons|backing|elastic)? (has|have|just|'s)? (came|fell|dropped|popped|snapped|broke|come|fallen|broken) (off|on|in|out of|from) (of|on)? (the)? ${some}`,
    ],
  ],
  [
    'remade',
    [
      `(that's|thats|that is|we've got|got)? (the|those|all|all the|my|our|that|both|both the)? ${many} ${bad} ${kind} (are|is|all|now|have been|has been|been|just|both){0,3} (redone|remade|replaced|rebuilt|rewired|fixed|mended|sorted|made again|done again) (now|too|already)?`,
      `(that's|thats|that is)? (the|those|that|this|both|both the|both those|my|our) ${bad} ${kind} (are|is|all|now|have been|has been|been|just|both){0,3} (redone|remade|replaced|rebuilt|rewired|fixed|mended|sorted|made again|done again) (now|too|already)?`,
      `${many} replacement ${kind} (are|is|now|all)? (done|made|finished|ready)`,
      `(made|did|done) (a replacement|replacements) for ${some}`,
      `made (the|those)? ${many} ${kind} again`,
      `(fixed|mended|repaired|remade|rebuilt|redone) (the|those)? ${many} (broken|wilted|snapped|squashed|crushed|damaged|lost|ruined|bad|dud|dodgy)? ${of} ${kind}`,
    ],
  ],
  [
    'made',
    [
      `(all|all of|the)? (the)? ${some} (are|is|all|have been|now|been){0,2} (handed over|pinned and boxed|in the boxes|in their boxes|under my belt|dropped off|delivered|off the bench|signed off|wrapped and boxed|boxed and labelled|on the board|on the boards|dusted|done and dusted|ticked off|out the door)`,
      `(churned through|ploughed through|plowed through|powered through|blitzed|nailed|handed over|dropped off|delivered|put to bed) (the|another)? <n:count> ${kind}`,
      `(the)? ${stuff} (has|'s|have|just)? (run out|ran out|gone|run dry|finished) (on me)? after <n:count> ${kind}`,
      `(run|ran) out of ${stuff} after <n:count> ${kind}`,
    ],
  ],
];

export const toldForms: readonly (readonly [ToldAs, Pattern])[] = told.flatMap(([as, sources]) =>
  sources.map((source) => [as, pattern(source)] as const),
);
