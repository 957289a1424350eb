// Days said by name ("good friday", "halloween party"), for this year or the next; several possible days are asked about.

import { type Day, monthOf, yearOf } from '../../values/day.ts';
import { type Pattern, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { monthOfToken, yearFrom } from './day-parts.ts';
import { type DaysIn, namedDays } from './named-days.ts';
import { daysOfWeekend, weekendAround, weekendBehind, weekendWord } from './weekends.ts';

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

// "st patrick's day": "st. patricks day", "saint patrick day" and "patricks' day" say it as well.
const waysToType = (word: string): readonly string[] => {
  if (word === 'st') return ['st', 'saint'];
  return word.endsWith("'s") ? [word, word.replace("'", ''), word.slice(0, -2)] : [word];
};
const spoken = (name: string): string =>
  name
    .split(' ')
    .map((word) => (word === 'st' ? '(st|saint) (.)?' : word.endsWith("'s") ? `(${waysToType(word).join('|')}) (')?` : word))
    .join(' ');

interface Name {
  readonly pattern: Pattern;
  readonly days: DaysIn;
}
const byFirstWord = new Map<string, Name[]>();
for (const [name, days] of namedDays) {
  const form = { pattern: pattern(`${spoken(name)} (,)? (<y:plain>)?`), days };
  for (const first of waysToType(name.split(' ')[0] ?? '')) byFirstWord.set(first, [...(byFirstWord.get(first) ?? []), form]);
}

/** What a day said by name begins with. */
export const namedOpens = [...byFirstWord.values()].flat().map(({ pattern }) => pattern);

const inMonth = pattern('(in|of|,|\\()? <m:month>');

export const named = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  for (const name of byFirstWord.get(tokens[index]?.text ?? '') ?? []) {
    const match = name.pattern.at(tokens, index, tokens.length);
    if (match === undefined) continue;
    const year = yearFrom(match.kept['y'], tokens);
    const last = match.kept['y'] !== undefined && year === undefined ? match.end - 1 : match.end;
    const end = tokens[last - 1]?.text === ',' ? last - 1 : last;
    const next = tokens[end]?.text ?? '';
    if (/^(card|cards|rush|week|stock|orders)$/.test(next)) return undefined;
    // A christmas party need not be on the day.
    if (
      /^(party|do|dance|ball|fair|wedding|event|dinner|lunch|drinks|function)('s)?$/.test(next) &&
      /^(christmas|xmas|easter|thanksgiving)$/.test(tokens[index]?.text ?? '') &&
      end - index === 1
    )
      return undefined;
    const weekend = weekendWord.test(tokens[end - 1]?.text ?? '') ? { end } : weekendBehind.at(tokens, end, tokens.length);
    if (weekend !== undefined) {
      const around = several(index, weekend.end, context, (in_) => name.days(in_, context.region).flatMap((day) => day ?? []));
      if (around !== undefined && around.days.length > 0)
        return {
          ...around,
          days: [...new Set(around.days.flatMap((day) => [...weekendAround(day)]))],
          why: 'which day',
          within: [...new Set(around.days.flatMap((day) => [...daysOfWeekend(day)]))],
        };
    }
    // "thanksgiving saturday": a day of the weekend it makes; beside another feast the weekday may be a slip.
    const beside = tokens[end]?.means['weekday'];
    const whole =
      beside === undefined || tokens[end + 1]?.number !== undefined || tokens[end + 1]?.means['month'] !== undefined
        ? undefined
        : several(index, end + 1, context, (in_) => name.days(in_, context.region).flatMap((day) => day ?? []));
    const [only, second] = whole?.days ?? [];
    if (whole !== undefined && only !== undefined && second === undefined && year === undefined) {
      const picked = daysOfWeekend(only).find((day) => weekdayNumber(day) === Number(beside));
      if (picked === only) return { ...whole, yearAssumed: true };
      if (picked !== undefined)
        return {
          ...whole,
          yearAssumed: true,
          ...([1, 4, 5].includes(weekdayNumber(only)) ? { days: [picked] } : { days: [only, picked].sort(), why: 'which day' as const }),
        };
    }
    // "mother's day in may"
    const month = inMonth.at(tokens, end, tokens.length);
    const either =
      month === undefined
        ? undefined
        : several(index, month.end, context, (in_) =>
            name
              .days(in_, context.region)
              .flatMap((day) => (day !== undefined && monthOf(day) === monthOfToken(month.kept['m']) ? day : [])),
          );
    if (either !== undefined) return { ...either, yearAssumed: true };
    if (year !== undefined) return { start: index, end, days: name.days(year, context.region).flatMap((day) => day ?? []) };
    const read = several(index, end, context, (in_) => name.days(in_, context.region).flatMap((day) => day ?? []));
    return read === undefined ? { start: index, end, days: [] } : { ...read, yearAssumed: true };
  }
  return undefined;
};
