// Day numbers against Temporal (ECMA-262 proposal Temporal, PlainDate), which the rest of the project uses, and against days whose number is known.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayNumber, dayNumbered, weekdayNumber } from '../../src/planning/day-number.ts';
import { addDays, type Day, weekdayOf, weekdays } from '../../src/values/day.ts';

test.each([
  ['1970-01-01', 0], // the epoch of POSIX time
  ['2000-03-01', 11_017],
  ['2024-02-29', 19_782],
])('%s is day %i', (text, number) => {
  expect(dayNumber(text as Day)).toBe(number);
  expect(dayNumbered(number)).toBe(text);
});

test('there and back, weekday and next day agree with Temporal over eight thousand years', () => {
  fc.assert(
    fc.property(fc.integer({ min: -500_000, max: 2_500_000 }), (number) => {
      const day = dayNumbered(number);
      expect(dayNumber(day)).toBe(number);
      expect(addDays(day, 1)).toBe(dayNumbered(number + 1));
      expect(weekdays[weekdayNumber(number)]).toBe(weekdayOf(day));
    }),
    { numRuns: 1000 },
  );
});
