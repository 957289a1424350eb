// Days people call by name instead of by number. Fixed rules only; a feast that follows another calendar is asked about.

import { addDays, type Day, dayOf } from '../../values/day.ts';
import { easterSunday, nthWeekday, weekdaysOfMonth } from './calendar-sums.ts';

type DayIn = (year: number, region: string) => readonly (Day | undefined)[];

const fixed =
  (month: number, day: number): DayIn =>
  (year) => [dayOf(year, month, day)];
const easter =
  (days: number): DayIn =>
  (year) => [addDays(easterSunday(year), days)];
const nth =
  (month: number, weekday: number, count: number): DayIn =>
  (year) => [nthWeekday(year, month, weekday, count)];

// Mothering Sunday in Britain and Ireland, the second Sunday of May elsewhere. "Mother's day" is said of either, so there it is asked.
const motheringSunday: DayIn = (year) => [addDays(easterSunday(year), -21)];
const mothersDay: DayIn = (year, region) =>
  region === 'GB' || region === 'IE' ? [addDays(easterSunday(year), -21), nthWeekday(year, 5, 7, 2)] : [nthWeekday(year, 5, 7, 2)];
const fathersDay: DayIn = (year, region) =>
  region === 'AU' || region === 'NZ' ? [nthWeekday(year, 9, 7, 1)] : [nthWeekday(year, 6, 7, 3)];
const thanksgiving: DayIn = (year, region) => (region === 'CA' ? [nthWeekday(year, 10, 1, 2)] : [nthWeekday(year, 11, 4, 4)]);

// The first Monday of September in North America, the fourth of October in New Zealand. Australia's states differ, so there every one is asked.
const labourDay: DayIn = (year, region) =>
  region === 'NZ'
    ? [nthWeekday(year, 10, 1, 4)]
    : region === 'AU'
      ? [nthWeekday(year, 3, 1, 1), nthWeekday(year, 3, 1, 2), nthWeekday(year, 5, 1, 1), nthWeekday(year, 10, 1, 1)]
      : [nthWeekday(year, 9, 1, 1)];

/** Monday bank holidays outside Easter, by month: two in one month must be asked about. */
export const bankHolidayMondays = (year: number, month: number, region: string): readonly Day[] => {
  const mondays = weekdaysOfMonth(year, month, 1);
  const pick = (...places: number[]): Day[] => places.flatMap((place) => mondays.at(place) ?? []);
  if (region === 'IE') return month === 5 || month === 6 || month === 8 || month === 2 ? pick(0) : month === 10 ? pick(-1) : [];
  if (month === 5) return pick(0, -1);
  return month === 8 ? pick(-1) : [];
};

/** [what people call it, the day or days it can be] */
export const namedDays: readonly (readonly [string, DayIn])[] = [
  ['good friday', easter(-2)],
  ['easter saturday', easter(-1)],
  ['easter sunday', easter(0)],
  ['easter sat', easter(-1)],
  ['easter sun', easter(0)],
  ['easter mon', easter(1)],
  ['good fri', easter(-2)],
  ['easter monday', easter(1)],
  ['easter day', easter(0)],
  ['palm sunday', easter(-7)],
  ['maundy thursday', easter(-3)],
  ['shrove tuesday', easter(-47)],
  ['pancake day', easter(-47)],
  ['ash wednesday', easter(-46)],
  ['easter weekend', (year) => [-1, 0].map((days) => addDays(easterSunday(year), days))],
  ['easter', (year) => [-1, 0].map((days) => addDays(easterSunday(year), days))],
  ['whit monday', easter(50)],
  ['christmas eve', fixed(12, 24)],
  ['xmas eve', fixed(12, 24)],
  ['christmas day', fixed(12, 25)],
  ['xmas day', fixed(12, 25)],
  ['boxing day', fixed(12, 26)],
  ["st stephen's day", fixed(12, 26)],
  ["new year's eve", fixed(12, 31)],
  ['new years eve', fixed(12, 31)],
  ['nye', fixed(12, 31)],
  ['hogmanay', fixed(12, 31)],
  ["new year's day", fixed(1, 1)],
  ['new years day', fixed(1, 1)],
  ["valentine's day", fixed(2, 14)],
  ['valentines day', fixed(2, 14)],
  ["valentine's", fixed(2, 14)],
  ['valentines', fixed(2, 14)],
  ['valentine day', fixed(2, 14)],
  ['vday', fixed(2, 14)],
  ["st patrick's day", fixed(3, 17)],
  ['st patricks day', fixed(3, 17)],
  ["paddy's day", fixed(3, 17)],
  ['paddys day', fixed(3, 17)],
  ["st paddy's day", fixed(3, 17)],
  ["st paddy's", fixed(3, 17)],
  ["st david's day", fixed(3, 1)],
  ["st george's day", fixed(4, 23)],
  ["st andrew's day", fixed(11, 30)],
  ['burns night', fixed(1, 25)],
  ['anzac day', fixed(4, 25)],
  ['australia day', fixed(1, 26)],
  ['aus day', fixed(1, 26)],
  ['melbourne cup day', nth(11, 2, 1)],
  ['cup day', nth(11, 2, 1)],
  ['waitangi day', fixed(2, 6)],
  ['waitangi', fixed(2, 6)],
  ['canada day', fixed(7, 1)],
  ['independence day', (year, region) => [region === 'IN' ? dayOf(year, 8, 15) : dayOf(year, 7, 4)]],
  ['republic day', fixed(1, 26)],
  ['memorial day', nth(5, 1, -1)],
  ['labor day', nth(9, 1, 1)],
  ['presidents day', nth(2, 1, 3)],
  ["presidents' day", nth(2, 1, 3)],
  ['halloween', fixed(10, 31)],
  ['heritage day', fixed(9, 24)],
  ['freedom day', fixed(4, 27)],
  ['youth day', fixed(6, 16)],
  ["women's day", (year, region) => [region === 'ZA' ? dayOf(year, 8, 9) : dayOf(year, 3, 8)]],
  ['womens day', (year, region) => [region === 'ZA' ? dayOf(year, 8, 9) : dayOf(year, 3, 8)]],
  ['thanksgiving monday', nth(10, 1, 2)],
  ['thanksgiving thursday', nth(11, 4, 4)],
  ['thanksgiving', thanksgiving],
  ['victoria day', (year) => [weekdaysOfMonth(year, 5, 1).findLast((day) => day < (dayOf(year, 5, 25) ?? day))]],
  ['labour day', labourDay],
  ['family day', nth(2, 1, 3)],
  ['remembrance day', fixed(11, 11)],
  ['veterans day', fixed(11, 11)],
  ["veterans' day", fixed(11, 11)],
  ['juneteenth', fixed(6, 19)],
  ['columbus day', nth(10, 1, 2)],
  ['mlk day', nth(1, 1, 3)],
  ['day of reconciliation', fixed(12, 16)],
  ['day of goodwill', fixed(12, 26)],
  ['human rights day', fixed(3, 21)],
  ["workers' day", fixed(5, 1)],
  ['workers day', fixed(5, 1)],
  ['whit sunday', easter(49)],
  ['pentecost', easter(49)],
  ['ascension day', easter(39)],
  ['mardi gras', easter(-47)],
  ['st john the baptist day', fixed(6, 24)],
  ["st brigid's day", fixed(2, 1)],
  ["galentine's day", fixed(2, 13)],
  ["galentine's", fixed(2, 13)],
  ['galentines', fixed(2, 13)],
  ["mother's day", mothersDay],
  ['mothers day', mothersDay],
  ['mothering sunday', motheringSunday],
  ['uk mothers day', motheringSunday],
  ["uk mother's day", motheringSunday],
  ["father's day", fathersDay],
  ['fathers day', fathersDay],
  ['may day', fixed(5, 1)],
  ['bonfire night', fixed(11, 5)],
  ['christmas', fixed(12, 25)],
  ['xmas', fixed(12, 25)],
  ['leap day', fixed(2, 29)],
  ['early may bank holiday', (year) => [weekdaysOfMonth(year, 5, 1)[0]]],
  ['may day bank holiday', (year) => [weekdaysOfMonth(year, 5, 1)[0]]],
  ['spring bank holiday', (year) => [weekdaysOfMonth(year, 5, 1).at(-1)]],
  ['august bank holiday', (year, region) => [region === 'IE' ? weekdaysOfMonth(year, 8, 1)[0] : weekdaysOfMonth(year, 8, 1).at(-1)]],
  ['summer bank holiday', (year) => [weekdaysOfMonth(year, 8, 1).at(-1)]],
  ['october bank holiday', (year) => [weekdaysOfMonth(year, 10, 1).at(-1)]],
  ['june bank holiday', (year) => [weekdaysOfMonth(year, 6, 1)[0]]],
];
