// How lists are typed in the studio form: bench hours by weekday, and closed days.

import { parseDay, type Weekday, weekdays } from '../../values/day.ts';

/** Shows a stored value as it is typed, and reads what was typed; undefined when it cannot be read. */
export interface Typed {
  show(value: unknown): string;
  read(text: string): unknown;
  readonly wrong: string;
}

type Hours = { [day in Weekday]?: number };

const weekdayFrom = (word: string): number => (word.length < 3 ? -1 : weekdays.findIndex((day) => day.startsWith(word)));

/** "mon-fri 6, sat 4.5": ranges may run over the weekend. */
const readHours = (text: string): Hours | undefined => {
  const hours: Hours = {};
  for (const part of text.toLowerCase().split(/[,;\n]+/)) {
    if (part.trim() === '') continue;
    const match = /^\s*([a-z]+)(?:\s*(?:-|–|to)\s*([a-z]+))?\s*:?\s*(\d{1,2}(?:\.\d{1,2})?)\s*(?:h|hours?)?\s*$/.exec(part);
    const first = weekdayFrom(match?.[1] ?? '');
    const last = match?.[2] === undefined ? first : weekdayFrom(match[2]);
    const number = Number(match?.[3]);
    if (!match || first < 0 || last < 0 || number > 24) return undefined;
    for (let at = first; ; at = (at + 1) % 7) {
      const day = weekdays[at];
      if (day === undefined || hours[day] !== undefined) return undefined;
      hours[day] = number;
      if (at === last) break;
    }
  }
  return hours;
};

/** Neighbouring days with the same hours together. */
const showHours = (value: unknown): string => {
  const hours = (value ?? {}) as Hours;
  const runs: { first: Weekday; last: Weekday; number: number }[] = [];
  weekdays.forEach((day, place) => {
    const number = hours[day];
    const run = runs.at(-1);
    if (number === undefined) return;
    if (run?.number === number && run.last === weekdays[place - 1]) run.last = day;
    else runs.push({ first: day, last: day, number });
  });
  const short = (day: Weekday): string => day.slice(0, 3);
  return runs.map(({ first, last, number }) => `${short(first)}${first === last ? '' : `-${short(last)}`} ${number}`).join(', ');
};

export const hoursByWeekday: Typed = {
  show: showHours,
  read: readHours,
  wrong: 'Weekdays with hours from 0 to 24, each day once, like: mon-fri 6, sat 4.',
};

export const closedDays: Typed = {
  show: (value) => (Array.isArray(value) ? value.join(', ') : ''),
  read: (text) => {
    const days = text.split(/[\s,;]+/).filter((day) => day !== '');
    return days.every((day) => parseDay(day) !== undefined) ? [...new Set(days)].sort() : undefined;
  },
  wrong: 'Dates like 2027-04-02, with commas between them.',
};
