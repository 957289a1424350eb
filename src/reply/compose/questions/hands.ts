// "Who's on Thursday?": how many are at the bench, for how long, and what is planned for them. Hours are kept by day, never by name.

import { benchRules } from '../../../planning/bench-rules.ts';
import { dueOn } from '../../../planning/due-on.ts';
import { handsOnDay } from '../../../planning/hands-on-day.ts';
import type { Day } from '../../../values/day.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { dateSpan, strong, text } from '../../span.ts';
import { duration, shortDate } from '../../words/dates.ts';
import { workLine } from '../due.ts';
import { daysAsked } from './day-asked.ts';
import type { Respond } from './respond.ts';

/** `plain`: without the day's name in bold, for a list of days. */
const handsLine = (day: Day, { studio, manner }: Answer): Line => {
  const { people, minutes, open, holiday, said } = handsOnDay(benchRules(studio), day);
  const when = dateSpan(shortDate(day, manner));
  if (!open || minutes === 0) {
    const why = said ? 'as you said' : (holiday ?? 'closed');
    return text`${strong('Nobody')} at the bench on ${when} (${why}).`;
  }
  const from = said ? 'as you said' : 'the usual hours';
  const hours = people === 1 ? text`${duration(minutes)}` : text`${duration(minutes)} in all`;
  return text`${strong(`${people} at the bench`)} on ${when}, ${hours} (${from}).`;
};

const plannedLine = (day: Day, { bench }: Answer): Line | undefined => {
  const due = dueOn(bench(), day).filter((one) => !one.overdue);
  return due.some((one) => one.due === 'pieces') ? text`Planned then: ${workLine(due)}.` : undefined;
};

export const hands: Respond = (question, answer) => {
  const days = daysAsked(question, answer);
  const [first] = days;
  if (first === undefined) return [];
  const planned = days.length === 1 ? plannedLine(first, answer) : undefined;
  const asksWho = /^\W*(who|is|are)/i.test(question.words);
  return [
    ...days.map((day, at): Block => ({ block: at === 0 ? 'answer' : 'line', line: handsLine(day, answer) })),
    ...(planned === undefined ? [] : [{ block: 'line' as const, line: planned }]),
    ...(asksWho ? [{ block: 'assumed' as const, line: text`I keep how many and for how long, not who.` }] : []),
  ];
};
