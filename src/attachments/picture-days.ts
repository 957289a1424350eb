// What each square of the calendar picture holds, and which weeks are worth drawing: a run of quiet weeks becomes one thin line.

import { addDays, type Day, dayOf, monthOf, weekdayOf, yearOf } from '../values/day.ts';
import type { PieceCount } from './piece-count.ts';

export interface PictureInput {
  readonly studio: string;
  readonly event: string;
  readonly eventDay: Day;
  readonly steps: readonly { readonly title: string; readonly date: Day; readonly late?: boolean }[]; // without the event itself
  readonly bench: readonly { readonly date: Day; readonly pieces: readonly PieceCount[]; readonly minutes?: number }[];
  readonly closed: readonly { readonly date: Day; readonly why: string }[]; // "closed", "Good Friday"
  readonly dayFirst: boolean; // also decides the first day of the week: Monday, or Sunday where months come first
}

export interface DayMarks {
  readonly day: Day;
  readonly event: boolean;
  readonly steps: readonly { readonly title: string; readonly late: boolean }[];
  readonly pieces: readonly PieceCount[];
  readonly minutes: number;
  readonly closed?: string;
}

export type PictureWeek =
  | { readonly week: 'drawn'; readonly days: readonly (DayMarks | undefined)[] } // seven; undefined lies in another month
  | { readonly week: 'quiet'; readonly from: Day; readonly to: Day };

export interface PictureMonth {
  readonly year: number;
  readonly month: number;
  readonly weeks: readonly PictureWeek[];
}

export const marksOf = (day: Day, input: PictureInput): DayMarks => {
  const bench = input.bench.filter((one) => one.date === day);
  const closed = input.closed.find((one) => one.date === day)?.why;
  return {
    day,
    event: day === input.eventDay,
    steps: input.steps.filter((step) => step.date === day).map((step) => ({ title: step.title, late: step.late === true })),
    pieces: bench.flatMap((one) => one.pieces),
    minutes: bench.reduce((total, one) => total + (one.minutes ?? 0), 0),
    ...(closed === undefined ? {} : { closed }),
  };
};

export const holdsWork = (marks: DayMarks): boolean => marks.event || marks.steps.length > 0 || marks.pieces.length > 0;

/** Every day that holds something, in order; closed days only between the first and the last of the others. */
export const markedDays = (input: PictureInput): readonly DayMarks[] => {
  const work = [input.eventDay, ...input.steps.map((step) => step.date), ...input.bench.map((one) => one.date)].sort();
  const [first] = work;
  const last = work.at(-1);
  const closed = input.closed
    .map((one) => one.date)
    .filter((day) => first !== undefined && last !== undefined && day >= first && day <= last);
  return [...new Set([...work, ...closed])].sort().map((day) => marksOf(day, input));
};

const weeksOf = (year: number, month: number, input: PictureInput): readonly (readonly (DayMarks | undefined)[])[] => {
  const first = dayOf(year, month, 1);
  if (first === undefined) return [];
  const order = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
  const lead = (order.indexOf(weekdayOf(first)) + (input.dayFirst ? 0 : 1)) % 7;
  const weeks: (DayMarks | undefined)[][] = [];
  for (let start = addDays(first, -lead); start < first || monthOf(start) === month; start = addDays(start, 7))
    weeks.push(
      Array.from({ length: 7 }, (_, index) => addDays(start, index)).map((day) =>
        monthOf(day) === month ? marksOf(day, input) : undefined,
      ),
    );
  return weeks;
};

const present = (days: readonly (DayMarks | undefined)[]): readonly DayMarks[] => days.filter((day) => day !== undefined);

const squeezed = (weeks: readonly (readonly (DayMarks | undefined)[])[]): readonly PictureWeek[] => {
  const rows: PictureWeek[] = [];
  for (const days of weeks) {
    const inMonth = present(days);
    const [first] = inMonth;
    const last = inMonth.at(-1);
    const before = rows.at(-1);
    if (first === undefined || last === undefined || inMonth.some(holdsWork)) rows.push({ week: 'drawn', days });
    else if (before?.week === 'quiet') rows[rows.length - 1] = { ...before, to: last.day };
    else rows.push({ week: 'quiet', from: first.day, to: last.day });
  }
  return rows;
};

/** The months from the first marked day to the last. One month is drawn whole; longer plans lose the quiet weeks at their ends and have the others squeezed. */
export const pictureMonths = (input: PictureInput): readonly PictureMonth[] => {
  const marked = markedDays(input);
  const from = marked[0]?.day ?? input.eventDay;
  const to = marked.at(-1)?.day ?? input.eventDay;
  const months: PictureMonth[] = [];
  for (let year = yearOf(from), month = monthOf(from); year * 12 + month <= yearOf(to) * 12 + monthOf(to); ) {
    const weeks = weeksOf(year, month, input);
    months.push({ year, month, weeks: weeks.map((days) => ({ week: 'drawn', days })) });
    [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
  }
  if (months.length <= 1) return months;
  return months.map(({ year, month }, index) => {
    const weeks = squeezed(weeksOf(year, month, input));
    const before = index === 0 && weeks[0]?.week === 'quiet' ? 1 : 0;
    const after = index === months.length - 1 && weeks.at(-1)?.week === 'quiet' ? 1 : 0;
    return { year, month, weeks: weeks.slice(before, weeks.length - after) };
  });
};
