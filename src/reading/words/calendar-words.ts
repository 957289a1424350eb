// Months and weekdays as people shorten them.

import { weekdays } from '../../values/day.ts';
import { wordList } from './word-list.ts';

const monthNames = wordList(`
  january, february, march, april, may, june, july, august, september, october, november, december
`);
const oddMonths: Readonly<Record<string, number>> = {
  sept: 9,
  febuary: 2,
  feburary: 2,
  janurary: 1,
  agust: 8,
  setember: 9,
  novemeber: 11,
  decemeber: 12,
  ocotber: 10,
};
const oddWeekdays: Readonly<Record<string, number>> = {
  tues: 2,
  weds: 3,
  wednes: 3,
  thur: 4,
  thurs: 4,
  thu: 4,
  satur: 6,
  saterday: 6,
  wensday: 3,
  wednsday: 3,
  satday: 6,
  tue: 2,
  saturdy: 6,
  sunady: 7,
  firday: 5,
};

/** [word, month number as text] */
export const monthWords: readonly (readonly [string, string])[] = [
  ...monthNames.flatMap((name, index): [string, string][] => [
    [name, String(index + 1)],
    [name.slice(0, 3), String(index + 1)],
  ]),
  ...Object.entries(oddMonths).map(([word, month]): [string, string] => [word, String(month)]),
];

/** [word, weekday number as text], Monday is 1. */
export const weekdayWords: readonly (readonly [string, string])[] = [
  ...weekdays.flatMap((name, index): [string, string][] => [
    [name, String(index + 1)],
    [`${name}s`, String(index + 1)],
    [`${name}'s`, String(index + 1)],
    [name.slice(0, 3), String(index + 1)],
  ]),
  ...Object.entries(oddWeekdays).map(([word, day]): [string, string] => [word, String(day)]),
];
