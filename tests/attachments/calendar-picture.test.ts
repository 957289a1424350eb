// The month picture: right squares, nothing cut off, the same bytes every time, and an alt text that says all of it.
// The weekday of a date is checked against ECMAScript's Date (ECMA-262, Ecma International), which the picture does not use.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calendarDrawing, calendarPicture } from '../../src/attachments/calendar-picture.ts';
import { type PictureInput, pictureMonths } from '../../src/attachments/picture-days.ts';
import { calendarPictureAlt } from '../../src/attachments/picture-words.ts';
import { widthOf } from '../../src/attachments/printable.ts';
import { addDays, type Day } from '../../src/values/day.ts';

const day = (text: string): Day => text as Day;

const harbourDance: PictureInput = {
  studio: 'Tarry Lane Flowers',
  event: 'Harbour dance',
  eventDay: day('2027-03-14'),
  dayFirst: true,
  steps: [
    { title: 'Order by', date: day('2027-02-08'), late: true },
    { title: 'Check the drying', date: day('2027-02-25') },
    { title: 'Hand over', date: day('2027-03-13') },
    { title: 'Cut the ribbon', date: day('2027-03-04') },
  ],
  bench: [
    { date: day('2027-03-02'), pieces: [{ name: 'buttonholes', count: 10 }], minutes: 150 },
    {
      date: day('2027-03-04'),
      pieces: [
        { name: 'buttonholes', count: 8 },
        { name: 'flower crowns', count: 3 },
      ],
      minutes: 200,
    },
  ],
  closed: [
    { date: day('2027-02-14'), why: 'closed' },
    { date: day('2027-03-07'), why: 'Spring holiday' },
    { date: day('2027-04-04'), why: 'closed' },
  ],
};

interface Placed {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly bold: boolean;
  readonly anchor: string;
  readonly text: string;
}

const texts = (svg: string): readonly Placed[] =>
  [
    ...svg.matchAll(
      /<text x="([\d.]+)" y="([\d.]+)" font-size="([\d.]+)" font-weight="(\d+)" fill="[^"]*" text-anchor="(\w+)">([^<]*)<\/text>/g,
    ),
  ].map(([, x, y, size, weight, anchor, text]) => ({
    x: Number(x),
    y: Number(y),
    size: Number(size),
    bold: weight === '700',
    anchor: String(anchor),
    text: String(text)
      .replace(/&lt;/g, '<')
      .replace(/&gt;/g, '>')
      .replace(/&quot;/g, '"')
      .replace(/&amp;/g, '&'),
  }));

const sizeOf = (png: Uint8Array) => {
  const view = new DataView(png.buffer, png.byteOffset);
  return { width: view.getUint32(16), height: view.getUint32(20) }; // IHDR: W3C, Portable Network Graphics, section 11.2.1
};

describe('the picture', () => {
  test('is a PNG of phone width', () => {
    const png = calendarPicture(harbourDance);
    expect([...png.slice(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]); // W3C PNG, section 5.2
    expect(sizeOf(png).width).toBe(720);
  });

  test('is the same, byte for byte, for the same plan, and another for another', () => {
    const again = calendarPicture(structuredClone(harbourDance));
    expect(Buffer.compare(calendarPicture(harbourDance), again)).toBe(0);
    expect(Buffer.compare(calendarPicture({ ...harbourDance, event: 'Quay supper' }), again)).not.toBe(0);
  });

  test('is drawn in well under a second for a plan of four months', () => {
    const long = { ...harbourDance, steps: [...harbourDance.steps, { title: 'Decide the recipe', date: day('2026-12-01') }] };
    // Processor time, the best of three: a busy machine must not fail this.
    const times = [1, 2, 3].map(() => {
      const before = process.cpuUsage();
      calendarPicture(long);
      const { user, system } = process.cpuUsage(before);
      return (user + system) / 1000;
    });
    expect(Math.min(...times)).toBeLessThan(300);
  });

  test('shows the pieces of a bench day as one number, named below with their time', () => {
    const shown = texts(calendarDrawing(harbourDance)).map((one) => one.text);
    expect(shown).toContain('11'); // 8 + 3
    expect(shown).toContain('make 8 buttonholes, 3 flower crowns (3 h');
    expect(shown).toContain('20 min), cut the ribbon');
  });

  test('says late, closed and event in words as well as by colour', () => {
    const shown = texts(calendarDrawing(harbourDance)).map((one) => one.text);
    for (const word of ['order by (late)', '!', 'closed', 'event']) expect(shown).toContain(word);
  });

  test('keeps type large enough to read at half size', () => {
    const sizes = texts(calendarDrawing(harbourDance))
      .filter((one) => one.text !== '!' && one.text !== '')
      .map((one) => one.size);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(20);
  });

  test('cuts nothing off at its edges, whatever the names', () => {
    const name = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 120 });
    fc.assert(
      fc.property(name, name, name, (event, title, piece) => {
        const input: PictureInput = {
          ...harbourDance,
          event,
          studio: title,
          steps: [{ title, date: day('2027-03-04') }],
          bench: [{ date: day('2027-03-02'), pieces: [{ name: piece, count: 1234 }] }],
        };
        for (const { x, text, size, bold, anchor } of texts(calendarDrawing(input))) {
          const wide = widthOf(text, size, bold ? 'bold' : 'regular');
          const left = anchor === 'middle' ? x - wide / 2 : x;
          expect(left).toBeGreaterThanOrEqual(0);
          expect(left + wide).toBeLessThanOrEqual(720);
        }
        calendarPicture(input);
      }),
      { numRuns: 12 },
    );
  });
});

describe('the squares', () => {
  test('stand under their weekday, Monday first where days come first and Sunday first elsewhere', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 36_500 }), fc.boolean(), (after, dayFirst) => {
        const eventDay = addDays(day('2000-01-01'), after);
        const months = pictureMonths({ ...harbourDance, eventDay, dayFirst, steps: [], bench: [], closed: [] });
        expect(months).toHaveLength(1);
        const drawn = months.flatMap((month) => month.weeks).flatMap((week) => (week.week === 'drawn' ? week.days : []));
        drawn.forEach((marks, index) => {
          if (marks === undefined) return;
          const sundayFirst = new Date(`${marks.day}T00:00:00Z`).getUTCDay();
          expect(index % 7).toBe(dayFirst ? (sundayFirst + 6) % 7 : sundayFirst);
        });
        const days = drawn.filter((marks) => marks !== undefined);
        expect(days).toHaveLength(new Date(Date.UTC(Number(eventDay.slice(0, 4)), Number(eventDay.slice(5, 7)), 0)).getUTCDate());
        expect(days.filter((marks) => marks.event).map((marks) => marks.day)).toEqual([eventDay]);
      }),
    );
  });

  test('of quiet weeks are squeezed into one line when the plan spans months', () => {
    const weeks = pictureMonths(harbourDance).map((month) => month.weeks.map((week) => week.week));
    expect(weeks).toEqual([
      ['drawn', 'quiet', 'drawn'],
      ['drawn', 'drawn'],
    ]);
  });

  test('cross a year end', () => {
    const months = pictureMonths({
      ...harbourDance,
      eventDay: day('2027-01-02'),
      steps: [{ title: 'Order by', date: day('2026-12-03') }],
      bench: [],
    });
    expect(months.map(({ year, month }) => `${year}-${month}`)).toEqual(['2026-12', '2027-1']);
  });
});

describe('the alt text', () => {
  test('says everything the picture says', () => {
    expect(calendarPictureAlt(harbourDance)).toBe(
      'Calendar for Harbour dance, Sun 14 March 2027, Tarry Lane Flowers. Mon 8 February: order by (late). Sun 14 February: closed. ' +
        'Thu 25 February: check the drying. Tue 2 March: make 10 buttonholes (2 h 30 min). ' +
        'Thu 4 March: make 8 buttonholes, 3 flower crowns (3 h 20 min), cut the ribbon. Sun 7 March: closed, Spring holiday. ' +
        'Sat 13 March: hand over. Sun 14 March: event: Harbour dance.',
    );
  });
});
