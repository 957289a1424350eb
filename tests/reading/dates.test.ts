// Our own date forms against an independent reader: chrono-node (its documentation: https://github.com/wanasit/chrono), strict, in both orders
// of day and month. Every generated date must be the same day in both, or be left to us by it. The dates are spread over the year by a fixed rule.

import { Chrono, en } from 'chrono-node';
import { describe, expect, it } from 'vitest';
import type { FactOf } from '../../src/reading/fact.ts';
import { readMessage } from '../../src/reading/read-message.ts';
import type { ReadingContext } from '../../src/reading/reading.ts';
import { addDays, type Day, dayOfMonth, monthOf, weekdayOf, yearOf } from '../../src/values/day.ts';
import { context } from './support/context.ts';

const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];
const suffix = (day: number): string =>
  day % 10 === 1 && day !== 11 ? 'st' : day % 10 === 2 && day !== 12 ? 'nd' : day % 10 === 3 && day !== 13 ? 'rd' : 'th';
const title = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

// [the form, the order of day and month it needs; none where the month is in letters]
const forms: readonly (readonly [(day: Day) => string, boolean?])[] = [
  [(day) => `${dayOfMonth(day)} ${months[monthOf(day) - 1]}`],
  [(day) => `${dayOfMonth(day)}${suffix(dayOfMonth(day))} ${months[monthOf(day) - 1]}`],
  [(day) => `${dayOfMonth(day)}${suffix(dayOfMonth(day))} of ${months[monthOf(day) - 1]} ${yearOf(day)}`],
  [(day) => `${dayOfMonth(day)} ${months[monthOf(day) - 1]?.slice(0, 3)} ${yearOf(day)}`],
  [(day) => `${title(weekdayOf(day))} ${dayOfMonth(day)} ${months[monthOf(day) - 1]} ${yearOf(day)}`],
  [(day) => `${months[monthOf(day) - 1]} ${dayOfMonth(day)}, ${yearOf(day)}`],
  [(day) => `${months[monthOf(day) - 1]} ${dayOfMonth(day)}${suffix(dayOfMonth(day))}`],
  [(day) => day],
  [(day) => `${dayOfMonth(day)}/${monthOf(day)}/${yearOf(day)}`, true],
  [(day) => `${monthOf(day)}/${dayOfMonth(day)}/${yearOf(day)}`, false],
  [(day) => `${dayOfMonth(day)}.${monthOf(day)}.${yearOf(day)}`, true],
];
// Days ahead, spread over the year: 97 and 359 share no factor, so no day comes twice.
const offsets: readonly number[] = Array.from({ length: 36 }, (_, place) => (place * 97) % 359);

const chronoIn = (dayFirst: boolean): Chrono => new Chrono(en.configuration.createConfiguration(true, dayFirst));
const independent = { first: chronoIn(true), second: chronoIn(false) };

const byChrono = (text: string, dayFirst: boolean): string | undefined => {
  const reference = { instant: new Date(`${context.today}T12:00:00Z`), timezone: 'UTC' };
  const [result] = (dayFirst ? independent.first : independent.second).parse(text, reference, { forwardDate: true });
  if (result === undefined || !result.start.isCertain('day') || !result.start.isCertain('month')) return undefined;
  const [year, month, day] = [result.start.get('year'), result.start.get('month'), result.start.get('day')].map((part) =>
    String(part ?? 0),
  );
  return `${year}-${month?.padStart(2, '0')}-${day?.padStart(2, '0')}`;
};
const byUs = (text: string, dayFirst: boolean): readonly string[] =>
  readMessage(text, { ...context, dayFirst } satisfies ReadingContext)
    .facts.filter((fact): fact is FactOf<'date'> => fact.fact === 'date')
    .map((fact) => fact.date);

describe.each([true, false])('day first: %s', (dayFirst) => {
  const cases = forms
    .filter(([, order]) => order === undefined || order === dayFirst)
    .flatMap(([form], at) =>
      offsets
        .filter((_, place) => place % 2 === at % 2)
        .map((offset) => addDays(context.today, offset + 1))
        .map((day) => [`event ${form(day)}`, day] as const),
    );

  it.each(cases)('%s', (says, day) => {
    expect(byUs(says, dayFirst)).toEqual([day]);
    expect([undefined, day]).toContain(byChrono(says, dayFirst));
  });

  it('is checked by the other reader in most cases', () => {
    expect(cases.filter(([says, day]) => byChrono(says, dayFirst) === day).length).toBeGreaterThan(cases.length / 2);
  });
});

describe('forms only the other reader knows', () => {
  it.each([
    ['event Mar. 14', '2027-03-14'],
    ['wedding on Sept. 4, 2027', '2027-09-04'],
  ])('%s', (says, day) => expect(byUs(says, true)).toEqual([day]));

  it.each(['10 stems march', 'rent due Mar. 14', 'order 4511 2027', 'event Feb. 30', 'may need 20 more'])('%s is no date', (says) =>
    expect(byUs(says, true)).toEqual([]),
  );
});
