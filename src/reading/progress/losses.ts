// Broken pieces, pieces left to make, spares, and work begun but not finished.

import { type Match, type Pattern, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import { stageOf, stageWord, stageWork } from './done-words.ts';

// What is done to a piece that is lost, and what a piece is then: words that say nothing else.
const broken =
  'broke|snapped|dropped|binned|scrapped|ruined|wrecked|damaged|crushed|bust|squashed|smashed|busted|cracked|broken|squished|smushed|smooshed|mangled|spoiled|bent|froze';
const gone = 'duds|dud|shattered|died|wilted|squooshed|browned|spoilt|crumbled|rotted|dying|dead|trashed|flopped|drooped|bruised|frozen';
/** What became of pieces that are no good any more. */
export const goneWrong = `damaged in transit|${broken}|${gone}|got damage|got spoilt|got spoil|got crush|came damaged|lost its head|lost a head|lost its heads|lost all its petals|lost its petals|have had it|has had it|had it|went to the bin|straight in the bin|straight to the bin|headed for the bin|ended up in the compost|in the compost|got chucked|no longer good|past saving|beyond saving|no good|fell apart|fell asunder|fallen asunder|came asunder|went asunder|gone asunder|unusable|came apart|got squashed|got crushed|got broken|got damaged|broke off|collapsed|failed|rejects|reject|rejected|got wet|in the bin|to bin|are broken|were broken|got binned|have broken|has broken|munted|stuffed|knackered|banjaxed|went soft|went brown|turned|goosed|fell on the floor|falling apart|came undone|lost their heads|fell off|shed|went mouldy|crook|sat on|stood on|dodgy|wonky|iffy|manky|ropey|kaput|past it|frozen solid|for the bin|not usable|no use|not good|came loose|unravelled|need redoing|needs redoing|need remaking|to redo|to remake|snapping|fell to bits|in bits|shattering|failed qc|rubbish|useless|unsellable|gone bad|gone off|gone brown|gone soft|gone limp|gone mouldy|went limp|not up to scratch|went missing|gone missing|got dropped`;
/** More of it, told behind a form of "be" or "have". */
export const moreGoneWrong =
  'sad|brown|limp|mouldy|off|unglued|unstuck|undone|loose|wilting|drooping|browning|crushed up|very sad|a mess|a write off|a bit sad|too loose|to be redone|to be remade|to be binned|in the bin|ended up in the bin|for the bin|beyond saving|broken up|unwired|bald|split|splitting|blown open|melted|frozen|soaked|torn|chewed|eaten|faded|mushy|squished|a disaster|too wonky|beyond repair';
/** What was done to a piece that is lost. */
export const lossDone = `${broken}|lost|threw|threw out|threw away|chucked|tossed|thrown|thrown out|sat on|trod on|stood on|melted|butchered|discarded`;
/** The same, or told to be done. */
export const lossVerb = `${lossDone}|bin|scrap|throw|toss|chuck|discard`;
/** A word that surely tells of a loss: "turned" and "rubbish" may be said of anything. */
export const lossWords: ReadonlySet<string> = new Set([...broken.split('|'), ...gone.split('|'), 'lost', 'melted']);
/** Of pieces: not made yet. */
export const stillToDo =
  'to tackle|to crack on with|left|to go|remaining|remain|remains|pending|to do|outstanding|to make|to be made|left to do|left to make|left to finish|still to go|still to do|still to make|to be done|to finish|short|not done|need doing|need making|needing made|undone|unfinished|yet to make|yet to do|yet to go|yet to be made|not made|more to go|more to do|more to make|waiting|to wire|to tape|to glue|to assemble|to build|to wrap|to box|to pack|to knock out|to knock up|left over to do|still on the bench|still on my bench|left on the bench|left to box|left to wire|left to tape|balance|baki|to start|to begin|not started|due|still outstanding|still left|on the to do list|still due';
const losses = `(${goneWrong})`;
export const lossForms: readonly Pattern[] = [
  pattern(
    `<n:count> (of)? (the|them|those)? (<material>)? (<p:piece>|(earlier|first|last|other|old|finished|new)? ones|earlier ones|others)? (are|is|were|was|have|has|had|that)? (got)? (just)? ${losses}`,
  ),
  pattern(`(${lossDone}|had to bin|had to scrap|knelt on) (another|about)? <n:count> (of)? (the|them|more)? (<p:piece>)? (tho|though)?`),
  pattern('(a|an|another) (<p:piece>) (<filler>)? (broke|snapped|fell apart|got crushed|got squashed|died|is broken|has broken)'),
];
/** "20 done minus 2": fewer are good; with nothing made before it the number is a temperature or a change. */
export const minusForm = pattern(
  '(minus|less) (the|another|about)? <n:count> (of)? (the|them)? (<p:piece>|duds|dud|broken|rejects|wonky ones)?',
);
/** "dropped a tray, 5 buttonholes gone": gone for good only beside what happened to them. */
export const goneForm = pattern('<n:count> (of)? (the|them|those)? (<material>)? (<p:piece>)? (are|is|have|all|just)? gone');
export const mishap =
  /^(dropped|fell|fallen|cat|dog|toddler|smashed|knocked|spilt|spilled|heat|froze|frozen|frost|tripped|crashed|leak|leaked|flood|flooded|mice|mouse|stolen|nicked|stood|sat|melted|soaked|squashed|broke|disaster|crushed|trod|drop)$/;

/** After a loss: "rebuilt it" makes as many good again. */
export const madeGood = pattern(
  '((rebuilt|remade|redid|replaced|fixed|redone|rewired|remaking|sorted) (it|them|those|that|that one|already|since|both)|(made|did|done) (another|<again:count> (new|fresh|replacement|replacements)|a new|a fresh|a replacement|replacements|a spare|new ones|two more|another one|a new one|it again|them again) (one|ones|pair|set|for it|to replace it|since|already)?)',
);

export const leftForms: readonly Pattern[] = [
  pattern(
    '<p:piece> (:|-|,)? (only|just|still)? <n:count> (still to go|more to go|to go|left|to do|remaining|to make|pending|outstanding)',
  ),
  pattern(
    "<n:count> (more|of them|of the|of)? (<material>)? (<owner>|<role>)? (')? (<p:piece>)? (still|are|is|more)? (left|to go|remaining|remain|pending|to do|outstanding|to make|to be made|short|not done|need doing|need making|needing made|balance|to finish|remains|still left|undone|unfinished|yet to make|still to go|still to make|still to do|not made|more to go|more to do|more to make|yet to do|yet to be made|to be done|waiting|baki|to wire|to tape|to glue|to assemble|to build|to wrap|to box|to pack|to finish off) (now|only|to make|to do)? ((on|of|for) (the|our)? <p:piece>)?",
  ),
  pattern(
    '(still|only|just|have|got|leaves|leaving|with|and|balance|remaining|left|pending|another|outstanding) (need|needs|needing|have|got|is|:|of|to do|to make|just|only)? <n:count> (more|of them|<material>)? (<p:piece>)? (to go|left|to do|to make|remaining|more to go|to finish|more|still to go|outstanding|to wire|to tape|to glue|to assemble|to build|to wrap|to box|to pack)?',
  ),
  pattern('(need|needs) (to do|to make|another|to finish)? <n:count> more (<p:piece>)? (to finish|to go|to hit|to get)'),
  pattern(
    'still (need|needs|have|got|gotta)? (to)? (make|do|finish|wire|tape|box|build|assemble) (the|another|about)? <n:count> (more|of the)? (<material>)? (<p:piece>)?',
  ),
  pattern('(need|have|got|needs|gotta) (to)? (do|make|finish|wire|tape|build) (another)? <n:count> more (<material>)? (<p:piece>)?'),
  pattern(
    "<n:count> more (<material>)? (<p:piece>)? (then|and|till|until|til|and then) (we're|i'm|im|i am|we are|it's|all)? (done|finished|home)",
  ),
];
/** "just the one corsage left to do", "only the groom's bout to go" */
export const oneLeft = pattern(
  "(just|only|still|there's|theres|its|it's) (the|a|got)? (one|single|last)? (<word>)? (one|<p:piece>) (left|to go|remaining|outstanding) (to do|to make|to go|to finish)?",
);
/** "all the buttonholes glued" */
export const allAtStage = pattern(
  `(all|every|all of) (the|our|of the|of)? <p:piece> (are|is|all|now|have been|been|just){0,2} (${stageWord})`,
);
const remainder = /^(left|go|remaining|outstanding|pending|balance|still|finish)$/;
const todo = /^(left|go|do|make|wire|tape|glue|assemble|build|wrap|box|pack|remaining|outstanding|pending|balance|finish)$/;
// "11 each for the remaining 8", "remaining 5 at 12": what those cost.
const priceAhead = pattern('<amount> (<each>)? (for|on) (the|our|all the)? <any>');
const priceBehind = pattern('(,|-|:|=)? ((at|@) <amount>|<money>|<plain> <each>)');
const pricesThese = (tokens: readonly Token[], { start, end }: Match): boolean =>
  /^(remaining|balance)$/.test(tokens[start]?.text ?? '') &&
  ([2, 3, 4, 5].some((by) => priceAhead.at(tokens, start - by, start + 1)?.end === start + 1) ||
    priceBehind.at(tokens, end, tokens.length) !== undefined);
const guests = /^(guests?|people|attendees|invites)$/;
/** "12 guests left" are no pieces. */
export const noneLeft = ({ kept }: Match): boolean => guests.test(kept['role']?.text ?? '');
const lostOrRemade = new Set([...lossVerb.split('|'), ...goneWrong.split('|'), 'remade', 'redid', 'rebuilt', 'fixed', 'replaced']);
/** Whether a loose form truly speaks of what is left. */
export const saysLeft = (tokens: readonly Token[], match: Match, besideWork: boolean): boolean => {
  const stretch = tokens.slice(match.start, match.end);
  if (pricesThese(tokens, match)) return false;
  // "broke 2 remade both so still 20": as many as before, and nothing left to make.
  const onlyStill = stretch.every(({ text }) => text === 'still' || (!remainder.test(text) && !todo.test(text)));
  if (onlyStill && tokens.slice(Math.max(0, match.start - 12), match.start).some(({ text }) => lostOrRemade.has(text))) return false;
  if (besideWork) return stretch.some((token) => remainder.test(token.text));
  return stretch.some((token) => remainder.test(token.text)) && stretch.some((token) => todo.test(token.text));
};

export const spareForm = pattern(
  '((out of|of|from|in|among) (which|that|those|these|them|it) (only|just)? <n:count> (are|is|being|were)? (for|as)? (spare|spares|extra|extras)|<n:count> of (them|those|these|which) (are|is|being|were)? (spare|spares|extra|extras)|(incl|including|inc|with|plus|and|+|,)? (made)? <n:count> (<p:piece>)? (spare|spares|extra|extras) (<p:piece>)? (made|done|also|too|as well)?)',
);

export const stageForms: readonly Pattern[] = [
  pattern(
    `<n:count> (more|of the|of)? (of)? (<material>)? (<p:piece>)? (<piece>)? (are|is|now|all|just|been|have been|only|got)? (${stageWord})`,
  ),
  pattern(`(${stageWord}) (up)? (the|about)? <n:count> (<p:piece>)?`),
  pattern(`(${stageWord}) (for|on) (the|all|all the|about)? <n:count> (of the)? (<p:piece>)?`),
  pattern(
    `(${stageWork}) (is|all|now)? (done|complete|completed|finished|over) (for|on|of) (the|all|all the|about)? <n:count> (of the)? (<p:piece>)?`,
  ),
];
/** "taping done for 40 nos, pins pending" is work, whatever goods it names. */
export const stepDone = pattern(`(${stageWork}) (is|all|now)? (done|complete|completed|finished|over)`);
const stage = new RegExp(`^(${stageWord}|${stageWork})$`);
export const stageIn = (tokens: readonly Token[], match: Match): string =>
  stageOf(tokens.slice(match.start, match.end).findLast((token) => stage.test(token.text))?.text ?? 'begun');
