// Days people call by name instead of by number. Fixed rules only; a feast that follows another calendar is asked about.
// An apostrophe stands for all the ways people leave it out, "st" for "saint" and "st." too.

import { addDays, type Day, dayOf } from '../../values/day.ts';
import { easterSunday, nthWeekday, weekdaysOfMonth } from './calendar-sums.ts';

export type DaysIn = (year: number, region: string) => readonly (Day | undefined)[];

const fixed =
  (month: number, day: number): DaysIn =>
  (year) => [dayOf(year, month, day)];
const easter =
  (...days: number[]): DaysIn =>
  (year) =>
    days.map((each) => addDays(easterSunday(year), each));
const nth =
  (month: number, weekday: number, count: number): DaysIn =>
  (year) => [nthWeekday(year, month, weekday, count)];
/** The Monday nearest to a date: the anniversary days of New Zealand's provinces. */
const mondayNear =
  (month: number, day: number): DaysIn =>
  (year) =>
    [-3, -2, -1, 0, 1, 2, 3]
      .map((by) => addDays(dayOf(year, month, day) as Day, by))
      .filter((each) => weekdaysOfMonth(year, Number(each.slice(5, 7)), 1).includes(each));

// Mothering Sunday in Britain and Ireland, the second Sunday of May elsewhere. "Mother's day" is said of either, so there it is asked.
const motheringSunday = easter(-21);
const mothersDay: DaysIn = (year, region) =>
  region === 'GB' || region === 'IE' ? [addDays(easterSunday(year), -21), nthWeekday(year, 5, 7, 2)] : [nthWeekday(year, 5, 7, 2)];
const fathersDay: DaysIn = (year, region) =>
  region === 'AU' || region === 'NZ' ? [nthWeekday(year, 9, 7, 1)] : [nthWeekday(year, 6, 7, 3)];
const thanksgiving: DaysIn = (year, region) => (region === 'CA' ? [nthWeekday(year, 10, 1, 2)] : [nthWeekday(year, 11, 4, 4)]);

// The first Monday of September in North America, the fourth of October in New Zealand. Australia's states differ, so there every one is asked.
const labourDay: DaysIn = (year, region) =>
  region === 'NZ'
    ? [nthWeekday(year, 10, 1, 4)]
    : region === 'AU'
      ? [nthWeekday(year, 3, 1, 1), nthWeekday(year, 3, 1, 2), nthWeekday(year, 5, 1, 1), nthWeekday(year, 10, 1, 1)]
      : [nthWeekday(year, 9, 1, 1)];
// The first Monday of June in New Zealand, the second in most of Australia.
const kingsBirthday: DaysIn = (year, region) =>
  (region === 'NZ' ? [1] : region === 'AU' ? [2] : [1, 2]).map((place) => nthWeekday(year, 6, 1, place));
const womensDay: DaysIn = (year, region) => [region === 'ZA' ? dayOf(year, 8, 9) : dayOf(year, 3, 8)];
const victoriaDay: DaysIn = (year) => [weekdaysOfMonth(year, 5, 1).findLast((day) => day < (dayOf(year, 5, 25) ?? day))];
// Te Kāhui o Matariki Public Holiday Act 2022 (New Zealand), Schedule 1.
const matarikiDays = ['2026-07-10', '2027-06-25', '2028-07-14', '2029-07-06', '2030-06-21'] as Day[];
const matariki: DaysIn = (year) => matarikiDays.filter((day) => day.startsWith(String(year)));

/** Monday bank holidays outside Easter, by month: two in one month must be asked about. */
export const bankHolidayMondays = (year: number, month: number, region: string): readonly Day[] => {
  const mondays = weekdaysOfMonth(year, month, 1);
  const pick = (...places: number[]): Day[] => places.flatMap((place) => mondays.at(place) ?? []);
  if (region !== 'IE' && month === 5) return pick(0, -1);
  if (region !== 'IE' && month === 8) return pick(-1);
  return month === 5 || month === 6 || month === 8 || month === 2 ? pick(0) : month === 10 ? pick(-1) : [];
};

const list: readonly (readonly [string, DaysIn])[] = [
  ['good friday, good fri', easter(-2)],
  ['easter saturday, easter sat, holy saturday', easter(-1)],
  ['easter sunday, easter sun, easter day', easter(0)],
  ['easter monday, easter mon', easter(1)],
  ['easter', easter(-1, 0)],
  ['easter bank holiday monday, easter bank hol monday', easter(1)],
  ['easter bank holiday, easter bank hol', easter(-2, 1)],
  ['palm sunday', easter(-7)],
  ['maundy thursday, holy thursday', easter(-3)],
  ['shrove tuesday, pancake day, pancake tuesday, mardi gras, fat tuesday', easter(-47)],
  ['ash wednesday', easter(-46)],
  ['ascension day', easter(39)],
  ['whit sunday, pentecost, pentecost sunday', easter(49)],
  ['whit monday', easter(50)],
  ['trinity sunday', easter(56)],
  ['christmas eve eve, xmas eve eve', fixed(12, 23)],
  ['christmas eve, xmas eve, chrissy eve', fixed(12, 24)],
  ['christmas day, xmas day, chrissy day, christmas, xmas, crimbo', fixed(12, 25)],
  ["boxing day, st stephen's day, stephen's day, day of goodwill, goodwill day", fixed(12, 26)],
  ["new year's eve, nye, hogmanay, old year's night", fixed(12, 31)],
  ["new year's day, nyd", fixed(1, 1)],
  ["new year's", (year) => [dayOf(year, 12, 31), dayOf(year + 1, 1, 1)]],
  ['epiphany', fixed(1, 6)],
  ["valentine's day, valentine's, vday, v day, val's day", fixed(2, 14)],
  ["galentine's day, galentine's", fixed(2, 13)],
  ["st patrick's day, patrick's day, paddy's day, st paddy's day, st paddy's, st pat's day, st patty's day, patty's day", fixed(3, 17)],
  ["st david's day", fixed(3, 1)],
  ["st george's day", fixed(4, 23)],
  ["st andrew's day", fixed(11, 30)],
  ["st brigid's day", fixed(2, 1)],
  ['burns night', fixed(1, 25)],
  ['anzac day', fixed(4, 25)],
  ['australia day, aus day, aussie day, straya day', fixed(1, 26)],
  ['melbourne cup day, melbourne cup, cup day', nth(11, 2, 1)],
  ["king's birthday, queen's birthday, king's bday, queen's bday", kingsBirthday],
  ['canberra day, adelaide cup day', nth(3, 1, 2)],
  ['waitangi day, waitangi', fixed(2, 6)],
  ['matariki day, matariki', matariki],
  ['auckland anniversary day, auckland anniversary', mondayNear(1, 29)],
  ['wellington anniversary day, wellington anniversary', mondayNear(1, 22)],
  ['canada day', fixed(7, 1)],
  ['victoria day', victoriaDay],
  ['civic holiday, bc day', nth(8, 1, 1)],
  ['st john the baptist day, st jean baptiste day, st jean baptiste, st jean', fixed(6, 24)],
  ['truth and reconciliation day, day for truth and reconciliation, orange shirt day', fixed(9, 30)],
  ['independence day', (year, region) => [region === 'IN' ? dayOf(year, 8, 15) : dayOf(year, 7, 4)]],
  ['republic day', fixed(1, 26)],
  ['gandhi jayanti', fixed(10, 2)],
  ['memorial day', nth(5, 1, -1)],
  ['labor day', nth(9, 1, 1)],
  ['labour day, labour weekend', labourDay],
  ["president's day, washington's birthday", nth(2, 1, 3)],
  ['mlk day, mlk jr day, martin luther king day, martin luther king jr day', nth(1, 1, 3)],
  ["patriot's day", nth(4, 1, 3)],
  ['juneteenth', fixed(6, 19)],
  ['flag day', fixed(6, 14)],
  ["columbus day, indigenous people's day, thanksgiving monday, canadian thanksgiving", nth(10, 1, 2)],
  ['thanksgiving thursday, american thanksgiving, us thanksgiving', nth(11, 4, 4)],
  ['thanksgiving day, thanksgiving, turkey day', thanksgiving],
  ['black friday', (year) => [nthWeekday(year, 11, 4, 4)].map((day) => day && addDays(day, 1))],
  ["veteran's day, remembrance day, armistice day", fixed(11, 11)],
  ['remembrance sunday', nth(11, 7, 2)],
  ['cinco de mayo', fixed(5, 5)],
  ["halloween, hallowe'en, all hallow's eve", fixed(10, 31)],
  ["all saint's day", fixed(11, 1)],
  ["all soul's day", fixed(11, 2)],
  ["bonfire night, guy fawkes night, guy fawkes day, guy fawkes, fireworks night, guy's fawkes", fixed(11, 5)],
  ['heritage day, braai day', fixed(9, 24)],
  ['freedom day', fixed(4, 27)],
  ['youth day', fixed(6, 16)],
  ['human rights day', fixed(3, 21)],
  ['day of reconciliation, reconciliation day', fixed(12, 16)],
  ['mandela day', fixed(7, 18)],
  ["national women's day", fixed(8, 9)],
  ["international women's day, iwd", fixed(3, 8)],
  ["women's day", womensDay],
  ['family day', (year, region) => (region === 'ZA' ? [addDays(easterSunday(year), 1)] : [nthWeekday(year, 2, 1, 3)])],
  ["worker's day, may day", fixed(5, 1)],
  ["mothering sunday, uk mother's day, british mother's day, irish mother's day", motheringSunday],
  ["us mother's day, american mother's day, aussie mother's day", nth(5, 7, 2)],
  ["mother's day, mum's day, mom's day", mothersDay],
  ["father's day, dad's day", fathersDay],
  ["april fool's day, april fool's", fixed(4, 1)],
  ['earth day', fixed(4, 22)],
  ['leap day', fixed(2, 29)],
  ['may day bank holiday, may day bank hol', nth(5, 1, 1)],
  ['spring bank holiday, spring bank hol, whit bank holiday', nth(5, 1, -1)],
  ['summer bank holiday, summer bank hol', nth(8, 1, -1)],
];

/** [what people call it, the day or days it can be]; longer names first, as one may begin with another. */
export const namedDays: readonly (readonly [string, DaysIn])[] = list
  .flatMap(([names, days]) => names.split(', ').map((name): [string, DaysIn] => [name, days]))
  .sort(([a], [b]) => b.split(' ').length - a.split(' ').length);
