// What reading a date gives: one day, several to ask about, or none because there is no such day.

import type { Day } from '../../values/day.ts';

export interface DateRead {
  readonly start: number;
  readonly end: number;
  /** One day when certain; two or more when it must be asked; none when there is no such day. */
  readonly days: readonly Day[];
  readonly why?: 'which month' | 'which day' | 'which date' | 'day or month first';
  readonly yearAssumed?: true;
  readonly orderAssumed?: true;
  /** Said without a month or a number: only a date where the words around it say so. */
  readonly relative?: true;
  readonly dayOnly?: number;
  readonly past?: true;
  /** The days of a week-end, a week or a month that was named: a weekday or a number elsewhere picks one of them. */
  readonly within?: readonly Day[];
  /** Of a day that does not exist, the last of its month and the one behind that: "june 31st". */
  readonly instead?: readonly Day[];
}
