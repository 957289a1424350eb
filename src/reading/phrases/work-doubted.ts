// Numbers of the work that may be read in two ways, or count what nobody can tell: they are left unread rather than taken for an order or a price.

import { firstIn, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
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
    'should be (at|on|up to|around|about|done with)? <count> (<piece>)? (done|made|finished)? by (<time>|<plain>|<weekday>|tea|tea time|teatime|lunch|lunchtime|close|closing|tonight|tomorrow|noon|midday|dinner|smoko|the end|end)',
  ),
  pattern('(made|did|done) <count> (<piece>)? too (many|few)'),
  // "box is full at 24"
  pattern("(box|tray|crate|board|rack) (is|are|that's|thats)? (now|all)? full (at|with|on) <count>"),
  // "ended the day on 33, started on 21"
  pattern(
    '(ended|finished|closed|ended up) (the day|the shift|today|up)? (on|at) <count> <any>{0,4} (started|began) (the day|today)? (on|at|with|from) <count>',
  ),
  // "take 2 off the tally": of what is made, or of what is wanted?
  pattern(`(take|knock|minus|drop|subtract|deduct) (off)? (<count>) (<piece>)? (off|from|of)? (from|of|off)? ${kept}`),
];
// "12 done at 11am 20 done at 2pm": thirty-two, or twenty by two o'clock?
const twoHours = pattern(
  `<n:count> (<piece>)? (are|were|is)? (${doneWord}|${didWord}) ${clock} (,|and|then|now|-|&){0,2} <m:count> (<piece>)? (are|were|is)? (${doneWord}|${didWord})? ${clock}`,
);
const finished = pattern(`(${doneWord}|${didWord})`);

const doubtIn = (reader: Reader, { start, end, asked }: Part): Finding[] => {
  if (asked) return [];
  const { tokens } = reader;
  const hours = twoHours.in(tokens, start, end);
  const grows = hours !== undefined && Number(hours.kept['m']?.number?.amount) > Number(hours.kept['n']?.number?.amount);
  const match = firstIn(doubted, tokens, start, end);
  if (match === undefined) return grows ? [{ start, end, held: true }] : [];
  // "update from the shed: 15 bouts done" says what became of them.
  const told = tokens[match.end - 1]?.kind === 'sign' && finished.in(tokens, match.end, end) !== undefined;
  return told ? [] : [{ start, end, held: true }];
};

export const workDoubted: Phrase = {
  name: 'work in doubt',
  examples: [],
  find: (reader) =>
    doubted.some((form) => form.might(reader.tokens)) || twoHours.might(reader.tokens)
      ? reader.untouched().flatMap((part) => doubtIn(reader, part))
      : [],
};
