// Which day, or days, a question is about: the day that was read, else what its own words still say ("this week", "the 20th"), else today.

import { addDays, type Day, dayOf, monthOf, parseDay, weekdayOf, weekdays, yearOf } from '../../../values/day.ts';
import type { Question } from './questions.ts';

const week = 7;

/** The day named, if any. A bare "the 20th" is the next one there is: a question stores nothing, and its answer shows the whole date. */
export const dayNamed = ({ date, words }: Question, today: Day): Day | undefined => {
  const said = date === undefined ? undefined : parseDay(date);
  if (said) return said;
  const ordinal = /\b(\d{1,2})(?:st|nd|rd|th)\b/i.exec(words)?.[1];
  return ordinal === undefined ? undefined : nextDayOfMonth(Number(ordinal), today);
};

const nextDayOfMonth = (dayOfMonth: number, today: Day): Day | undefined => {
  for (let ahead = 0; ahead < 12; ahead += 1) {
    const month = ((monthOf(today) - 1 + ahead) % 12) + 1;
    const year = yearOf(today) + Math.floor((monthOf(today) - 1 + ahead) / 12);
    const day = dayOf(year, month, dayOfMonth);
    if (day && day >= today) return day;
  }
  return undefined;
};

/** Today's list, a named day's, or the days of a week: "this week" is today and the six after it, "next week" begins on Monday. */
export const daysAsked = (question: Question, today: Day): readonly Day[] => {
  const named = dayNamed(question, today);
  const isWeek = /\bweek\b/i.test(question.words);
  const from = named ?? (isWeek && /\bnext week\b/i.test(question.words) ? nextMonday(today) : today);
  const count = Math.min(31, Math.max(1, question.number ?? (isWeek ? week : 1)));
  return Array.from({ length: count }, (_, index) => addDays(from, index));
};

const nextMonday = (today: Day): Day => addDays(today, week - weekdays.indexOf(weekdayOf(today)));
