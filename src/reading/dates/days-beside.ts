// A day told by a named one: "the day after valentine's", "saturday before christmas", "the weekend after easter".

import { addDays, type Day } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { comingWeekday } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { named } from './named-dates.ts';

const form = pattern('(the|on|a)? (day|<w:weekday>|weekend|wkend|wknd|week) (right|just|straight|immediately)? (<b:word>) (the)?');

/** What such a day begins with. */
export const besideOpens = [form];

const strictlyBefore = (day: Day, weekday: number): Day => addDays(comingWeekday(day, weekday, true), -7);

/** A day told by a named one, if one begins here. A whole week is too wide to be one. */
export const dayBeside = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = form.at(tokens, index, tokens.length);
  const turn = match?.kept['b']?.text;
  if (match === undefined || (turn !== 'before' && turn !== 'after')) return undefined;
  const base = named(tokens, match.end, context);
  const [first] = base?.days ?? [];
  if (base === undefined || first === undefined) return undefined;
  const words = tokens.slice(index, match.end).map((token) => token.text);
  const last = base.days.at(-1) as Day;
  // Beside a feast of two days the nearer one may be meant, or the one outside both.
  const bases = turn === 'after' ? [last, first] : [first, last];
  const beside = (day: Day): readonly Day[] => {
    if (words.includes('day')) return [addDays(day, turn === 'after' ? 1 : -1)];
    const weekday = match.kept['w']?.means['weekday'];
    const on = (each: number): Day => (turn === 'after' ? comingWeekday(day, each) : strictlyBefore(day, each));
    if (weekday !== undefined) return [on(Number(weekday))];
    const saturday = on(6);
    return [saturday, addDays(saturday, 1)];
  };
  if (words.includes('week')) return undefined;
  const days = [...new Set(bases.flatMap(beside))].filter((day) => day >= context.today).sort();
  const { why: _, within: __, ...rest } = base;
  return { ...rest, start: index, days, ...(days.length === 1 ? {} : { why: 'which day' as const, within: days }) };
};
