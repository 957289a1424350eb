// Work that is only hoped for or still to be done: "hoping to have 4 combs done tonight", "need to finish 20 bouts", "8 crowns to be boxed". It orders nothing.

import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const some = '(about|all|the|another)? (the)? <count> (of the|more)? (<material>)? <piece>';
const done = '(done|finished|completed|complete|made|boxed|packed|ready|wired|taped|assembled)';
const worked = '(finished|completed|boxed|packed|wired|taped|done|assembled|started)';
const forms = [
  `(hoping to|hope to|should|will|i'll|we'll|it'll|aiming to|aim to|trying to|try to|plan to|planning to|expect to|expecting to|going to|gonna|need to|have to|want to|must|gotta) (be|have|get|see)? ${some} ${done}`,
  `(need to|needs to|have to|has to|must|gotta|got to|want to|still to|yet to|trying to|try to|time to|about to|ready to|starting to) (finish|complete|box|pack|wire|tape|assemble|start|get through|finish off) (off|up)? ${some}`,
  // "then Bea will finish off the two corsages", "hours to get through eighteen of the boutonnieres"
  `(will|'ll|i'll|we'll|she'll|he'll|they'll|is going to|are going to|is gonna|gonna|to) (then|just|still)? (finish off|finish up|finish|get through|tackle|box up|tape up|wire up|knock out) (off|up)? (the|those|our|her|his|my|last|other){0,2} <count> (of the|of those|of them|more|other|last)? (<material>)? <piece>`,
  // "180 guests and not one buttonhole between them"
  'not (one|a|even one) (single)? <piece> (between|among|amongst|in|on|at|there|anywhere)',
  'not (one|1|even one|a single) of (the|those|our|my|these) (<material>)? <piece>',
  // What was finished orders none, whoever could not read it.
  '(finished|completed|boxed|knocked out|polished off|wrapped up|wired|taped) (off|up)? (all|about|the|another|with){0,2} <count> (of the|of those|of them|more|other|last)? (<material>)? <piece>',
  `${some} (still)? (to be|need|needs|need to be|needs to be|must be|have to be|yet to be|should be|will be|to get) ${worked}`,
  '(the|our|my)? (last|remaining|final|leftover) <count> (<material>)? <piece>',
].map((source) => pattern(source));

/** The words here that tell of work ahead; none beside a price, which is an order's. */
export const workAhead = (tokens: readonly Token[], index: number): Match | undefined => {
  for (const form of forms) {
    const match = form.at(tokens, index, tokens.length);
    if (match !== undefined) return match;
  }
  return undefined;
};
// "corsages done, bouts x12 tomorrow": beside what is made, what is made next.
const next = pattern(
  "(then|next)? (the|our|other)? (<piece> (x|:|-)? <count>|<count> (<material>)? <piece>) (is|are|will be|'s)? (on|for)? (tomorrow|tmrw|tmr|tomoz|later|next|tonight|after lunch|this arvo|this afternoon|first thing|in the morning)",
);
export const nextWork = (tokens: readonly Token[], index: number): Match | undefined => next.at(tokens, index, tokens.length);

/** Whether money is spoken of. */
export const speaksOfPrice = (tokens: readonly Token[]): boolean =>
  tokens.some((token, at) => token.number?.form === 'money' || (/^(@|at)$/.test(token.text) && tokens[at + 1]?.number?.form === 'plain'));
