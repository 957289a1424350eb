// Numbers of the work that may be read in two ways, or count what nobody can tell: they are left unread rather than taken for an order or a price.

import { firstIn, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { allButAny } from '../progress/but-not-all.ts';
import { didWord, doneWord } from '../progress/done-words.ts';
import type { Part } from '../text/message.ts';

const box = '(box|boxes|tray|trays|crate|crates|bag|bags)';
const clock = '(at|by|@) (<time>|<plain>|noon|midday|lunch)';
const kept =
  '(what i said|what i told you|what i put|what i logged|the (made|done|finished|running)? (tally|count|total done)|my (tally|count|last count))';
const doubted = [
  // "boxes 1-3 packed, 6 in each"
  pattern(
    `${box} (no|nos|number|numbers)? (<range>|<count> (-|to|and|&) <count>) (are|is|all|now|both){0,2} (${doneWord}) (,|-|with|at)? <count> (in each|each|per box|in every|in all of them)`,
  ),
  // "update from the shed: 15 bouts 6 wristlets"
  pattern(
    '(update|news|report|latest|count|tally) from (the|our)? (shed|bench|studio|workshop|workroom|girls|team|lads|back|back room|garage) (:|-|,)',
  ),
  // "those 6 corsages I logged twice", "the 8 bouts I put in were doubled up"
  pattern(
    "(those|these|the|that)? (last)? <count> (<piece>)? (i|we|i'd|i've|ive|she|he) (logged|counted|entered|added|put in|put down|gave you|told you) (were|was|got|them|it|in){0,2} (twice|double|doubled|doubled up|counted twice)",
  ),
  // "should be 26 by tea", "made one too many": hoped for, or of how many?
  pattern(
    '(should|will|might|ought to|hope to|hoping to|aiming to|expect to|want to) (be|have|hit|reach|get to|make|finish) (at|on|up to|around|about|done with)? <count> (<piece>)? (done|made|finished)? by (<time>|<plain>|<weekday>|tea|tea time|teatime|lunch|lunchtime|close|closing|tonight|tomorrow|noon|midday|dinner|smoko|the end|end)',
  ),
  pattern('(made|did|done) <count> (<piece>)? too (many|few)'),
  // "box A has 12, box B 9, all done bouts"
  pattern(
    `(in)? ${box} <any> (has|have|holds|with|is|:|-|=|got){0,2} <count> (<piece>)? (,|and|;|-|&){0,2} (in)? ${box} <any> (has|have|holds|with|is|:|-|=|got){0,2} <count>`,
  ),
  // "3 teams of 6 made a bout each"
  pattern(
    '<count> (teams|team|groups|group|tables|pairs|squads|classes|rows) of <count> (<word>)? (each|all|have|has|are|were|will|who|they|all have|are all){0,2} (made|make|makes|making|did|do|doing|done|finished|finish|wired|built|completed) (a|an|one|<count>) (<material>)? <piece>',
  ),
  // "box is full at 24"
  pattern("(box|tray|crate|board|rack) (is|are|that's|thats)? (now|all)? full (at|with|on) <count>"),
  // "ended the day on 33, started on 21"
  pattern(
    '(ended|finished|closed|ended up) (the day|the shift|today|up)? (on|at) <count> <any>{0,4} (started|began) (the day|today)? (on|at|with|from) <count>',
  ),
  // "take 2 off the tally": of what is made, or of what is wanted?
  pattern(`(take|knock|minus|drop|subtract|deduct) (off)? (<count>) (<piece>)? (off|from|of)? (from|of|off)? ${kept}`),
];
// "20 bouts in an hour and a half is my best": what can be done, and not what was.
const boasted = pattern(
  "((is|was|that's|thats|still)? (my|our|her|his|a|the|personal|new|all time|team|studio|house){1,3} (personal|all time|ever|fastest)? (best|record|pb|personal best|fastest|quickest)|(best|record|pb|fastest|quickest) (is|was|so far|ever|:|to date|i've done|ive done|we've done){1,2} <count>)",
);
// "12 done at 11am 20 done at 2pm": thirty-two, or twenty by two o'clock?
const twoHours = pattern(
  `<n:count> (<piece>)? (are|were|is)? (${doneWord}|${didWord}) ${clock} (,|and|then|now|-|&){0,2} <m:count> (<piece>)? (are|were|is)? (${doneWord}|${didWord})? ${clock}`,
);
const hopes = /^(should|will|might|ought to|hope to|hoping to|aiming to|expect to|want to|ought|hope|hoping|aiming|expect|want)$/;
const edge = /^(,|\.|;|-|so|and|but|we|i|it|all)$/;
// "make it 28, 12 dropped": twelve of the order or of the bench?
const droppedOut = pattern(
  "((make|made|call) (it|that|them)|(new|the|our)? (count|total|number|order) (is|:|now){0,2}|(it's|its|now|down to|back to|we're|that's|thats){1,2}) (now|on|at)? <count> (<piece>)? (now)? (,|-|;|and|as|cos|because|since){1,2} <count> (of them|people|more|guests|have|has|got|just){0,2} (dropped|dropped out|dropped off|dropping|dropping out)",
);
// "should be done by tea": not yet.
const doneLater = pattern(
  '(,|\\.|;|-|so|and|but) (it|they|we|all|rest|the rest)? should be (all)? (done|finished|ready|through|there|boxed|complete) by (<time>|<plain>|<weekday>|tea|lunch|close|tonight|tomorrow|noon|midday|dinner|smoko|the end)',
);
const finished = pattern(`(${doneWord}|${didWord})`);

const inTime = pattern(
  '<count> (<material>)? (<piece>)? <any>{0,3} ((in|per|an|every) (a|an|one|the|<count>)? (<word>)? (hour|hours|hr|hrs|h|day|days|morning|evening|afternoon|shift|go|session|sitting|minutes|mins)|<duration>)',
);
const boasts = ({ tokens }: Reader, { start, end }: Part): boolean =>
  boasted.in(tokens, start, end) !== undefined && inTime.in(tokens, start, end) !== undefined;

const doubtIn = (reader: Reader, { start, end, asked }: Part): Finding[] => {
  if (asked) return [];
  const { tokens } = reader;
  // "all but one of the 20 bouts in white": no word of work, and none of wearing
  const some = allButAny.in(tokens, start, end);
  if (some?.kept['p'] !== undefined && finished.in(tokens, start, end) === undefined) return [{ start, end, held: true }];
  const out = droppedOut.in(tokens, start, end);
  if (out !== undefined && finished.in(tokens, start, end) === undefined) return [{ start, end, held: true }];
  const later = doneLater.in(tokens, start, end);
  if (later !== undefined && finished.in(tokens, start, later.start) !== undefined) return [{ start: later.start, end, held: true }];
  const hours = twoHours.in(tokens, start, end);
  if (boasts(reader, { start, end, asked })) return [{ start, end, held: true }];
  const grows = hours !== undefined && Number(hours.kept['m']?.number?.amount) > Number(hours.kept['n']?.number?.amount);
  const match = firstIn(doubted, tokens, start, end);
  if (match === undefined) return grows ? [{ start, end, held: true }] : [];
  // "update from the shed: 15 bouts done" says what became of them.
  const told = tokens[match.end - 1]?.kind === 'sign' && finished.in(tokens, match.end, end) !== undefined;
  // "got 24 done. should be 26 by tea": what is hoped for is held, and not what is made before it.
  const hoped = hopes.test(tokens[match.start]?.text ?? '') && edge.test(tokens[match.start - 1]?.text ?? '');
  return told ? [] : [{ start: hoped ? match.start : start, end, held: true }];
};

export const workDoubted: Phrase = {
  name: 'work in doubt',
  examples: [],
  find: (reader) =>
    doubted.some((form) => form.might(reader.tokens)) ||
    twoHours.might(reader.tokens) ||
    [boasted, droppedOut, doneLater].some((form) => form.might(reader.tokens))
      ? reader.untouched().flatMap((part) => doubtIn(reader, part))
      : [],
};
