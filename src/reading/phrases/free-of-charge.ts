// "10 bouts at 14.50 and one for free for the groom": a piece that costs nothing. No price of an order says so, and whether it is one of the ten is not told
// either: it is named as unread, word for word, beside what is read.

import { type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const nothing =
  '(free|free of charge|free of|gratis|complimentary|comp|comped|foc|no charge|at no charge|at no cost|on the house|on us|for nothing|for free|thrown in|no cost|without charge)';
const one = '(a|an|one|another|1|<count>)';
const theirs = '(the|our|his|her)? (<owner>|<role>)';
const forWhom = `(for ${theirs} (one)?)?`;
// Clauses without a kind of their own: nothing else could read them.
const clauses = [
  `(and|plus|with|&|\\+)? (get|gets|getting|giving|doing|adding|throwing in)? ${one} (more|extra|of them|of those|one|is|as|to be){0,2} (for)? ${nothing} ${forWhom}`,
  `(and|plus|with|&|\\+)? (giving|adding|doing|throwing in|with)? (a|one|another) ${nothing} (one|bout|piece) ${forWhom}`,
  `(and|plus|with|&|\\+)? (throwing|throw|chucking|chuck) in ${one} (more|extra|one|free){0,2} (for ${theirs})?`,
  `(and|but|with)? ${theirs} (one|ones|is|are|gets|get|goes|go|has|his|hers|theirs|to be|will be|comes){0,3} (for)? ${nothing}`,
  `(and|but|with)? ${nothing} for ${theirs} (one|ones)?`,
].map((source) => pattern(source));
// Behind a kind that is counted or owned: the pieces are read, that they cost nothing is not.
const behindKind = pattern(`<piece> (is|are|go|goes|:|-|to be|come|comes|at|for){0,2} <f:word> (of)? (charge)? ${forWhom}`);
const costsNothing = /^(free|free of charge|gratis|complimentary|comp|comped|foc|on the house|no charge)$/;

const closes = /^([,.;)&+!-]|and|plus|but|with|please|pls|thanks|as|inc|plus)$/;
const ends = ({ tokens }: Reader, index: number): boolean => {
  const next = tokens[index];
  if (next === undefined || next.kind === 'line' || closes.test(next.text)) return true;
  return ['included', 'onTop', 'taxName', 'taxWord'].some((tag) => next.means[tag] !== undefined);
};

// What the clause or the words behind a kind take, where they end what is said.
const spanAt = (reader: Reader, index: number, end: number): Pick<Match, 'start' | 'end'> | undefined => {
  const { tokens } = reader;
  for (const form of clauses) {
    const match = form.at(tokens, index, end);
    if (match !== undefined && ends(reader, match.end)) return match;
  }
  const kind = behindKind.at(tokens, index, end);
  const free = kind?.kept['f'];
  if (kind === undefined || free === undefined || !costsNothing.test(free.text) || !ends(reader, kind.end)) return undefined;
  return { start: tokens.indexOf(free, kind.start), end: kind.end };
};

const findIn = (reader: Reader, { start, end, asked }: Part): Finding[] => {
  for (let index = start; index < end && !asked; index++) {
    const span = spanAt(reader, index, end);
    if (span !== undefined && allFree(reader, span.start, span.end)) return [{ start: span.start, end: span.end, held: true, whole: true }];
  }
  return [];
};

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  const ordered = tokens.some(({ means }) => means['piece'] !== undefined) && tokens.some(({ number }) => number !== undefined);
  const speaks = clauses.some((form) => form.might(tokens)) || behindKind.might(tokens);
  return ordered && speaks ? reader.message.parts.slice(0, 40).flatMap((part) => findIn(reader, part)) : [];
};

export const freeOfCharge: Phrase = { name: 'free of charge', examples: [], find };
