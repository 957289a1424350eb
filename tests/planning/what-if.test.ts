// What-ifs: the same bench with one thing changed, and the bench itself untouched.

import { describe, expect, test } from 'vitest';
import { planBench } from '../../src/planning/plan-bench.ts';
import { extraKey, readyFor, withMorePieces, withOnly, withPeopleAway } from '../../src/planning/what-if.ts';
import { anEvent, aStudio, day, rulesOf } from './a-studio.ts';

const today = day('2027-01-20');
const rules = rulesOf();
const fresh = anEvent({ material: 'fresh' }); // fills Friday 12 March to the last minute

describe('can we take another 30', () => {
  test('not fresh for the same Saturday; the extra ones are short and nothing else', () => {
    const answer = withMorePieces([fresh], rules, today, { pieces: 30, date: day('2027-03-13'), piece: 'buttonhole', material: 'fresh' });
    expect(answer.before.fits).toBe(true);
    expect(answer.after).toMatchObject({ fits: false, minutesShort: 450 });
    expect(answer.nowShort).toContain(extraKey);
  });

  test('dried, yes', () => {
    const more = { pieces: 30, date: day('2027-03-13'), piece: 'buttonhole', material: 'dried' } as const;
    expect(withMorePieces([fresh], rules, today, more)).toMatchObject({ after: { fits: true }, nowShort: [] });
  });

  test('of nothing said, room is kept for fresh buttonhole-sized pieces', () => {
    const answer = withMorePieces([], rules, today, { pieces: 30, date: day('2027-03-13') });
    expect(answer.after.events[0]).toMatchObject({ minutesPlanned: 450, materialAssumed: true, fits: true });
  });
});

describe('one of us is away', () => {
  test('on the Friday that is full: short by half of it', () => {
    const answer = withPeopleAway([fresh], rules, today, { date: day('2027-03-12'), people: 1 });
    expect(answer).toMatchObject({ after: { fits: false, minutesShort: 300 }, nowShort: ['harbour dance'] });
  });

  test('on the Thursday before: no harm', () => {
    expect(withPeopleAway([fresh], rules, today, { date: day('2027-03-11'), people: 1 }).nowShort).toEqual([]);
  });
});

describe('only one of us', () => {
  test('on every day: short by half of the full Friday', () => {
    expect(withOnly([fresh], rules, today, { people: 1 })).toMatchObject({
      after: { fits: false, minutesShort: 300 },
      nowShort: ['harbour dance'],
    });
  });
  test('on a day with nothing to make: no harm', () => {
    expect(withOnly([fresh], rules, today, { people: 1, date: day('2027-03-11') }).nowShort).toEqual([]);
  });
});

describe('are we ready for Saturday', () => {
  const later = anEvent({ date: day('2027-03-27'), material: 'fresh', lines: [{ piece: 'corsage', count: 90 }] }, aStudio(), 'later');
  const plan = planBench([fresh, later], rules, today);

  test('only what is handed over by then counts', () => {
    expect(readyFor(plan, day('2027-03-13'))).toMatchObject({ ready: true, minutesLeft: 600, minutesShort: 0 });
    expect(readyFor(plan, day('2027-03-27'))).toMatchObject({ ready: false, minutesShort: 2100 });
  });

  test('nothing is due by then: ready', () => {
    expect(readyFor(plan, day('2027-02-01'))).toMatchObject({ ready: true, events: [] });
  });
});

test('the plan is not changed by asking', () => {
  const before = JSON.stringify(planBench([fresh], rules, today));
  withPeopleAway([fresh], rules, today, { date: day('2027-03-12'), people: 2 });
  withMorePieces([fresh], rules, today, { pieces: 500, date: day('2027-03-13') });
  expect(JSON.stringify(planBench([fresh], rules, today))).toBe(before);
});
