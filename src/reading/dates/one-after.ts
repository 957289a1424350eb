// The week behind the coming one, told by the day it is not: "not this sat, the one after", "the saturday after this one".

import { addDays } from '../../values/day.ts';
import { firstAt, pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { comingWeekday, weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';

const weekend = '(weekend|wkend|wknd|wend)';
const after =
  "(the one after|one after|the next one|next one|the following one|following one|the following|following|the week after|week after|week later|a week later|the next|after|after that|the one after that|next week|next week's|the week after that)";
const form = pattern(
  `(not|isnt|isn't) (on|for)? (this coming|this|the|coming|next)? (<w:weekday>|${weekend}) (coming)? (,|-|but|;|\\(|it's|its|it is){0,3} (${after} (<v:weekday>|${weekend})?|(the)? (<v:weekday>|${weekend}) after)`,
);
const behind = pattern(
  `(the|on|on the)? (<w:weekday>|${weekend}) after (this one|this coming one|the coming one|this coming|this|this week|this weekend)`,
);
// "next saturday, not this one", "not this one, next sat", "this saturday, not next"
const gap = "(,|-|but|and|;|\\(|it's|its|it is|on|for){0,3}";
const thisOne = '(this|the) (one|coming one|coming|week|weekend|weeks|coming week|coming weekend)';
const nextNotThis = [`(the)? next <w:weekday> ${gap} not ${thisOne}`, `not ${thisOne} ${gap} (the)? next <w:weekday>`].map((source) =>
  pattern(source),
);
const thisNotNext = pattern(`this (coming)? <w:weekday> ${gap} not (the)? next (one|week|weekend|week's)?`);

/** What such a day begins with. */
export const oneAfterOpens = [form, behind, ...nextNotThis, thisNotNext];

const toldFromNext = (tokens: readonly Token[], index: number, { today }: ReadingContext): DateRead | undefined => {
  const next = firstAt(nextNotThis, tokens, index, tokens.length);
  const match = next ?? thisNotNext.at(tokens, index, tokens.length);
  // "this friday, not next friday" says its own day.
  if (match === undefined || tokens[match.end]?.means['weekday'] !== undefined) return undefined;
  const weekday = Number(match.kept['w']?.means['weekday']);
  const first = comingWeekday(today, weekday);
  // Where the coming one is next week's already, or today is one, either may be meant.
  const onDay = weekdayNumber(today) === weekday;
  const open = onDay || first >= addDays(today, 8 - weekdayNumber(today));
  const days = next === undefined ? [...(onDay ? [today] : []), first] : [...(open ? [first] : []), addDays(first, 7)];
  return { start: index, end: match.end, relative: true, days, ...(days.length === 1 ? {} : { why: 'which day' as const }) };
};

/** A day of the week after the coming one, if it is told so here. "Not next sat, the one after" leaves open which is meant, so that is asked. */
export const oneAfter = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const match = form.at(tokens, index, tokens.length) ?? behind.at(tokens, index, tokens.length);
  if (match === undefined) return toldFromNext(tokens, index, context);
  const [w, v] = [match.kept['w'], match.kept['v']];
  if (v !== undefined && v.means['weekday'] !== w?.means['weekday']) return undefined;
  const { today } = context;
  const weekday = Number(w?.means['weekday'] ?? 6);
  const words = tokens.slice(index, match.end).map((token) => token.text);
  const open = words.includes('next') && words.indexOf('next') < 3 && /^(not|isn't|isnt)$/.test(words[0] ?? '');
  const first = comingWeekday(today, weekday);
  // Said on a wednesday, "this wed" is today for some.
  const days = [...(weekdayNumber(today) === weekday ? [0] : []), 7, ...(open ? [14] : [])].map((ahead) => addDays(first, ahead));
  const all = w === undefined ? days.flatMap((day) => [day, addDays(day, 1)]) : days;
  const base = { start: index, end: match.end, relative: true as const };
  return all.length === 1 ? { ...base, days: all } : { ...base, days: all, why: 'which day' };
};
