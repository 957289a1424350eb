// Which day, or days, a question is about: the day that was read, else what its own words still say ("this week", "the 20th"), else today.

import { addDays, type Day, dayOf, dayOfMonth, monthOf, parseDay, weekdayOf, weekdays, yearOf } from '../../../values/day.ts';
import type { Answer } from '../../answer.ts';
import type { Question } from './respond.ts';

const week = 7;

const months = 'jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec';
const bareOrdinal = new RegExp(
  `(?<!(?:${months})[a-z]*\\s+(?:the\\s+)?)\\b(\\d{1,2})(?:st|nd|rd|th)\\b(?!\\s+(?:of\\s+)?(?:${months}))`,
  'i',
);

/** The day named, if any. A bare "the 20th" is this event's own 20th, else the next there is: a question stores nothing, and its answer shows the whole date. */
export const dayNamed = ({ date, words }: Question, { today, event }: Pick<Answer, 'today' | 'event'>): Day | undefined => {
  const ordinal = Number(bareOrdinal.exec(words)?.[1] ?? Number.NaN);
  if (event.date && event.date >= today && dayOfMonth(event.date) === ordinal) return event.date;
  const said = date === undefined ? undefined : parseDay(date);
  return said ?? (Number.isNaN(ordinal) ? undefined : nextDayOfMonth(ordinal, today));
};

const nextDayOfMonth = (number: number, today: Day): Day | undefined => {
  for (let ahead = 0; ahead < 12; ahead += 1) {
    const month = ((monthOf(today) - 1 + ahead) % 12) + 1;
    const year = yearOf(today) + Math.floor((monthOf(today) - 1 + ahead) / 12);
    const day = dayOf(year, month, number);
    if (day && day >= today) return day;
  }
  return undefined;
};

/** Today's list, a named day's, or the days of a week: "this week" is today and the six after it, "next week" begins on Monday. */
export const daysAsked = (question: Question, answer: Pick<Answer, 'today' | 'event'>): readonly Day[] => {
  const { today } = answer;
  const named = dayNamed(question, answer);
  const isWeek = /\bweek\b/i.test(question.words);
  const from = named ?? (isWeek && /\bnext week\b/i.test(question.words) ? nextMonday(today) : today);
  const count = Math.min(31, Math.max(1, question.number ?? (isWeek ? week : 1)));
  return Array.from({ length: count }, (_, index) => addDays(from, index));
};

const nextMonday = (today: Day): Day => addDays(today, week - weekdays.indexOf(weekdayOf(today)));
