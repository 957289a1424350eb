// The last look at what a phrase read: where a range or a choice was typed, no fact keeps one end of it alone. Such words are held.

import type { Fact } from './fact.ts';
import type { Finding } from './phrase.ts';
import { isRangeOrChoice, isSingle, type Token } from './text/token.ts';

// Where the other end stands beside the one.
const companions: Readonly<Record<string, readonly string[]>> = {
  count: ['countMax'],
  amount: ['amountMax', 'amounts'],
  price: ['priceMax'],
  number: ['numberMax'],
  days: ['daysMax'],
};
// The other ends themselves; hours come of two hours of the clock; of lead and of drying the longer is kept, so that nothing comes late.
const free = /Max$|^(words|amounts|hours|totalHours|leadDays|dryingDays|date|time)$/;

const link = /^(or|-)$/;

/** The ends of the ranges among the tokens, with a third number joined on: "9 or 11 or 12". No number said by itself is one. */
const endsIn = (tokens: readonly Token[], places: readonly number[]): ReadonlySet<number> => {
  const [ends, alone] = [new Set<number>(), new Set<number>()];
  for (const at of places) {
    const number = tokens[at]?.number;
    if (number === undefined || number.amount === '') continue;
    const joined = [-1, 1].some((by) => {
      const other = tokens[at + 2 * by]?.number;
      return link.test(tokens[at + by]?.text ?? '') && other?.amount !== '' && isRangeOrChoice(other);
    });
    const said = isSingle(number) && !joined ? alone : ends;
    for (const each of [number.amount, number.max, ...(number.or ?? [])]) if (each !== undefined) said.add(Number(each));
  }
  for (const each of alone) ends.delete(each);
  return ends;
};

// "from 12 to 15": what it was and what it is.
const isSpan = (fact: object, ends: ReadonlySet<number>): boolean => {
  const { from, to, price } = fact as { from?: unknown; to?: unknown; price?: unknown };
  const now = to ?? price;
  return from !== undefined && now !== undefined && from !== now && ends.has(Number(from)) && ends.has(Number(now));
};

// "buttonholes 1 to 15 done": pieces by their numbers, fifteen of them.
const isNumbered = (fact: Fact, ends: ReadonlySet<number>): boolean =>
  fact.fact === 'made' && fact.total === true && fact.of === undefined && ends.has(1) && fact.count === Math.max(...ends);

const keepsOne = (fact: object, ends: ReadonlySet<number>): boolean => {
  if (isSpan(fact, ends)) return false;
  return Object.entries(fact).some(([key, value]) => {
    if (free.test(key) || (key === 'people' && value === 1)) return false; // "me fri 9-12, 1-4"
    if (typeof value === 'object' && value !== null) return keepsOne(value, ends);
    if (typeof value === 'string' && !/^-?\d+(\.\d+)?$/.test(value)) return false;
    return ends.has(Math.abs(Number(value))) && !(companions[key] ?? []).some((other) => Object.hasOwn(fact, other));
  });
};

/** Whether any range or choice was typed at all. */
export const saysRange = (tokens: readonly Token[]): boolean => tokens.some(({ number }) => isRangeOrChoice(number));

/** The finding, or its words held where one of its facts keeps one end alone. */
export const withBothEnds = (tokens: readonly Token[], finding: Finding, places: readonly number[]): Finding => {
  const facts: readonly Fact[] = finding.facts ?? [];
  const ends = facts.length === 0 ? new Set<number>() : endsIn(tokens, places);
  return ends.size > 0 && facts.some((fact) => !isNumbered(fact, ends) && keepsOne(fact, ends))
    ? { start: finding.start, end: finding.end, takes: places, held: true }
    : finding;
};
