// Days said by name ("good friday", "halloween party"), for this year or the next; several possible days are asked about.

import { type Day, yearOf } from '../../values/day.ts';
import { type Pattern, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import type { DateRead } from './date-read.ts';
import { yearFrom } from './day-parts.ts';
import { namedDays } from './named-days.ts';
import { weekendAround, weekendWord } from './weekends.ts';

export const several = (
  start: number,
  end: number,
  context: ReadingContext,
  daysIn: (year: number) => readonly Day[],
): DateRead | undefined => {
  const thisYear = daysIn(yearOf(context.today)).filter((day) => day >= context.today);
  const days = thisYear.length > 0 ? thisYear : daysIn(yearOf(context.today) + 1);
  const [first, ...rest] = days;
  if (first === undefined) return undefined;
  return rest.length === 0 ? { start, end, days } : { start, end, days, why: 'which day' };
};

const byFirstWord = new Map<string, { pattern: Pattern; days: (typeof namedDays)[number][1] }[]>();
for (const [name, days] of namedDays) {
  const first = name.split(' ')[0] ?? '';
  byFirstWord.set(first, [...(byFirstWord.get(first) ?? []), { pattern: pattern(`${name} (<y:plain>)?`), days }]);
}

export const named = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  for (const name of byFirstWord.get(tokens[index]?.text ?? '') ?? []) {
    const match = name.pattern.at(tokens, index, tokens.length);
    if (match === undefined) continue;
    const year = yearFrom(match.kept['y'], tokens);
    const end = match.kept['y'] !== undefined && year === undefined ? match.end - 1 : match.end;
    const next = tokens[end]?.text ?? '';
    if (/^(card|cards|rush|week|stock|orders)$/.test(next)) return undefined;
    // A christmas party need not be on the day.
    if (
      /^(party|do|dance|ball|fair|wedding|event|dinner)$/.test(next) &&
      /^(christmas|xmas|easter|thanksgiving)$/.test(tokens[index]?.text ?? '') &&
      end - index === 1
    )
      return undefined;
    if (weekendWord.test(next)) {
      const around = several(index, end + 1, context, (in_) => name.days(in_, context.region).flatMap((day) => day ?? []));
      const [day, second] = around?.days ?? [];
      if (day !== undefined && second === undefined) return { start: index, end: end + 1, days: weekendAround(day), why: 'which day' };
    }
    if (year !== undefined) return { start: index, end, days: name.days(year, context.region).flatMap((day) => day ?? []) };
    const read = several(index, end, context, (in_) => name.days(in_, context.region).flatMap((day) => day ?? []));
    return read === undefined ? { start: index, end, days: [] } : { ...read, yearAssumed: true };
  }
  return undefined;
};
