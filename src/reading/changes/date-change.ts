// "date's moved to the 19th", "not the 14th, 21 March", "pushed back a week".

import { type Day, dayOf, monthOf, yearOf } from '../../values/day.ts';
import { byEvent, isEventDay } from '../dates/by-event.ts';
import { timeAt } from '../dates/clock-time.ts';
import { dateOutcome } from '../dates/date-facts.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { tellsOwnDay } from '../dates/days-of-others.ts';
import { dayCalledOff } from '../dates/days-off.ts';
import { oneAfter } from '../dates/one-after.ts';
import type { Fact } from '../fact.ts';
import { beginsAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { isNumber, type Token } from '../text/token.ts';
import { dayAhead, dayBesideOld, nearestTo, withDayAhead } from './beside-old-day.ts';
import { dayNotDay } from './beside-values.ts';
import { bareWords } from './change-words.ts';
import { isCountedFromAnother } from './counted-from-another.ts';
import { dateShift, shiftForms } from './date-shift.ts';
import { datesIn, monthOpen } from './dates-in.ts';
import { dayNumberNow } from './day-number-now.ts';
import { hoursBehindDay } from './hours-behind-day.ts';
import { marksChange } from './marks-change.ts';
import { hourOfHandOver, movesHour, oldOfSpan, timeChange } from './time-change.ts';
import type { Zones } from './two-zones.ts';
import { zonesOf } from './zones.ts';

// "not this sat, next sat": a day that is taken back is none of those to choose from.
const without = (read: DateRead, before: Day | undefined): DateRead => {
  const days = read.days.filter((day) => day !== before);
  const { why: _, ...rest } = read;
  return days.length === 1 && read.days.length === 2 ? { ...rest, days } : read;
};

const resolved = (reader: Reader, said: DateRead, before: Day | undefined, sure: boolean): DateRead => {
  const read = byEvent(reader, without(said, before), sure);
  const eventDate = before ?? reader.context.eventDate;
  if (read.dayOnly === undefined || eventDate === undefined) return read;
  const day = dayOf(yearOf(eventDate), monthOf(eventDate), read.dayOnly);
  if (day === undefined || day < reader.context.today) return read;
  const { why: _, ...rest } = read;
  return { ...rest, days: [day] };
};

const shiftFact = (days: number): Unworded => ({ fact: 'change', what: 'date', by: days });

const otherMoves =
  /^(ribbon|delivery|deliveries|van|meeting|fitting|tasting|drying|courier|flight|call|consult|interview|dentist|shift|shoot)$/;
const shifted = (reader: Reader, part: Part): Finding | undefined => {
  for (let index = part.start; index < part.end; index++) {
    if (!beginsAt(shiftForms, reader.tokens, index)) continue;
    const shift = dateShift(reader.tokens, index, part.end);
    // "put the ribbon order back a week": what moves is no event.
    if (shift !== undefined && isCountedFromAnother(reader, part.start, index)) return undefined;
    if (
      shift !== undefined &&
      reader.tokens.slice(part.start, index).some(({ means, text }) => means['ingredient'] !== undefined || otherMoves.test(text))
    )
      return undefined;
    // "moved back 2 weeks to the 27th feb": the day it comes to says it all.
    if (
      shift === undefined ||
      (reader.tokens[shift.match.end]?.text === 'to' && dateAt(reader.tokens, shift.match.end + 1, reader.context) !== undefined)
    )
      continue;
    if (shift.direction !== 0) return found(reader, index, shift.match.end, [shiftFact(shift.days * shift.direction)]);
    const words = reader.words(index, shift.match.end);
    const choice = (sign: 1 | -1) => ({
      words: sign === 1 ? `${shift.days} days later` : `${shift.days} days earlier`,
      facts: [{ ...shiftFact(shift.days * sign), words } as Fact],
    });
    const ask: Ask = { about: 'date', why: 'which date', words, choices: [choice(1), choice(-1)] };
    return { start: index, end: shift.match.end, asks: [ask] };
  }
  return undefined;
};

// "pickup moved to thursday": the day of handing over, and the event's own stays.
const handOver = pattern(
  "(pickup|pickups|pick-up|collection|collecting|collects|collect|delivery|deliver|delivering|pickup's|collection's|delivery's|handover|hand-over|handover's|(pick|picks|picking) up|(drop|dropping) off)",
);
const eventNamed = /^(event|wedding|ceremony|party|date|function|reception|formal|gala|do|big)('s)?$/;
const ofHandOver = ({ tokens }: Reader, { start, end }: Part): boolean =>
  handOver.in(tokens, start, end) !== undefined && !tokens.slice(start, end).some(({ text }) => eventNamed.test(text));

// "13th march is now the 20th", "6/3 now 13/3"
const becoming = pattern(
  "(,|-)? (is|has|was|have|'s)? (been|being)? (now|moved to|changed to|becomes|becoming|become|moves to|goes to|going to be|to be) (on|to|the)?",
);
const becomes = ({ tokens }: Reader, fresh: readonly DateRead[]): readonly [DateRead, DateRead] | undefined => {
  const [first, second, third] = fresh;
  if (first === undefined || second === undefined || third !== undefined || first.end >= second.start) return undefined;
  return becoming.at(tokens, first.end, second.start)?.end === second.start ? [first, second] : undefined;
};

const ofADay = (token: Token): boolean =>
  token.number !== undefined ||
  token.means['weekday'] !== undefined ||
  token.means['month'] !== undefined ||
  /^(today|tomorrow|day|date)$/.test(token.text);

export const dateChange = (reader: Reader, part: Part): Finding | undefined => {
  // "sat not sun, 14 each not 12": the rest is put right too.
  const only = dayNotDay.at(reader.tokens, part.start, part.end);
  if (only !== undefined && reader.tokens.slice(only.end, part.end).some((token) => isNumber(token, 'plain', 'money'))) return undefined;
  const moved = shifted(reader, part);
  const handing = ofHandOver(reader, part);
  // "pickup moved a day earlier": the event stays where it is, and from which day is not said.
  if (moved !== undefined) return handing ? { start: part.start, end: part.end, held: true } : moved;
  // "not this sat, the following sat" names one day, and takes back none that was said.
  for (let index = part.start; index < part.end; index++)
    if (oneAfter(reader.tokens, index, reader.context) !== undefined) return undefined;
  const off = dayCalledOff(reader, part);
  const zones =
    off === undefined
      ? zonesOf(reader.tokens, part.start, part.end)
      : { old: [off], fresh: [[part.start, off[0]] as const, [off[1], part.end] as const] };
  const saidOtherwise = marksChange(reader, part);
  const marked = zones.old.length > 0 || saidOtherwise || movesHour(reader, part);
  if (!marked || tellsOwnDay(reader.tokens) || hoursBehindDay(reader, part)) return undefined;
  const whole = zones.fresh.flatMap(([start, end]) => datesIn(reader, { start, end }));
  const [taken] = zones.old.flatMap(([start, end]) => datesIn(reader, { start, end }, true));
  const beside = whole.length > 0 ? whole : dayNumberNow(reader, part, taken);
  const fresh = beside.length > 0 ? beside : dayBesideOld(reader, part, taken);
  const turned = taken === undefined ? becomes(reader, fresh) : undefined;
  const ahead = taken === undefined && turned === undefined && saidOtherwise ? dayAhead(reader, part) : undefined;
  const old = taken ?? turned?.[0] ?? ahead;
  // "its the sunday not the sat, so 28 feb": the day that says most is meant.
  const [read, second] = turned?.slice(1) ?? fresh.toSorted((a, b) => Number(a.relative === true) - Number(b.relative === true));
  // "fri 12 feb set up, sat 13 wedding": two days and nothing taken back.
  if (second !== undefined && second.relative !== true && old === undefined) return undefined;
  // An hour of handing over that cannot be told is no price either: "client picking up at 4 not 3".
  const hour = read === undefined ? timeChange(reader, part, zones) : undefined;
  if (read === undefined) return hour ?? (hourOfHandOver(reader, part) ? { start: part.start, end: part.end, held: true } : undefined);
  // "Valentine's day, real flowers not silk": what is taken back is no day.
  if (!saidOtherwise && !zones.old.some(([from, to]) => reader.tokens.slice(from, to).some(ofADay))) return undefined;
  if (reader.tokens.slice(part.start, part.end).some((token) => token.means['bench'] !== undefined && token.text !== 'us'))
    return undefined;
  const about = reader.tokens.slice(part.start, part.end);
  // "20 done now, rest on friday" is no correction of the date.
  const dateWord = about.some((token) =>
    /^(date|date's|event|wedding|event's|moved|move|shift|shove|slide|switch|switched|day|party|ceremony|handover|it's|its|changed|shifted|rescheduled|postponed|pushed|brought|meant|not|sorry|actually|correction|should|make|change|that|no|instead|rather|swap|swapped)$/.test(
      token.text.replace(/(wedding|party|ceremony|do|handover)'s$/, '$1'),
    ),
  );
  if (
    (!dateWord && turned === undefined) ||
    about.some((token) => token.means['piece'] !== undefined && token.means['piece'] !== 'unspecified')
  )
    return undefined;
  // "nothing made today sorry": a day is not the event's new date unless the words are about a date.
  const about_ = about.some((token) =>
    /^(date|date's|event|wedding|event's|day|moved|move|shift|shove|slide|switch|switched|changed|shifted|rescheduled|postponed|pushed|brought|party|ceremony|handover|preponed)$/.test(
      token.text.replace(/(wedding|party|ceremony|do|handover)'s$/, '$1'),
    ),
  );
  const others = about.filter((_, at) => part.start + at < read.start || part.start + at >= read.end);
  const bare = others.every((token) => token.kind !== 'word' || bareWords.has(token.text));
  if (read.relative === true && read.dayOnly === undefined && !about_ && old === undefined && !bare) return undefined;
  const time = timeIn(reader, part, read, zones);
  const [named] = read.days;
  const oldDay =
    old?.dayOnly === undefined || named === undefined || monthOpen(reader.tokens, old, named)
      ? undefined
      : dayOf(yearOf(named), monthOf(named), old.dayOnly);
  const sameWay = old?.relative !== true || read.relative === true; // "the sunday, not the sat, so 28 feb" says no date for the saturday
  const sure = isEventDay(reader, old);
  const [from] = sure ? [reader.context.eventDate] : oldDay !== undefined ? [oldDay] : sameWay && old?.days.length === 1 ? old.days : [];
  const fact = (date: Day): Unworded =>
    handing
      ? { fact: 'date', date, ...(time === undefined ? {} : { time }), of: 'hand over' }
      : { fact: 'change', what: 'date', to: date, ...(from === undefined ? {} : { from }) };
  const day = resolved(reader, nearestTo(reader, read, old), old?.days.length === 1 ? old.days[0] : undefined, sure);
  const outcome = withDayAhead(dateOutcome(reader, day, fact, part.start, part.end), ahead, part);
  if (handing || time === undefined || outcome.facts === undefined) return outcome;
  return { ...outcome, facts: [...outcome.facts, { fact: 'change', what: 'time', to: time, words: reader.words(part.start, part.end) }] };
};

// "sat 13 march 2pm now 3pm", "13 march 2pm not 3pm": of two hours the one that holds.
const timeIn = (reader: Reader, part: Part, date: DateRead, zones: Zones): string | undefined => {
  let first: string | undefined;
  for (let index = part.start; index < part.end; index++) {
    if (index >= date.start && index < date.end) continue;
    const time = timeAt(reader, index, index >= date.end && index - date.end < 3);
    if (time === undefined || zones.old.some(([from, to]) => index >= from && index < to)) continue;
    if (oldOfSpan(reader.tokens, index, time.end, zones) !== undefined) continue;
    if (reader.tokens[index - 1]?.text === 'now') return time.time;
    first ??= time.time;
    index = time.end - 1;
  }
  return first;
};
