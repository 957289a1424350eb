// The season's table and its file.

import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { seasonOf } from '../../src/review/season.ts';
import { writeSeason } from '../../src/review/write-season.ts';
import type { EventState } from '../../src/thread/event.ts';
import type { Day } from '../../src/values/day.ts';
import { anEvent, eventDay, line, withSettings } from '../handover/an-event.ts';
import { dayAfter, shown, spent, took } from './past-event.ts';

const studio = withSettings({ tax: { registered: false }, labour: { wage: '12' }, minutes: { buttonhole: 15 } });
const past = (key: string, more: Partial<EventState>): { key: string; event: EventState } => ({
  key,
  event: anEvent({ title: key, lines: [line(10)], price: { amount: '20', per: 'each' }, date: eventDay, ...more }),
});
const events = [
  past('later', { date: '2027-03-14' as Day, actuals: [spent('60'), took(200)] }),
  past('earlier', { date: '2027-02-01' as Day, actuals: [spent('40')] }),
  past('to come', { date: '2027-06-01' as Day, actuals: [spent('1')] }),
  past('untold', {}),
  past('off', { cancelled: true, actuals: [spent('5')] }),
];
const season = seasonOf(events, studio, dayAfter);

describe('the table', () => {
  test('by date; what cannot be looked back on is named with the reason', () => {
    expect(season.rows.map(({ key }) => key)).toEqual(['earlier', 'later']);
    expect(season.leftOut.map(({ key, why }) => [key, why])).toEqual([
      ['to come', 'review-before-event'],
      ['untold', 'nothing-recorded'],
      ['off', 'cancelled'],
    ]);
  });

  test('sums hold planned and actual of the same events', () => {
    expect(season.pieces).toBe(20);
    expect([season.wholesale.events, shown(season.wholesale.actual)]).toEqual([2, '100.00']);
    expect([season.minutes.events, shown(season.minutes.actual, 0), shown(season.minutes.planned, 0)]).toEqual([1, '200', '150']);
  });

  test('an event without a price is in the table, and in no sum of plan against actual', () => {
    const { price: _, ...unpriced } = anEvent({ lines: [line(5)], date: eventDay, actuals: [spent('500')] });
    const more = seasonOf([...events, { key: 'free', event: unpriced }], studio, dayAfter);
    expect(more.rows).toHaveLength(3);
    expect([more.wholesale.events, shown(more.wholesale.actual)]).toEqual([2, '100.00']);
    expect(more.exTax.events).toBe(2);
  });

  // Derived: 400 taken, 100 spent. A mean of the two margins would be the same only because the prices are.
  test('margin on the sums', () => {
    expect(shown(season.afterGoods.margin.actual, 0)).toBe('75');
    expect(shown(season.afterGoods.markup.actual, 0)).toBe('300');
    expect(shown(season.afterLabour.margin.actual, 0)).toBe('50'); // the one event timed: 200 less 60 and 40
  });

  test('big and small events weigh as they are', () => {
    const uneven = [past('small', { lines: [line(1)], actuals: [spent('20')] }), past('big', { lines: [line(99)], actuals: [spent('0')] })];
    expect(shown(seasonOf(uneven, studio, dayAfter).afterGoods.margin.actual, 0)).toBe('99');
  });

  test('no events, no sums', () => {
    const none = seasonOf([], studio, dayAfter);
    expect(none.rows).toEqual([]);
    expect(none.wholesale.actual).toBeUndefined();
  });
});

describe('the file', () => {
  const rowsOf = (csv: string): readonly Record<string, string>[] => parse(csv, { columns: true, bom: true });

  test('one row an event, figures as the table has them, unknown ones empty', () => {
    expect(
      rowsOf(writeSeason(season, 'GBP')).map((row) => [
        row['Event'],
        row['Wholesale actual'],
        row['Minutes actual'],
        row['Margin after goods %'],
      ]),
    ).toEqual([
      ['earlier', '40.00', '', '80.0'],
      ['later', '60.00', '200', '70.0'],
    ]);
  });

  // OWASP, CSV Injection (https://owasp.org/www-community/attacks/CSV_Injection; from memory): cells beginning =, +, -, @, tab or return may run.
  test.each(['=HYPERLINK("http://x.example")', '+1', '-1', '@SUM(A1)', '\t=1', 'plain, with "quotes"\nand a line'])(
    'a title of %j runs nothing and reads back',
    (title) => {
      const named = seasonOf([past('k', { title, actuals: [spent('40')] })], studio, dayAfter);
      const [row] = rowsOf(writeSeason(named, 'GBP'));
      expect(row?.['Event']).toMatch(/^['p]/);
      expect(row?.['Event']?.replace(/^'/, '')).toBe(title);
    },
  );
});
