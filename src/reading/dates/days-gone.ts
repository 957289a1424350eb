// "spoke to bride 18 jan, wedding 20 march", "booked 12 jan for 20 march": a day that has just gone by, and no event's next year.

import { addDays } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { DateRead } from './date-read.ts';

const happened = pattern(
  '(spoke|spoken|talked|booked|rang|called|phoned|emailed|email|emails|mail|dm|txt|txted|text|texted|message|messaged|msg|letter|sent|paid|met|visited|came|quoted|quote|chat|chatted|dated|enquired|enquiry|inquiry|ordered|confirmed|invoiced|received|signed|deposit|contract|note|notes) (<word>){0,4} (on|of|from|dated|,|the|\\(){0,2}',
);
// These are told of no day to come.
const spoken =
  /^(spoke|spoken|talked|rang|called|phoned|emailed|txted|texted|messaged|sent|paid|met|visited|came|chatted|enquired|received|signed)$/;
const reach = 9;
const justGone = 300; // a day so far ahead, with no year said, was one of the last weeks

/** Whether the day tells when something was said or paid, beside one that is still to come. */
export const hasGoneBy = ({ tokens, context }: Reader, read: DateRead, all: readonly DateRead[]): boolean => {
  const [day] = read.days;
  if (read.yearAssumed !== true || day === undefined || day < addDays(context.today, justGone)) return false;
  // "booked in for 12 jan"
  if (tokens[read.start - 1]?.text === 'for') return false;
  const alone = !all.some((other) => other !== read && other.days.length > 0);
  for (let start = Math.max(0, read.start - reach); start < read.start; start++)
    if (happened.at(tokens, start, read.start)?.end === read.start) return !alone || spoken.test(tokens[start]?.text ?? '');
  return false;
};
