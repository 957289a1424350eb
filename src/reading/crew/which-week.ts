// "2 of us fri, 5 hrs each" in the thread of an event some weeks away: this friday, or the one before the event? The bench is planned by it, so it is asked.

import { addDays, type Day, weekdayOf } from '../../values/day.ts';
import { comingWeekday, weekdayNumber } from '../dates/calendar-sums.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { Fact, FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';

type Crew = FactOf<'crew'>;

const bare = pattern('(on|the|for|from){0,2} <weekday>');
/** Whether every day in the stretch is a weekday and no more: not "fri 12 feb", not "next friday". */
const namesWeekdays = ({ tokens, context }: Reader, { start, end }: Finding): boolean => {
  let any = false;
  for (let index = start; index < end; index++) {
    const read = dateAt(tokens, index, context);
    if (read === undefined) continue;
    if (read.relative !== true || bare.at(tokens, read.start, read.end)?.end !== read.end) return false;
    any = true;
    index = read.end - 1;
  }
  return any;
};

const weekBefore = (eventDate: Day, date: string): Day => comingWeekday(addDays(eventDate, -6), weekdayNumber(date as Day), true);

const isDated = (fact: Fact): fact is Crew & { readonly date: string } => fact.fact === 'crew' && fact.date !== undefined;

const dayWords = (given: readonly Fact[]): string =>
  [...new Set(given.flatMap((fact) => (isDated(fact) ? [`${weekdayOf(fact.date as Day)} ${fact.date}`] : [])))].join(' and ');

// "weds" on a wednesday is today or next week; in the thread of an event weeks away it may be that week's too.
const withItsWeek =
  (reader: Reader, eventDate: Day) =>
  (finding: Finding): Finding => {
    const [ask, another] = finding.asks ?? [];
    const last = ask?.choices.at(-1)?.facts ?? [];
    if (ask === undefined || another !== undefined || last.length === 0 || !last.every(isDated) || !namesWeekdays(reader, finding))
      return finding;
    const later = last.map((fact): Fact => ({ ...fact, date: weekBefore(eventDate, fact.date) }));
    const known = ask.choices.some(({ facts }) => dayWords(facts) === dayWords(later));
    const ahead = later.every((fact, at) => isDated(fact) && fact.date > (last[at]?.date ?? ''));
    return known || !ahead
      ? finding
      : { ...finding, asks: [{ ...ask, choices: [...ask.choices, { words: dayWords(later), facts: later }] }] };
  };

/** The findings, with one question for all shifts whose week is open. */
export const askWhichWeek = (reader: Reader, read: readonly Finding[]): Finding[] => {
  const { eventDate, today } = reader.context;
  if (eventDate === undefined) return [...read];
  const findings = read.map(withItsWeek(reader, eventDate));
  const open = findings.filter((finding) => {
    const facts = finding.facts ?? [];
    return facts.length > 0 && facts.every(isDated) && namesWeekdays(reader, finding);
  });
  const facts = open.flatMap((finding) => (finding.facts ?? []).filter(isDated));
  const near = facts.map((fact) => weekBefore(eventDate, fact.date));
  const [first] = open;
  const isOpen = first !== undefined && facts.some((fact, at) => fact.date !== near[at]) && near.every((day) => day >= today);
  if (!isOpen) return [...findings];
  const later = facts.map((fact, at): Fact => ({ ...fact, date: near[at] ?? fact.date }));
  const choices: Choice[] = [facts, later].map((given) => ({ words: dayWords(given), facts: given }));
  const said = open.map(({ start, end }) => reader.words(start, end)).join(', ');
  return findings.map((finding) => {
    if (!open.includes(finding)) return finding;
    const { facts: _, ...rest } = finding;
    return finding === first ? { ...rest, asks: [{ about: 'date', why: 'which day', words: said, choices }] } : rest;
  });
};
