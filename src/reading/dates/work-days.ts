// A day that work is planned for: "wiring corsages friday", "finished bouts, corsages tomorrow", "rest of the crowns saturday". It is no event's day.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { DateRead } from './date-read.ts';

const doing =
  'doing|making|wiring|taping|gluing|glueing|boxing|packing|starting|finishing|assembling|prepping|spraying|ribboning|binding|trimming|mossing|remaking|redoing|tackling|cracking on with|crack on with|leaving';
const made =
  'finished|completed|wired|taped|glued|boxed|packed|started|prepped|assembled|sprayed|ribboned|remade|redone|done with|finished with|moving on to|moving onto|on to|onto';
const make =
  'do|make|finish|start|wire|tape|glue|box|pack|prep|assemble|get on to|get onto|knock out|crack on|tackle|spray|carry on|remake|redo';
const soon = 'tomorrow|tmrw|tmr|tomoz|today|tonight|this arvo|this afternoon';
const planned = [
  pattern(
    '(hoping to|hope to|aiming to|aim to|should|trying to|expect to|expecting to|plan to|planning to) (be|have|get) <any>{0,3} <piece>',
  ),
  pattern(`(${doing}) (on|the|our|my|all|rest of|with|of|off){0,3} (<piece>|<weekday>|${soon}|them)`),
  pattern(`(${made}) (the|all|all the|our|my|both|with)? <piece>`),
  pattern(`<piece> (are|is|all|now){0,2} (${made})`),
  pattern(
    `(we'll|i'll|i|we|she'll|he'll|they'll|will|gonna|going to|gotta|lets|let's|let us|must|should|then|and|to) (just|then|try to|have to|need to|aim to|maybe|probably)? (${make}) (a start)? (on|the|with|our|my|all|rest){0,2} (<piece>|<weekday>|${soon}|them)`,
  ),
  pattern(
    `(we'll|i'll|we|i|will|gonna|going to|gotta|need to|have to|must|should|then) (just|prob|probably|try and|try to|maybe)? (${make}) (about)? (another|the last|the other)? <count> (more|extra|others|<piece>)?`,
  ),
  // "Bea will finish off the two corsages on friday"
  pattern(
    `(will|to|gonna|then|i'll|we'll|she'll|he'll|they'll) (just|then|still)? (finish|finish off|get through|wire|tape|box|glue|complete|tackle|knock out|do|make) (off|up|on|with)? (the|those|our|my|her|his|these) (last|other|remaining|final)? <count> (of the|of those|more|other|last)? (<material>)? <piece>`,
  ),
  pattern('(rest|remainder|remaining|last|other half|others|leftover) (of)? (the|our|my)? (few|<count>)? (of)? (the)? (<piece>|them)'),
  pattern(`(rest|remainder|others|other half) (<weekday>|${soon})`),
  pattern('<piece> (next|after that|then)'),
];
// "hang the statice by 1 march", "roses arriving 10 march", "bouts to be wired thursday"
const supply = [
  pattern(
    '<ingredient> (order|orders|<pack>)? (is|are|will be|be|to be|getting|being)? (arriving|arrive|arrives|landing|land|lands|coming|come|due|due in|delivered|ordered|here|in|picked|cut|hung|harvested|to order|to arrive)',
  ),
  pattern(
    '<piece> (to be|to get|being|get|getting|can be|will be|go|going) (wired|taped|made|boxed|glued|finished|done|prepped|packed|assembled|sprayed|started)',
  ),
  pattern(
    '(order|orders|ordered|ordering) (in|the stems|stems|flowers|the flowers|<ingredient>|all the <ingredient>|the <ingredient>) (in)? (by|on|before)?',
  ),
];
// At the head of a clause: what somebody is to do that day.
const orders = pattern(
  '(please|pls|ok|and|then|,|to){0,2} (hang|dry|sow|plant|transplant|harvest|prune|pinch|stake|feed|spray|paint|gild|wire|tape|glue|press|prep|condition|strip|soak|cut|start|finish|box|pack|forage|water) (up|in|on|with|the|all|all the|our|from|by|off|those|my){0,3} (<ingredient>|<piece>|stems|flowers|everything|them|bases|<weekday>|<ordinal>|<plain>)',
);
const boundary = /^(,|;|\.|:|then|while|but)$/;
const wanted =
  /^(for|need|needs|needed|needing|want|wants|wanted|order|ordered|require|required|please|pls|by|on|due|deliver|delivered|collected|booked|book|new|got|quote|due)$/;

// The clause the day stands in, as far back as it goes.
const clauseOf = ({ tokens }: Reader, read: DateRead): { start: number; end: number } => {
  let [start, end] = [read.start, read.end];
  while (start > 0 && !boundary.test(tokens[start - 1]?.text ?? '') && tokens[start - 1]?.kind !== 'line') start -= 1;
  while (end < tokens.length && !boundary.test(tokens[end]?.text ?? '') && tokens[end]?.kind !== 'line') end += 1;
  return { start, end };
};

const isFor = ({ tokens }: Reader, read: DateRead): boolean => [read.start - 1, read.start].some((index) => tokens[index]?.text === 'for');

/** "wiring corsages friday": work is done that day, unless it is said to be for it. */
export const plansWork = (reader: Reader, read: DateRead): boolean => {
  if (isFor(reader, read)) return false;
  const clause = clauseOf(reader, read);
  return (
    anyIn([...planned, ...supply], reader.tokens, clause.start, clause.end) ||
    orders.at(reader.tokens, clause.start, clause.end) !== undefined
  );
};

const counted = pattern('(<count> (x|\\*)? (<material>|<filler>)? (<material>)? <piece>|<piece> (x|:|-|=|\\()? <count>)');
const priced = pattern('(<money>|<plain> <each>|at <plain>|@ <plain>)');

/** "corsages friday, bouts saturday": kinds with no number, no price and nobody who wants them are what is made that day. */
export const namesOnlyWork = (reader: Reader, read: DateRead): boolean => {
  const { tokens } = reader;
  if (read.relative !== true || isFor(reader, read)) return false;
  if (anyIn([counted, priced], tokens, 0, tokens.length)) return false;
  return !tokens.some(({ text, means }) => wanted.test(text) || means['material'] !== undefined || means['role'] !== undefined);
};

// "ready a day early, so by the friday": the event is another day.
const early = pattern(
  '(ready|done|finished|made|boxed|there|delivered|collected|handed over) (a|one|two|three|<count>)? (day|days|<duration>|a day|one day) (early|earlier|ahead|beforehand|in advance|before the (day|event|wedding|gala|ceremony))',
);
/** Whether the day that is told is before the event's. */
export const readyEarly = ({ tokens }: Reader, { start }: DateRead): boolean => early.in(tokens, 0, start) !== undefined;
