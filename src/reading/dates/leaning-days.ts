// A bare weekday beside a whole date: "pick up friday 12 march, wedding saturday" is the 13th, "wedding sat 13 march, collecting friday" the 12th.

import { addDays, type Day } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { firstWhere } from '../text/token.ts';
import { besideOccasions, occasions } from '../words/occasion-words.ts';
import { comingWeekday, weekdayNumber } from './calendar-sums.ts';
import { dateAt } from './date-forms.ts';
import type { DateRead } from './date-read.ts';
import { ofWhat } from './of-what.ts';

const longAhead = 300; // such a day, with no year said, has just gone by
const bare = pattern('(on|the|this|is|for){0,2} <w:weekday>');
const eventBefore = pattern(
  `(${occasions.join('|')}|ball|dance|do|big day|marrying|married) (is|is on|itself|day|on|the|proper|:|-|,){0,3}`,
);
const eventBehind = pattern(`(${occasions.join('|')}|ball|dance)`);
const readyBefore = pattern(
  `(setup|set up|set-up|bump in|rehearsal|rehearsal dinner|load in|install|trial|prep|${besideOccasions.join('|')}) (ceremony|do|night|party|is|is on|day|on|the|:|-|,){0,3}`,
);

const opens = (reader: Reader, read: DateRead, form: typeof bare): boolean =>
  [1, 2, 3, 4].some((by) => form.at(reader.tokens, read.start - by, read.start)?.end === read.start);
const ofEvent = (reader: Reader, read: DateRead): boolean =>
  opens(reader, read, eventBefore) || eventBehind.at(reader.tokens, read.end, reader.tokens.length) !== undefined;

const weekdayOnly = (reader: Reader, read: DateRead): number | undefined => {
  const match = bare.at(reader.tokens, read.start, read.end);
  return read.relative === true && match?.end === read.end ? Number(match.kept['w']?.means['weekday']) : undefined;
};

// "meeting fri 12 feb, wedding sat": a whole day that an earlier phrase has set aside still tells which week is spoken of.
const setAside = ({ tokens, context, free }: Reader, before: number): DateRead | undefined => {
  for (let index = 0; index < before; index++) {
    const read = free(index) ? undefined : dateAt(tokens, index, context);
    if (read !== undefined && read.relative !== true && read.days.length === 1) return read;
  }
  return undefined;
};

/** The reads, with weekdays that stand beside the one whole date told by it. */
export const leaningDays = (reader: Reader, reads: readonly DateRead[]): readonly DateRead[] => {
  const slashed = (read: DateRead): boolean =>
    firstWhere(reader.tokens, read.start, read.end, ({ number }) => number?.form === 'slashed') >= 0;
  const [said, another] = reads.filter((read) => read.relative !== true || slashed(read));
  // "collecting fri 12th for a sat wedding": whichever month it is, the saturday is the one after.
  const open = said === undefined ? reads.find((read) => read.why === 'which month' && ofWhat(reader, read) === 'hand over') : undefined;
  if (open !== undefined)
    return reads.map((read) => {
      const weekday = ofEvent(reader, read) ? weekdayOnly(reader, read) : undefined;
      const { start, end } = read;
      return weekday === undefined
        ? read
        : { start, end, days: open.days.map((each) => comingWeekday(each, weekday, true)), why: 'which day', relative: true };
    });
  const whole = said ?? setAside(reader, reads[0]?.start ?? 0);
  const [day, other] = whole?.days ?? [];
  if (whole === undefined || day === undefined || other !== undefined || another !== undefined) return reads;
  const early = ofWhat(reader, whole) === 'hand over' || opens(reader, whole, readyBefore);
  const leant = (read: DateRead, on: Day): DateRead => ({
    start: read.start,
    end: read.end,
    days: [on],
    ...(whole.relative === undefined ? {} : { relative: whole.relative }),
    ...(whole.yearAssumed === undefined ? {} : { yearAssumed: whole.yearAssumed }),
  });
  return reads.map((read) => {
    const weekday = weekdayOnly(reader, read);
    if (weekday === undefined) return read;
    // "hens on 20 feb, wedding the saturday after": never the same day.
    if (early && ofEvent(reader, read) && reader.tokens[read.end]?.text === 'after')
      return { ...leant(read, comingWeekday(day, weekday)), end: read.end + 1 };
    if (early && ofEvent(reader, read)) return leant(read, comingWeekday(day, weekday, true));
    // "photographer fri 12 feb, wedding sat": whatever is on the whole day, the event may be in its week as well as in this one.
    const near = comingWeekday(day, weekday, true);
    const beside = !early && whole.start < read.start && opens(reader, read, eventBefore) && !ofEvent(reader, whole);
    if (beside && day < addDays(reader.context.today, longAhead) && !read.days.includes(near))
      return { start: read.start, end: read.end, days: [...read.days, near].sort(), why: 'which day' };
    // "wedding sat 13 march, collecting friday": the last one before it.
    if (!early && ofWhat(reader, read) === 'hand over' && ofWhat(reader, whole) === undefined && weekday !== weekdayNumber(day))
      return leant(read, addDays(comingWeekday(day, weekday), -7));
    return read;
  });
};
