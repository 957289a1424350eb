// The make-ahead calendar as an iCalendar file (RFC 5545): each step an all-day entry with a stable UID, so that importing it again updates it.
// There is no METHOD: the file is a snapshot to import, not an invitation, and a withdrawn step says so by its STATUS.

import ical, { ICalAlarmRelatesTo, ICalAlarmType, ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import { Temporal } from 'temporal-polyfill';
import { addDays, type Day } from '../values/day.ts';
import { type PieceCount, piecesLine } from './piece-count.ts';
import { oneLine, plainText } from './plain-text.ts';

export interface CalendarFileStep {
  readonly id: string; // unique and lasting within this event: 'order-by', 'bench-2027-03-01'
  readonly title: string; // "Order by", "Bench day"
  readonly date: Day;
  readonly note?: string;
  readonly pieces?: readonly PieceCount[];
  readonly minutes?: number; // bench minutes planned
  readonly remind?: 'that morning' | 'the day before'; // that morning unless said
  readonly withdrawn?: true; // was in an earlier file and no longer holds
}

export interface CalendarFileInput {
  readonly studio: string;
  readonly event: string;
  readonly uidBase: string; // unique to this event for all time: workspace, channel and thread
  readonly steps: readonly CalendarFileStep[];
  readonly stamp: number; // epoch milliseconds
  readonly sequence: number; // raised by one each time a file is made from a changed plan
  readonly cancelled?: true; // the whole event is off
}

// Seconds before the day begins; a minus is after it.
const sevenInTheMorning = -7 * 3600;
const nineTheDayBefore = 15 * 3600;

const description = (step: CalendarFileStep): string =>
  [
    step.pieces?.length ? `Make ${piecesLine(step.pieces)}.` : '',
    step.minutes === undefined ? '' : `About ${step.minutes} minutes at the bench.`,
    step.note ?? '',
  ]
    .filter((line) => line !== '')
    .join('\n');

/** The bytes of the .ics file: UTF-8, CRLF, the same for the same input. Throws without a step: RFC 5545 wants at least one entry. */
export const calendarFile = (input: CalendarFileInput): Uint8Array => {
  if (input.steps.length === 0) throw new Error('a calendar file needs at least one step');
  const stamp = Temporal.Instant.fromEpochMilliseconds(input.stamp).toString();
  const calendar = ical({
    prodId: { company: 'Benchbell', product: 'Make-ahead calendar', language: 'EN' },
    x: { 'X-WR-CALNAME': oneLine(`${input.event} · ${input.studio}`) }, // not NAME: the library leaves its commas unescaped
  });
  for (const step of input.steps) {
    const off = input.cancelled === true || step.withdrawn === true;
    const summary = oneLine(`${step.title} · ${input.event}`);
    const text = plainText(description(step));
    const entry = calendar.createEvent({
      id: oneLine(`${input.uidBase}/${step.id}`),
      stamp,
      lastModified: stamp,
      sequence: input.sequence,
      start: step.date,
      end: addDays(step.date, 1), // DTEND is the first day after
      allDay: true,
      summary,
      ...(text === '' ? {} : { description: text }),
      status: off ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
      transparency: ICalEventTransparency.TRANSPARENT, // a step doesn't fill the day
    });
    if (off) continue;
    const trigger = step.remind === 'the day before' ? nineTheDayBefore : sevenInTheMorning;
    // Set afterwards: the library does not take relatesTo from the data, and would count a morning from the end of the day.
    entry.createAlarm({ type: ICalAlarmType.display, description: summary, trigger }).relatesTo(ICalAlarmRelatesTo.start);
  }
  return new TextEncoder().encode(`${calendar.toString()}\r\n`);
};
