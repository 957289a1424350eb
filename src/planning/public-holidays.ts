// Public holidays of a studio's region, by year, read once per region and year. Banks' holidays count: couriers and markets rest on them too.
// The dates are the date-holidays project's (ISC and CC BY 3.0).

import Holidays from 'date-holidays';
import { type Day, parseDay } from '../values/day.ts';
import { dayNumber } from './day-number.ts';

const regions = new Map<string, Holidays>();
const years = new Map<string, ReadonlyMap<number, string>>();

const regionOf = (country: string, subdivision: string | undefined): Holidays => {
  const key = `${country}/${subdivision ?? ''}`;
  const known = regions.get(key);
  if (known) return known;
  const options = { types: ['public' as const, 'bank' as const] };
  const region = subdivision === undefined ? new Holidays(country, options) : new Holidays(country, subdivision, options);
  regions.set(key, region);
  return region;
};

/** Day number to the holiday's name, for whole days only. A region the library doesn't know has none. */
export const publicHolidays = (country: string, subdivision: string | undefined, year: number): ReadonlyMap<number, string> => {
  const key = `${country}/${subdivision ?? ''}/${year}`;
  const known = years.get(key);
  if (known) return known;
  const found = new Map<number, string>();
  for (const holiday of regionOf(country, subdivision).getHolidays(year) ?? []) {
    const day: Day | undefined = parseDay(holiday.date.slice(0, 10));
    if (!day || !holiday.date.includes(' 00:00:00')) continue; // from some hour on: the bench has the morning
    const length = Math.max(1, Math.round((holiday.end.getTime() - holiday.start.getTime()) / 86_400_000));
    for (let more = 0; more < length; more += 1) found.set(dayNumber(day) + more, holiday.name);
  }
  years.set(key, found);
  return found;
};
