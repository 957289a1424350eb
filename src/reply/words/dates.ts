// Dates as people read them, always with the weekday so that a slip is seen: "Sun 14 March 2027", "Tue 9 March".

import { type Day, dayOfMonth, monthOf, weekdayOf, yearOf } from '../../values/day.ts';
import { grouped } from './counts.ts';

const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];
const shortDays = {
  monday: 'Mon',
  tuesday: 'Tue',
  wednesday: 'Wed',
  thursday: 'Thu',
  friday: 'Fri',
  saturday: 'Sat',
  sunday: 'Sun',
} as const;

export interface DateStyle {
  readonly dayFirst: boolean;
}

export const monthName = (month: number): string => months[month - 1] ?? '';

/** Without the year: for days near an event whose year was just said. */
export const shortDate = (day: Day, { dayFirst }: DateStyle): string => {
  const weekday = shortDays[weekdayOf(day)];
  const month = monthName(monthOf(day));
  return dayFirst ? `${weekday} ${dayOfMonth(day)} ${month}` : `${weekday} ${month} ${dayOfMonth(day)}`;
};

export const fullDate = (day: Day, style: DateStyle): string => `${shortDate(day, style)} ${yearOf(day)}`;

/** "3 h 20 min", "45 min", "10 h", "1,824 h 58 min". Whole minutes. */
export const duration = (minutes: number): string => {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${grouped(hours)} h` : `${grouped(hours)} h ${rest} min`;
};

/** Time for one piece: below an hour to a tenth of a minute, "7.5 min", and from there as every duration, "1 h 15 min". */
export const paceWords = (minutes: number): string =>
  minutes < 60 && !Number.isInteger(minutes) ? `${Math.round(minutes * 10) / 10} min` : duration(minutes);
