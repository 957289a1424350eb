// Checked with a general-purpose iCalendar reader (ical.js) and, where a rule is about bytes, against RFC 5545
// "Internet Calendaring and Scheduling Core Object Specification (iCalendar)", IETF, 2009, https://www.rfc-editor.org/rfc/rfc5545

import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CalendarFileInput, type CalendarFileStep, calendarFile } from '../../src/attachments/calendar-file.ts';
import { addDays, type Day } from '../../src/values/day.ts';

const day = (text: string): Day => text as Day;

const harbourDance: CalendarFileInput = {
  studio: 'Tarry Lane Flowers',
  event: 'Harbour dance',
  uidBase: 'W1/C1/1800000000.000100',
  stamp: Date.UTC(2027, 0, 20, 9),
  sequence: 3,
  steps: [
    { id: 'order-by', title: 'Order by', date: day('2027-02-01'), note: 'Statice; ruscus, 3 bunches', remind: 'the day before' },
    {
      id: 'bench-2027-03-09',
      title: 'Bench day',
      date: day('2027-03-09'),
      pieces: [
        { name: 'buttonholes', count: 10 },
        { name: 'flower crowns', count: 2 },
      ],
      minutes: 210,
    },
    { id: 'hand-over', title: 'Hand over', date: day('2027-03-14') },
  ],
};

const text = (input: CalendarFileInput): string => new TextDecoder().decode(calendarFile(input));
const read = (input: CalendarFileInput) => {
  const calendar = new ICAL.Component(ICAL.parse(text(input)));
  return { calendar, entries: calendar.getAllSubcomponents('vevent') };
};
const entryOf = (input: CalendarFileInput, id: string) => {
  const found = read(input).entries.find((entry) => String(entry.getFirstPropertyValue('uid')).endsWith(`/${id}`));
  if (!found) throw new Error(`no entry for ${id}`);
  return found;
};

describe('a calendar file', () => {
  test('names its maker and version (3.7.3, 3.7.4) and is no invitation (3.7.2: no METHOD)', () => {
    const { calendar } = read(harbourDance);
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//Benchbell//Make-ahead calendar//EN');
    expect(calendar.getFirstPropertyValue('method')).toBeNull();
    expect(calendar.getFirstPropertyValue('x-wr-calname')).toBe('Harbour dance · Tarry Lane Flowers');
  });

  test('has one all-day entry for each step: DTSTART as a DATE, DTEND the first day after (3.6.1, 3.8.2.2, 3.8.2.4)', () => {
    const { entries } = read(harbourDance);
    expect(entries).toHaveLength(3);
    const bench = entryOf(harbourDance, 'bench-2027-03-09');
    const start = bench.getFirstPropertyValue('dtstart') as ICAL.Time;
    expect(start.isDate).toBe(true);
    expect(start.toString()).toBe('2027-03-09');
    expect(String(bench.getFirstPropertyValue('dtend'))).toBe('2027-03-10');
    expect(text(harbourDance)).toContain('DTSTART;VALUE=DATE:20270309\r\n');
  });

  test('says what the day holds', () => {
    const bench = entryOf(harbourDance, 'bench-2027-03-09');
    expect(bench.getFirstPropertyValue('summary')).toBe('Bench day · Harbour dance');
    expect(bench.getFirstPropertyValue('description')).toBe('Make 10 buttonholes, 2 flower crowns.\nAbout 210 minutes at the bench.');
  });

  test('keeps the UID when a step moves, and raises SEQUENCE, so that importing again updates it (3.8.4.7, 3.8.7.4)', () => {
    const moved = {
      ...harbourDance,
      sequence: 4,
      steps: harbourDance.steps.map((step): CalendarFileStep => ({ ...step, date: addDays(step.date, 7) })),
    };
    const uids = (input: CalendarFileInput) => read(input).entries.map((entry) => entry.getFirstPropertyValue('uid'));
    expect(uids(moved)).toEqual(uids(harbourDance));
    expect(new Set(uids(moved)).size).toBe(3);
    expect(entryOf(moved, 'order-by').getFirstPropertyValue('sequence')).toBe(4);
  });

  test('stamps the instant in UTC (3.8.7.2)', () => {
    expect(text(harbourDance)).toContain('DTSTAMP:20270120T090000Z\r\n');
  });

  test('does not fill the day as busy time (3.8.2.7)', () => {
    expect(entryOf(harbourDance, 'hand-over').getFirstPropertyValue('transp')).toBe('TRANSPARENT');
  });

  test.each([
    ['bench-2027-03-09', '2027-03-09T07:00:00', 'at seven that morning'],
    ['order-by', '2027-01-31T09:00:00', 'at nine the day before'],
  ])('reminds for %s by a display alarm relative to the start (3.6.6, 3.8.6.3)', (id, at) => {
    const entry = entryOf(harbourDance, id);
    const alarm = entry.getFirstSubcomponent('valarm');
    expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
    expect(alarm?.getFirstPropertyValue('description')).toBe(entry.getFirstPropertyValue('summary'));
    expect(alarm?.getFirstProperty('trigger')?.getParameter('related') ?? 'START').toBe('START');
    const midnight = (entry.getFirstPropertyValue('dtstart') as ICAL.Time).clone();
    midnight.isDate = false;
    midnight.addDuration(alarm?.getFirstPropertyValue('trigger') as ICAL.Duration);
    expect(midnight.toString()).toBe(at);
  });

  test('marks a withdrawn step CANCELLED and leaves the others confirmed (3.8.1.11), without an alarm', () => {
    const [first, ...others] = harbourDance.steps;
    const input = { ...harbourDance, steps: [{ ...(first as CalendarFileStep), withdrawn: true as const }, ...others] };
    expect(entryOf(input, 'order-by').getFirstPropertyValue('status')).toBe('CANCELLED');
    expect(entryOf(input, 'order-by').getFirstSubcomponent('valarm')).toBeNull();
    expect(entryOf(input, 'hand-over').getFirstPropertyValue('status')).toBe('CONFIRMED');
  });

  test('marks every step CANCELLED when the event is off', () => {
    const { entries } = read({ ...harbourDance, cancelled: true });
    expect(entries.map((entry) => entry.getFirstPropertyValue('status'))).toEqual(['CANCELLED', 'CANCELLED', 'CANCELLED']);
  });

  test('escapes commas, semicolons, backslashes and line breaks (3.3.11)', () => {
    const note = 'Ribbon, 8 yd; "dusk" \\ 30 cm\nask first';
    const input = { ...harbourDance, steps: [{ id: 'ribbon', title: 'Ribbon', date: day('2027-02-01'), note }] };
    expect(text(input)).toContain('DESCRIPTION:Ribbon\\, 8 yd\\; "dusk" \\\\ 30 cm\\nask first\r\n');
    expect(entryOf(input, 'ribbon').getFirstPropertyValue('description')).toBe(note);
  });

  test('refuses an empty plan (3.6 wants at least one entry)', () => {
    expect(() => calendarFile({ ...harbourDance, steps: [] })).toThrow('at least one step');
  });

  test('is the same, byte for byte, for the same input', () => {
    expect(calendarFile(harbourDance)).toEqual(calendarFile(structuredClone(harbourDance)));
  });

  test('holds whatever people type, folds at 75 octets and ends lines by CRLF (3.1)', () => {
    const typed = fc.string({ unit: 'grapheme', maxLength: 300 });
    fc.assert(
      fc.property(typed, typed, typed, (event, title, note) => {
        const input = { ...harbourDance, event, steps: [{ id: 'a', title, date: day('2027-02-01'), note }] };
        const lines = text(input).split('\r\n');
        expect(lines.at(-1)).toBe('');
        for (const line of lines) {
          expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
        }
        const { entries } = read(input);
        expect(entries).toHaveLength(1);
        const back = String(entries[0]?.getFirstPropertyValue('description') ?? '');
        // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is dropped
        const kept = note.replace(/[\u0000-\u0009\u000B-\u001F\u007F-\u009F]/g, '').normalize('NFC');
        expect(back.replace(/\s/g, '')).toBe(kept.replace(/\s/g, ''));
      }),
      { numRuns: 100 },
    );
  });
});
