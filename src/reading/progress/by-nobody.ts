// "nobody did 4 of the crowns", "no one's ordered the 12 bouts": none was made or wanted, and from what number it differs is not said.

import { firstAt, type Match, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount, type Token } from '../text/token.ts';
import { nobody, noneForms } from './work-forms.ts';

const said = pattern(`(${nobody}|(none|not one|neither) (of)? (<bench>|you|the (girls|team|lads|temps)))`);
const ends = /^(,|;|-|:|\(|\)|but|so|because|cos|coz)$/;
// "nobody in today i did 8 bouts" goes on with another; "nobody said we did 14" does not.
const another = /^(i|we|i've|ive|we've|weve|i'm|im)$/;
const tells =
  /^(told|tell|tells|said|says|say|thinks|think|thought|knows|knew|know|reckons|reckoned|noticed|realised|realized|saw|sees|that|if|how)$/;

const endOf = (tokens: readonly Token[], from: number, end: number): number => {
  for (let index = from; index < end; index++) {
    const text = tokens[index]?.text ?? '';
    if (ends.test(text) || (another.test(text) && !tells.test(tokens[index - 1]?.text ?? ''))) return index;
  }
  return end;
};

// "none of the 6 combs broke": none did, unless it tells how many are made.
const noneOf = pattern('(none|not one|neither) of (the|our|those|these|my) <count>');
const noneIn = (tokens: readonly Token[], start: number, end: number): Match | undefined => {
  const match = noneOf.in(tokens, start, end);
  return match === undefined || firstAt(noneForms, tokens, match.start, end) !== undefined ? undefined : { ...match, end: match.start + 1 };
};

// "nobody else wearing one" counts nothing.
const wears = /^(wear|wears|wearing|want|wants|get|gets|getting|need|needs|needing|have|has|having)$/;
const wornOne = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'one' && wears.test(tokens[at - 1]?.text ?? '') && tokens[at + 1]?.means['piece'] === undefined;

const inPart = ({ tokens }: Reader, { start, end }: Part): Finding[] => {
  const match = said.in(tokens, start, end) ?? noneIn(tokens, start, end);
  if (match === undefined) return [];
  const stop = endOf(tokens, match.end, end);
  for (let index = match.end; index < stop; index++)
    if (isCount(tokens[index]) && !wornOne(tokens, index)) return [{ start: match.start, end: stop, held: true }];
  return [];
};

/** Counts that nobody made, broke or asked for. */
export const byNobody = (reader: Reader): Finding[] =>
  said.might(reader.tokens) || noneOf.might(reader.tokens)
    ? reader.untouched().flatMap((part) => (part.asked ? [] : inPart(reader, part)))
    : [];
