// All begin together and some go before the others: "3 of us thurs from 8, two till 12 n one till 4". Only the sum is sure.

import { dateOutcome } from '../dates/date-facts.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type NumberRead } from '../text/token.ts';
import { dateIn } from './days-at-bench.ts';

const hands = pattern('<n:count> (of us|of them|<bench>|people|in|at the bench|on|here)');
const from = pattern('(from|starting|starting at|start at|starts at|in from|in at) <f:count> (am)? (,|-|:|;|then){1,2}');
// "two till 12" is one number of two ends.
const leg = pattern(
  '(<r:range>|(<n:count>|<o:word>|the other|the others|the rest) (of us|of them)? (stays|staying|stay|here|in|on)? (till|til|until|to) (<a:count>|noon|midday|lunch)) (pm)?',
);
const link = pattern('(,|and|&|n|then){1,2} (the)?');

const longest = 10; // hours
const noon = 12;
const one = (number: NumberRead | undefined): number | undefined => (isSingle(number) ? Number(number.amount) : undefined);

interface Leg {
  readonly count: number | undefined; // unsaid, they are all the others
  readonly hours: number;
}
const legOf = (match: Match, start: number): Leg | undefined => {
  const { r, n, a, o } = match.kept;
  if (o !== undefined && o.text !== 'other' && o.text !== 'others' && o.text !== 'rest') return undefined;
  const end = r === undefined ? (a === undefined ? noon : one(a.number)) : Number(r.number?.max);
  const count = r === undefined ? one(n?.number) : Number(r.number?.amount);
  if (end === undefined || !Number.isInteger(end) || end < 1 || end > noon || (n !== undefined && count === undefined)) return undefined;
  const hours = end > start ? end - start : end + noon - start; // "till 4" from 8: past noon
  return hours > longest ? undefined : { count, hours };
};

/** So many hands with the sum of their hours; held where those who go are not all there are. */
export const tillApart = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const who = from.might(tokens) && !part.asked ? hands.in(tokens, part.start, part.end) : undefined;
  const begun = who === undefined ? undefined : from.in(tokens, who.end - 1, part.end);
  const first = begun === undefined ? undefined : leg.at(tokens, begun.end, part.end);
  const joined = first === undefined ? undefined : link.at(tokens, first.end, part.end);
  const second = joined === undefined ? undefined : leg.at(tokens, joined.end, part.end);
  const [all, start] = [one(who?.kept['n']?.number), one(begun?.kept['f']?.number)];
  if (first === undefined || second === undefined || all === undefined || start === undefined) return undefined;
  const [some, rest] = [legOf(first, start), legOf(second, start)];
  const early = some?.count;
  const late = rest?.count ?? (early === undefined ? undefined : all - early);
  if (some === undefined || rest === undefined || early === undefined || late === undefined || early + late !== all || late < 1)
    return { start: part.start, end: part.end, held: true };
  const day = dateIn(reader, part);
  const fact = (date?: string): Unworded => ({
    fact: 'crew',
    people: all,
    totalHours: early * some.hours + late * rest.hours,
    ...(date === undefined ? {} : { date }),
  });
  return day === undefined ? found(reader, part.start, part.end, [fact()]) : dateOutcome(reader, day, fact, part.start, part.end);
};
