// "Who's on Thursday?": how many are at the bench, for how long, and what is planned for them. Hours are kept by day, never by name.

import { type BenchRules, benchRules } from '../../../planning/bench-rules.ts';
import { dayNumber } from '../../../planning/day-number.ts';
import { dueOn } from '../../../planning/due-on.ts';
import { handsOnDay } from '../../../planning/hands-on-day.ts';
import type { Day } from '../../../values/day.ts';
import type { Answer, Manner } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { dateSpan, strong, text } from '../../span.ts';
import { duration, shortDate } from '../../words/dates.ts';
import { workLine } from '../due.ts';
import { daysAsked } from './day-asked.ts';
import type { Respond } from './respond.ts';

const usualHours = ({ assumed }: BenchRules): string => {
  if (assumed.includes('hours')) return 'assumed: nobody has said your usual hours';
  return assumed.includes('people') ? 'the usual hours, one person assumed' : 'the usual hours';
};

const handsLine = (day: Day, rules: BenchRules, manner: Manner): Line => {
  const { people, minutes, open, holiday, said } = handsOnDay(rules, day);
  const when = dateSpan(shortDate(day, manner));
  const usual = usualHours(rules);
  if (!open || minutes === 0) {
    const shut = rules.closed.has(dayNumber(day)) || !rules.assumed.includes('hours') ? 'closed' : usual;
    const why = said ? 'as you said' : (holiday ?? shut);
    return text`${strong('Nobody')} at the bench on ${when} (${why}).`;
  }
  const hours = people === 1 ? text`${duration(minutes)}` : text`${duration(minutes)} in all`;
  return text`${strong(`${people} at the bench`)} on ${when}, ${hours} (${said ? 'as you said' : usual}).`;
};

const plannedLine = (day: Day, { bench }: Answer): Line | undefined => {
  const due = dueOn(bench(), day).filter((one) => !one.overdue);
  return due.some((one) => one.due === 'pieces') ? text`Planned then: ${workLine(due)}.` : undefined;
};

export const hands: Respond = (question, answer) => {
  const days = daysAsked(question, answer);
  const rules = benchRules(answer.studio);
  const [first] = days;
  if (first === undefined) return [];
  const planned = days.length === 1 ? plannedLine(first, answer) : undefined;
  const asksWho = /^\W*(who|is|are)/i.test(question.words);
  return [
    ...days.map((day, at): Block => ({ block: at === 0 ? 'answer' : 'line', line: handsLine(day, rules, answer.manner) })),
    ...(planned === undefined ? [] : [{ block: 'line' as const, line: planned }]),
    ...(asksWho ? [{ block: 'assumed' as const, line: text`I keep how many and for how long, not who.` }] : []),
  ];
};
