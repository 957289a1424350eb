// Shifts told one after the other, each with its own hands, day and hours: "me 9-1 fri, jo 10-3 fri", "jo can do sat 4 hrs and me fri 9-3",
// "only Ruth working this saturday, 9am til 3pm no break". Read only when every word of the sentence is understood.

import { decimal } from '../../values/decimal.ts';
import { dateOutcome } from '../dates/date-facts.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { fewHours } from './open-hours.ts';
import { hoursOf } from './pace.ts';
import { clockSpan } from './shift-hours.ts';
import { does, whoAt } from './who-works.ts';

const opening = pattern("(ok|so|it's|its|it is|we have|we've got|weve got|got|there's|theres|also|,|:){0,3} (<o:word>)?");
const alone = /^(only|just)$/;
const joint = /^(,|and|&|n|\+|plus|then|;|but)$/;
const works = /^(work|works|working|help|helps|helping|rostered|available|free|can|could|bench|shift)$/;
const tail = pattern(
  '((with|and|,)? no (break|breaks|lunch|lunch break|stops)|straight through|without (a)? (break|lunch)|(each|<each>)|max|tops|only|just|please|pls|\\))',
);
const politely = /^(please|pls|plz|thanks|thx|ok|x|,)$/;
// "me 3-1 fri" is no shift: from three to one.
const hoursMost = 14;

interface Shift {
  readonly people: number;
  readonly hours: number | undefined;
  readonly day: DateRead | undefined;
  readonly sure: boolean; // its words could tell of nothing but hands at work
  readonly isIn: boolean; // "Kel's in", "jo is on"
  readonly by: 'hours' | 'clock' | 'either' | undefined; // "4-5" may be either
  readonly again: boolean; // nobody is named: the hands before it
  readonly end: number;
}

const dayAt = (reader: Reader, index: number, end: number): DateRead | undefined => {
  const read = dateAt(reader.tokens, index, reader.context);
  return read !== undefined && read.end <= end && read.days.length > 0 ? read : undefined;
};

const shiftAt = (reader: Reader, from: number, end: number, before: Shift | undefined): Shift | undefined => {
  const { tokens } = reader;
  // "fri me 9-1, sat jo 10-3"
  const ahead = dayAt(reader, from, end);
  const opens = ahead === undefined ? from : ahead.end + (/^[:,-]$/.test(tokens[ahead.end]?.text ?? '') ? 1 : 0);
  const only = alone.test(tokens[opens]?.text ?? '');
  const name = only ? opens + 1 : opens;
  const who = whoAt(reader, name, end);
  // "me fri 9-3, sat 10-2": the same hands again.
  if (who === undefined && (before === undefined || only)) return undefined;
  const written = /^[A-Z]/.test(reader.words(name, name + 1));
  let isIn = false;
  let by: Shift['by'];
  let sure = who === undefined || who.sure || (only && written);
  let [hours, day, index]: [number | undefined, DateRead | undefined, number] = [undefined, ahead, who?.end ?? opens];
  while (index < end) {
    const token = tokens[index] as Token;
    const named: DateRead | undefined = day === undefined ? dayAt(reader, index, end) : undefined;
    const span: { hours: number; end: number } | undefined = hours === undefined ? clockSpan(tokens, index, end) : undefined;
    if (named !== undefined) {
      day = named;
      index = named.end;
    } else if (span !== undefined) {
      // "sat for 5-6"
      if (tokens[index - 1]?.text === 'for' && token.number?.form === 'plain' && Number(token.number.max) <= fewHours) return undefined;
      hours = span.hours;
      by = token.number?.form === 'plain' && Number(token.number.max) <= fewHours ? 'either' : 'clock';
      for (let at = index; at < span.end && day === undefined; at++) day = dayAt(reader, at, span.end);
      index = span.end;
    } else if (hours === undefined && hoursOf(token) !== undefined) {
      hours = hoursOf(token);
      by = 'hours';
      index += 1;
    } else {
      const close: number = hours === undefined ? index : (tail.at(tokens, index, end)?.end ?? index);
      const goesOn = joint.test(token.text) && (hours !== undefined || (token.text !== ',' && day !== undefined));
      if (close > index) index = close;
      else if (goesOn || !does.test(token.text)) break;
      else {
        sure ||= works.test(token.text) || (token.text === 'in' && only);
        isIn ||= /^(in|on)$/.test(token.text) && who?.named === true && index - who.end < 2;
        index += 1;
      }
    }
  }
  if (hours !== undefined && !(hours >= 0.5 && hours <= hoursMost)) return undefined;
  return { people: who?.people ?? before?.people ?? 1, hours, by, day, sure, isIn, again: who === undefined, end: index };
};

const factOf = (shifts: readonly Shift[], date: string | undefined): Unworded => {
  const people = shifts.reduce((sum, shift) => sum + shift.people, 0);
  const total = shifts.reduce((sum, { people: hands, hours }) => sum.plus(decimal(hours ?? 0).times(hands)), decimal(0)).toNumber();
  const [first] = shifts;
  const alike = shifts.every(({ hours }) => hours === first?.hours);
  return {
    fact: 'crew',
    people,
    ...(alike && first?.hours !== undefined ? { hours: first.hours } : {}),
    ...(total === 0 ? {} : { totalHours: total }),
    ...(date === undefined ? {} : { date }),
  };
};

// "me 9 till 1 and the junior 9 till 3, thurs": the day of them all, behind the last.
const dayBehind = (reader: Reader, index: number, end: number): DateRead | undefined => {
  const { tokens } = reader;
  const from = /^(on|this|next|coming)$/.test(tokens[index]?.text ?? '') ? index + 1 : index;
  const day = dayAt(reader, index, end) ?? dayAt(reader, from, end);
  return day === undefined || firstWhere(tokens, day.end, end, ({ text }) => !politely.test(text)) >= 0 ? undefined : day;
};

/** What the sentence tells of who works when; held where a day may be one of two. */
export const shiftsTold = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  if (part.asked) return undefined;
  const opened = opening.at(tokens, part.start, part.end);
  let index = (opened?.end ?? part.start) - (opened?.kept['o'] === undefined ? 0 : 1);
  const shifts: Shift[] = [];
  while (index < part.end) {
    const shift = shiftAt(reader, index, part.end, shifts.at(-1));
    if (shift === undefined || shift.end === index) return undefined;
    const last = shifts.at(-1);
    const day = shift.day ?? last?.day;
    // "me and Bo sat, 9 to 12 then 1 to 4": the same hands on the same day, longer.
    const again = shift.again && last !== undefined && (last.day === undefined || last.day.days.join() === day?.days.join());
    if (again && last.hours !== undefined && shift.hours !== undefined)
      shifts[shifts.length - 1] = { ...last, day, hours: last.hours + shift.hours, end: shift.end };
    else shifts.push({ ...shift, day });
    index = shift.end;
    while (index < part.end && joint.test(tokens[index]?.text ?? '')) index += 1;
    const behind = shifts.length > 1 && shifts.every((each) => each.day === undefined) ? dayBehind(reader, index, part.end) : undefined;
    if (behind === undefined) continue;
    shifts[0] = { ...(shifts[0] as Shift), day: behind };
    break;
  }
  const timed = shifts.every(({ hours }) => hours !== undefined);
  // "me 3 hrs, jo 4-5": from four to five, or as many hours.
  if (shifts.some(({ by }) => by === 'either') && shifts.some(({ by }) => by === 'hours'))
    return { start: part.start, end: part.end, held: true };
  const [first] = shifts;
  // "Kel's in 9 to 1 tomorrow and Bron's in 10 to 2": two who are in, each by the clock.
  const bothIn = shifts.length > 1 && shifts.every(({ isIn, hours }) => isIn && hours !== undefined);
  if (first === undefined || !(bothIn || shifts.some(({ sure }) => sure))) return undefined;
  // "only ruth in sat"
  if (
    !timed &&
    !(shifts.length === 1 && first.day !== undefined && first.hours === undefined && alone.test(tokens[part.start]?.text ?? ''))
  )
    return undefined;
  const days = [...new Set(shifts.flatMap(({ day }) => (day === undefined ? [] : [day.days.join()])))];
  const one = shifts.find(({ day }) => day !== undefined)?.day;
  // "me 9-1, jo 10-3 fri": one day for both.
  if (one === undefined) return found(reader, part.start, part.end, [factOf(shifts, undefined)]);
  if (days.length === 1) return dateOutcome(reader, one, (date) => factOf(shifts, date), part.start, part.end);
  if (shifts.some(({ day }) => day?.days.length !== 1)) return { start: part.start, end: part.end, held: true };
  return found(
    reader,
    part.start,
    part.end,
    days.map((day) =>
      factOf(
        shifts.filter((shift) => shift.day?.days[0] === day),
        day,
      ),
    ),
  );
};
