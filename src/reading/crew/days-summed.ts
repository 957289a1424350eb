// What all the days come to, said behind them: "thurs 3 of us 6 hours each, fri 2 of us 4 hours each, so 26 hours all up".
// It is no day's own; where it is not theirs nothing of it is kept.

import { firstIn, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { totalHours } from './crew-forms.ts';
import { hoursOf } from './pace.ts';

const eachOfThem = pattern('<d:duration> (<each>|a head|each of us|apiece)');
const lead = /^(,|so|=|that's|thats|makes|making|-|and)$/;

export interface DaysSummed {
  readonly days: readonly Part[]; // the last of them without the sum
  readonly sum: Part;
  readonly hours: number;
}

export const daysSummed = (reader: Reader, days: readonly Part[]): DaysSummed | undefined => {
  const last = days.at(-1);
  if (last === undefined) return undefined;
  const { tokens } = reader;
  const total = firstIn(totalHours, tokens, last.start, last.end);
  const each = eachOfThem.in(tokens, last.start, last.end);
  const hours = hoursOf(total?.kept['d']);
  if (total === undefined || each === undefined || hours === undefined || each.end > total.start) return undefined;
  let end = total.start;
  while (end > each.end && lead.test(tokens[end - 1]?.text ?? '')) end -= 1;
  return { days: [...days.slice(0, -1), { ...last, end }], sum: { ...last, start: end }, hours };
};

/** The days with their sum, or all of it held. */
export const agreed = (findings: readonly Finding[], part: Part, { sum, hours }: DaysSummed): readonly Finding[] => {
  const facts = findings.flatMap((finding) => finding.facts ?? []);
  const told = facts.reduce((all, fact) => all + (fact.fact === 'crew' ? (fact.totalHours ?? Number.NaN) : 0), 0);
  if (told !== hours) return [{ start: part.start, end: part.end, held: true }];
  return findings.map((finding, at) => (at < findings.length - 1 ? finding : { ...finding, end: sum.end }));
};
