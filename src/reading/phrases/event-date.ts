// When the event is: "event 14 March", "sun 14 march", "Saturday fortnight", "wedding on the 27th" (asked). The weekday must agree.

import type { Day } from '../../values/day.ts';
import { isBareDate } from '../dates/bare-date.ts';
import { byEvent, leansOnUnknown } from '../dates/by-event.ts';
import { endOfHours, isHourOfDay, type TimeRead } from '../dates/clock-time.ts';
import { dateOutcome } from '../dates/date-facts.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { vetoes } from '../dates/date-words.ts';
import { withDayBefore } from '../dates/day-before.ts';
import { saysDayToCome } from '../dates/day-to-come.ts';
import { dayOfOthers, tellsOwnDay } from '../dates/days-of-others.ts';
import { handedOverAt, isHandOverHour, isOthersDelivery, namesOccasion } from '../dates/hand-over-hour.ts';
import { isHandsDay } from '../dates/hands-there.ts';
import { hoursNear } from '../dates/hours-near.ts';
import { isCompound, isLed, namesEvent } from '../dates/leads.ts';
import { leaningDays } from '../dates/leaning-days.ts';
import { withoutMailDays } from '../dates/mail-heads.ts';
import { mainHour } from '../dates/main-hour.ts';
import { isMarkGiven } from '../dates/marks-given.ts';
import { withMoreDays } from '../dates/more-days.ts';
import { opensWithNamedOccasion } from '../dates/named-occasion.ts';
import { isOfToday } from '../dates/of-today.ts';
import { ofWhat } from '../dates/of-what.ts';
import { otherDateForms } from '../dates/other-date-forms.ts';
import { eventDays } from '../dates/other-days.ts';
import { dayAlone } from '../dates/part-dates.ts';
import { withPickedDay } from '../dates/picked-days.ts';
import { withSheetHour } from '../dates/sheet-hours.ts';
import { takenByBoth } from '../dates/two-events.ts';
import { namesOnlyWork, plansWork, readyEarly } from '../dates/work-days.ts';
import { nextPiece } from '../names-pieces.ts';
import { isPriceSeries } from '../order/price-series.ts';
import { isPricesOrDay } from '../order/prices-or-day.ts';
import { allFree, type Finding, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { withoutOwner } from '../text/owners.ts';

// "bouts are done, corsages tomorrow": a day beside work is a working day.
const work = new Set<string>(['made', 'left', 'broke', 'crew', 'question', 'actual', 'step', 'pack', 'recipe', 'change']);
const working = (reader: Reader): boolean => reader.facts.some((fact) => work.has(fact.fact));

// "made 10 on monday 15 february": the day something was done is no event's day, however exactly it is given.
const done = new Set<string>(['made', 'left', 'broke', 'step']);
const dayOfWork = (reader: Reader, read: DateRead): boolean => {
  if (readyEarly(reader, read) || (!isLed(reader) && plansWork(reader, read))) return true;
  if (!reader.facts.some((fact) => done.has(fact.fact)) || isLed(reader) || tradeWords(reader)) return false;
  const part = reader.message.parts.find((each) => each.start <= read.start && read.start < each.end);
  return reader.tokens.slice(part?.start ?? 0, read.start).some((_, at) => !reader.free((part?.start ?? 0) + at));
};

// "40 bouts for friday": the order around it makes it the event's day.
const tradeWords = ({ tokens, free }: Reader): boolean => {
  for (let index = nextPiece(tokens, 0); index < tokens.length; index = nextPiece(tokens, index + 1))
    if (free(index) && tokens[index + 1]?.text !== 'of') return true;
  return false;
};

// A quote sheet: what stands on it beside the pieces has no day of its own.
const ordered = ({ facts }: Reader): boolean => facts.some((fact) => fact.fact === 'pieces' && fact.price !== undefined);

const vetoed = (reader: Reader, read: DateRead, all: readonly DateRead[]): boolean => {
  // "will get the date off her tomorrow": when we shall hear.
  const later = saysDayToCome(reader.tokens);
  if (read.relative === true && later !== undefined && later.start <= read.start && read.start < later.end) return true;
  if (isOfToday(reader, read) || isHandsDay(reader, read) || tellsOwnDay(reader.tokens) || dayOfOthers(reader, read, all)) return true;
  if (tradeWords(reader) || ordered(reader) || namesEvent(reader.tokens) || isCompound(reader.tokens) || opensWithNamedOccasion(reader))
    return false; // "40 bouts at 25 inc tax, 14 march"
  if (reader.tokens.some((token) => token.means['other'] !== undefined)) return true; // "table centres for thursday"
  const part = reader.message.parts.find((each) => each.start <= read.start && read.start < each.end);
  if (part === undefined) return false;
  for (let index = part.start; index < part.end; index++) {
    const token = reader.tokens[index];
    if (all.some((each) => each.start <= index && index < each.end)) continue; // "the bank holiday weekend"
    // "collection friday 5 march after lunch": a part of the day.
    const ahead = reader.tokens[index - 1]?.text ?? '';
    if (/^lunch(time)?$/.test(token?.text ?? '') && /^(after|before|by|around|till|until)$/.test(ahead) && isLed(reader, all)) continue;
    if (token?.kind !== 'word' || !vetoes.has(withoutOwner(token.text)) || /^(drop|kick)/.test(ahead)) {
      // "in on monday 25 january 3 hours"; "1400hrs" is an hour of the day
      const hours = token?.number?.form === 'duration' && /^(hour|min)$/.test(token.number.unit ?? '');
      if (hours && !isHourOfDay(token)) return true;
      continue;
    }
    // "just off the phone with the bride": only beside the day is it somebody's day off.
    if (!/^(off|away|open|shut)$/.test(token.text) || (index >= read.start - 3 && index <= read.end + 2)) return true;
  }
  return false;
};

// "22nd" and nothing else.
const loneDay = (reader: Reader, index: number): DateRead | undefined => {
  const token = reader.tokens[index];
  return reader.tokens.length <= 2 && token?.number?.form === 'ordinal'
    ? dayAlone(index, index + 1, Number(token.number.amount), reader.context)
    : undefined;
};

// More dates than this is a calendar pasted in, not an event's date.
const most = 12;

const dateReads = (reader: Reader): DateRead[] => {
  const reads: DateRead[] = [];
  for (let index = 0; index < reader.tokens.length && reads.length < most; index++) {
    if (!reader.free(index) || isPriceSeries(reader, index) || isPricesOrDay(reader, index) || isMarkGiven(reader, index)) continue;
    // "6 bouts 12/14 each", "12/3 bouts/corsages"
    const next = reader.tokens[index + 1]?.means;
    if (reader.tokens[index]?.number?.form === 'slashed' && (next?.['each'] ?? next?.['piece']) !== undefined) continue;
    const read = dateAt(reader.tokens, index, reader.context) ?? loneDay(reader, index);
    if (read === undefined) continue;
    if (!allFree(reader, read.start, read.end)) continue;
    reads.push(read);
    index = read.end - 1;
  }
  if (reads.length > 0) return reads;
  return otherDateForms(reader)
    .filter(({ start }) => !isMarkGiven(reader, start))
    .slice(0, most);
};

const ofAnotherDay = /^(pickup|pick-up|collection|collect|collecting|delivery|deliver|delivering|handover|up|off|over|on|the)$/;

const find = (reader: Reader): Finding[] => {
  const whole = leaningDays(reader, withMoreDays(reader, dateReads(reader)));
  const said = withDayBefore(reader, whole);
  const all = said.some((read) => read.relative !== true) ? said : said.map((read) => byEvent(reader, read));
  const kept = eventDays(reader, withoutMailDays(reader, all)).filter((read) => !leansOnUnknown(reader, read));
  const open = kept.filter((read) => !vetoed(reader, read, all));
  const { reads, also } = withPickedDay(reader, open);
  if (reads.length === 0) return [];
  const forDate = reads.some(
    (read) =>
      /^(for)$/.test(reader.tokens[read.start - 1]?.text ?? '') ||
      (reader.tokens[read.start - 1]?.text === 'the' && reader.tokens[read.start - 2]?.text === 'for') ||
      /^(for)$/.test(reader.tokens[read.start]?.text ?? ''),
  );
  const trades = tradeWords(reader) && !working(reader) && !reads.some((read) => namesOnlyWork(reader, read));
  const strong =
    ((isLed(reader, reads) || forDate) && !(working(reader) && !namesEvent(reader.tokens))) ||
    (isBareDate(reader, [...reads, ...also, ...hoursNear(reader, [...reads, ...also], true).slice(0, 1)]) && !working(reader)) ||
    trades;
  const usable = reads.filter((read) => !dayOfWork(reader, read) && (strong || read.relative !== true));
  const day = usable.some((read) => read.relative !== true) ? usable.filter((read) => read.relative !== true) : usable;
  // "meeting 2 feb 10am, wedding 13 march": the hour is that of the day right before it.
  const ofOther = (index: number): boolean => {
    const before = all.filter((read) => read.end <= index).at(-1);
    const near = reader.tokens.slice(Math.max(before?.end ?? 0, index - 3), index);
    // "wedding sat 13 march, pick up friday before at 2", "20 feb pickup 19th 4pm"
    const between = reader.tokens.slice(before?.end ?? index, index);
    const another = between.some(
      ({ means, number }, at) =>
        means['weekday'] !== undefined || (number?.form === 'ordinal' && ofAnotherDay.test(between[at - 1]?.text ?? '')),
    );
    return (
      another ||
      all.some((read) => read.start <= index && index < read.end) ||
      (before !== undefined && !open.includes(before)) ||
      near.some((token) => /^(setup|set|bump|rehearsal|access|load|entry|keys)$/.test(token.text))
    );
  };
  const sure = strong || day.some((read) => read.relative !== true);
  // "hand over fri 12 march at 4, wedding saturday at 2": of several days each has the hour behind it.
  const dayBehind = (index: number): Day | undefined => (day.findLast((each) => each.end <= index) ?? day[0])?.days[0];
  const isOwn = (time: TimeRead): boolean => !ofOther(time.start) && !ofOther(time.end - 1) && !isOthersDelivery(reader, time);
  const told = day.length === 0 ? [] : withSheetHour(reader, hoursNear(reader, day, sure).filter(isOwn));
  const hours = new Map<Day | undefined, TimeRead[]>();
  for (const time of told) {
    const from = dayBehind(time.start);
    if (from === dayBehind(time.end - 1)) hours.set(from, [...(hours.get(from) ?? []), time]);
  }
  const apart = told.length > 0 && namesOccasion(reader);
  const handed = new Map<DateRead, TimeRead>();
  const times = new Map<DateRead, TimeRead>();
  for (const read of day) {
    const own = hours.get(read.days[0]) ?? [];
    const over = apart && ofWhat(reader, read) === undefined ? own.find((time) => isHandOverHour(reader, time)) : undefined;
    if (over !== undefined) handed.set(read, over);
    const main = mainHour(reader, over === undefined ? own : own.filter((time) => !isHandOverHour(reader, time)));
    if (main !== undefined) times.set(read, main);
  }
  const fact =
    (read: DateRead) =>
    (date: Day): Unworded => {
      const of = ofWhat(reader, read);
      const time = times.get(read);
      return {
        fact: 'date',
        date,
        ...(time === undefined ? {} : { time: time.time }),
        ...(of === undefined ? {} : { of }),
        ...(read.yearAssumed === true ? { yearAssumed: true } : {}),
        ...(read.orderAssumed === true ? { orderAssumed: true } : {}),
      };
    };
  const hoursTaken = [...times.values(), ...handed.values()].map(({ start, end }) => ({ start, end: endOfHours(reader.tokens, end) }));
  const events = day.filter((read) => ofWhat(reader, read) === undefined);
  const impossible = events.find((read) => read.days.length === 0);
  if (impossible !== undefined) {
    // "ceremony june 31st 2pm": asked with the days by it, so that the hour is kept.
    const hour = times.get(impossible) !== undefined && impossible.instead !== undefined;
    const read: DateRead = hour ? { ...impossible, days: impossible.instead ?? [], why: 'which day' } : impossible;
    return [dateOutcome(reader, read, fact(impossible)), ...hoursTaken];
  }
  const [first, second] = events;
  if (first !== undefined && second !== undefined && first.days[0] !== second.days[0]) {
    const both: DateRead = { start: first.start, end: second.end, days: [...first.days, ...second.days], why: 'which date' };
    const own = (date: Day): Unworded => fact(first.days.includes(date) ? first : second)(date);
    return [{ ...dateOutcome(reader, both, own), ...takenByBoth(reader, first, second) }, ...hoursTaken];
  }
  const findings: Finding[] = day
    .filter((read) => read !== second)
    .map((read) => handedOverAt(dateOutcome(reader, read, fact(read)), handed.get(read)));
  if (day.length > 0) findings.push(...also.map(({ start, end }) => ({ start, end })));
  return [...findings, ...hoursTaken];
};

export const eventDate: Phrase = {
  name: 'event date',
  examples: ['event 14 March', 'wedding sat 13 Feb at 2pm', "it's Saturday fortnight"],
  find,
};
