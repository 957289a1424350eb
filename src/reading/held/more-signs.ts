// Pieces that are moved, sold or mended, money paid or earned, prices refused, and additions that may not come: none of it is this order.

import { pattern } from '../pattern.ts';
import { carryWord } from './carrying.ts';

const many = (sources: readonly string[]) => sources.map((source) => pattern(source));
const some = '(the|about|another|all|all the|our|those|only|just){0,2} <count> (<material>)? <piece>';

// "take the 12 corsages over at 3", "dropped the crowns off at 3": where they go and when; "take 2 off the order" and "bring them down to 12" are changes.
const carry = `(${carryWord})`;
const carried =
  '(the|about|another|all|all the|our|her|those|them|only|just|rest of the|last){0,2} (<count>)? (of the)? (<material>)? <piece>';

/** The clause is held. */
export const handled = many([
  `(delivered|took|taken|loaded|gave|kept|sold|shipped|sent|posted|found|borrowed|returned|dropped off|handed over|picked up|collected|photographed|unpacked|moved) ${some}`,
  `(put|putting|leave|left|stick|pop) ${some} (in|on|into|by|out|aside|back|under|over)`,
  `(drop|drops|dropping|run|running) ${some} (off|over|round|down) (at|to|by|in|with)`,
  `${carry} ${carried} (over|across|along|there|through)`,
  `${carry} ${carried} (round|around|off) (at|by|for|before|after|later|tonight|tomorrow|this|on|first thing|when|in <duration>|to (the|her|his|their|our|my|church|town|venue|hotel))`,
  '<count> (<material>)? <piece> (are|is|all|still|now){0,2} (going|gone|to go|heading|go|coming|need to go|have to go|went)? (over|across|round) (to (the|them|her|his|their|my|our|church|venue)|at <number>|by|there)',
  `(pick up|collect|grab|fetch|load|carry|bring) ${some} (from|at|out|back|to|in)`,
  // "12 bouts are made of roses": what goes in, and nothing made yet.
  '<count> (<material>)? <piece> (are|is|all|get|being|to be|will be){0,2} made (up)? (of|from|with|out of) <any>{0,8}',
  // "each one is for ONE piece": recipes, by the piece.
  '(<each>|each|every|these|those|all|recipe|recipes|amounts|quantities) (one|recipe|of them|card)? (is|are) (all)? for (just|only)? (one|1|a|a single) <piece>',
  // "goal is still 40 bouts by friday noon": the bench's day, and no new order.
  `(goal|goal's|target|target's|aim) (today|tonight|for today|for tonight|this week|for the week)? (is|was|stays|remains|still|:|=|-){0,3} ${some}`,
  `(photo|photos|pic|pics|picture|pictures|video|shot) of ${some}`,
  `(redo|refix|re-do|fix|repair|rewire|check|recount|photograph|mist|relabel) ${some}`,
  '(has|have|had|kept|keeps|got) <count> (<material>)? <piece> (pressed|framed|at home|in (a|her|his|the|my) (book|frame|drawer|album|vase|glass)|on (the|her|his|my|a) (wall|shelf|desk|fridge|dresser)|from (her|his|their|our|my|last))',
  '(backs|backing|ribbon|ribbons|pins|pin|magnets|tape|labels|sleeves) (on|in) (all)? (the)? <count> (of the)? (<material>)? <piece>',
  '<any> (falling|dropping|coming) off (about)? <count> (of the|of our|of my)? <piece>',
  // "workshop sat 20 feb, 8 people making crowns": those who come make them.
  '(class of|group of|teaching|teach)? <count> (<bench>|kids|hens|guests|adults|teens|mums|learners|attendees|beginners)? (are|is|all|each|will be|who are|coming|booked|in){0,2} (making|to make|learning|learning to make|crafting|wanting to make) (a|an|their|their own|own|some|fresh|dried|<material>){0,2} <piece>',
  '(workshop|workshops|masterclass|class|classes|course|demo|hen do|hens) <any>{0,10} (<count> <piece> each|each (makes|make|making|gets to make) (a|an|their own|<count>) <piece>)',
  '(redoing|remaking|rewiring|re-doing|reworking|rebuilding|retaping) (the|all|those|about)? <count> (of the)? (<material>)? <piece>',
  `(knocked|ate|eaten|pulled|swiped|nicked|stole) ${some} (off|over|down|from)?`,
  '<count> (of the)? (<material>)? <piece> (has|have|all)? lost (its|their|a|some|the|one|his|her) (pin|pins|petal|petals|magnet|magnets|ribbon|bow|backing|tape|label|leaf|leaves|sprig|bead|pearl)',
  '<count> (<material>)? <piece> (need|needs|needing) (fixing|checking|tidying|misting|labelling|a fix|a check|repair|a trim|water)',
  '(feed|feeding|pay|top up|check|pop money in) the (meter|parking meter|ticket machine) <any>{0,10}',
  '(file|job|folder) (ref|reference|code) <any>{0,14}',
  '(paid|owing|owes|owe) (is|of|was|a|them|us|him|her|about)? <number>',
  'balance (is|of)? <number> (on|owing|due|to pay|owed)',
  'deposit (is|was|of|:|-|=|paid){0,2} <number> (paid|in|down|received)? (,|and|&|;|/|.)? (the|leaves|leaving)? balance (is|of|:|-|=|due|owing){0,2} <number>',
  '(cost us|costs us|costing us|profit|earn|clear|stems come to|stems cost|flowers cost|stem cost|materials come to|wholesale|labour|labor|mark up|markup|we make|we clear|we lose|we pay) (is|of|about|at|only){0,2} <number>',
  '(rejected|refused|declined|turned down|said no to|balked at|laughed at|knocked back|choked at|not happy with|unhappy with) <any>{0,2} <number>',
  '(too (much|dear|expensive|pricey|high|steep|cheap|low|little)) (at|for)? (her|him|them|us)? (<number>)?',
]);

// "gonna do 10 more", "we'll make 5 more tonight": what is made next, and no more is wanted.
const will =
  "(gonna|going to|i'll|we'll|i will|we will|she'll|he'll|they'll|gotta|about to|trying to|hoping to|hope to|aim to|aiming to|planning to|plan to|need to|have to|then) (just|prob|probably|try and|try to|maybe)? (do|make|knock out|finish|get through|wire|smash out|churn out|bang out)";
const soon =
  '(today|tonight|tomorrow|tmrw|this (arvo|afternoon|evening|morning)|(after|before|by) (lunch|tea|breakfast|smoko|then)|next|now|first thing)';

const atIt =
  "(im|i'm|i am|we're|we are|were|she's|he's) (now|just|still|currently)? (making|doing|wiring|finishing|boxing|knocking out|churning out|working on)";
/** Only these words are held; from a kept number on where there is one. */
export const aside = many([
  `${will} (about)? (another|the last|the other) <count> (<material>)? (<piece>)?`,
  `${will} (about)? <count> (more|extra|further) (<material>)? (<piece>)?`,
  `${atIt} (the|about|another|the last){0,2} <count> (more|extra|further)? (<material>)? (<piece>)? ${soon}?`,
  `${will} (about)? <count> (<material>)? (<piece>)? ${soon}`,
  '(there|here|arrive|arrives|arriving|start|starts|starting|leaves|opens|closes|comes|coming|meet|meeting|open|opens|back|leave|leaving|home|site|venue) (at|by|for) <plain>',
  '(going|go|goes|went|gone|out|due|collected|collecting|collection|pickup|pick up|delivery|delivered|delivering|picked up) (out|off)? (at|by) <plain>',
  '<duration> (at|@) <plain>',
  '(set up|setup|setting up|bump in|load in|rehearsal) (at|from|by|is|is at)? <plain>',
  '<plain> (boxes|trays|batches|sets|lots|boards|crates|rows|bags|bundles|packs|groups) of <plain> (<material>)? (<piece>)? ((,|-)? (at|@|for|is|=)? <amount> (<each>|(a|an|per|each|the|for each|for a|/) (set|box|tray|batch|lot|board|crate|row|bag|bundle|pack|group)))?',
  '(add|cancel|drop|remove|take) <any>{0,3} <count> (<piece>)? (,)? (maybe|perhaps|possibly|if (they|she|he|the|bride|client|it|there|mum|more))',
  '<role> <range>',
  '(<count>)? crown royal (mug|mugs|bottle|bottles|glass|glasses|whisky|whiskey|shots|bag|bags|cans|tin|tins)',
  // "12 bases at £2 each": what is bought or sold by itself, and no price of a piece.
  '(<count>)? (of)? (the|our|these)? (<piece>)? (bases|blanks|backs|backings|samples) (are|is|at|@|for|-|cost|now|come to|come in at){0,2} <money> <each>',
  '<count> to go (back|out|home|to|in|up|on|with|over|round|off|downstairs|upstairs)',
  'confirmed (,|and|but)? <count> (pending|tbc|unsure|to confirm|waiting)',
  'to go (,|then|and|and then|plus){0,2} <from:count> (<material>)? <piece>',
  '<ingredient> (or|not|to|and|poss|possibly)? <plain> (per|a|each|/) <piece>',
  '(take|takes|took) <plain> (,|and)? <piece> (take|takes|took)? <plain>',
  '(maybe|possibly|perhaps|poss) (a|an|one|another) <piece>',
  '(might|may|could|possibly|perhaps|poss|maybe) (well)? (need|add|want|have|order|get|take|be|do)? (to add|about|another)? <count> (more|extra|<piece> (too|as well|also|more|extra)) (<piece>)?',
  '(might|may|could|possibly|probably) (need to|have to)? add (another|about)? <count> (<piece>)?',
]);
/** "maybe 2 more": the number is rough, and only may be added. */
export const perhapsMore = pattern('<n:count> more (<piece>)?');
export const moreIf = pattern('<count> (more|extra) (<piece>)? if');

/** "20 candles": a count of things that are no flower work. */
export const otherThings = pattern('<count> (of)? (more|extra|other|spare|<material>){0,1} ((<unlisted>)? <things>|<everyday>)');
/** "12 welcome bags", "6 thank you cards": beside pieces, things that are called after what they come in. */
export const boxedThings = pattern('<count> (of)? (more|extra|other){0,1} (<unlisted>|thank you|please|place){1,2} (<pack>|<things>)');
/** What one of them costs. */
export const costOfThings = pattern('(at|@|for|-|,)? <amount> <each>');
/** A lesson is sold by the head, and no pieces of an order are named in it. */
export const lesson = pattern('(workshop|workshops|masterclass|class|classes|course|demo)');
