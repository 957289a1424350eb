// The morning list: overdue first, then what leaves, what is made, what is ordered and checked.

import { expect, test } from 'vitest';
import { dueOn } from '../../src/planning/due-on.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import type { EventState } from '../../src/thread/event.ts';
import type { Day } from '../../src/values/day.ts';
import { anEvent, aStudio, day, rulesOf } from './a-studio.ts';

const dance = (event: Partial<EventState> = {}) => anEvent({ material: 'mixed', ...event });
const dueAt = (today: Day, ...events: ReturnType<typeof anEvent>[]) =>
  dueOn(planBench(events, rulesOf(), today), today).map((due) => [
    due.overdue ? 'overdue' : 'today',
    due.key,
    due.due === 'pieces' ? `${due.pieces} ${due.stage} ${due.piece}` : due.step,
  ]);

test('a quiet day has nothing', () => {
  expect(dueAt(day('2027-01-20'), dance())).toEqual([]);
});

test('the day stems are ordered', () => {
  expect(dueAt(day('2027-02-11'), dance({ recipes: { any: [] } }))).toEqual([['today', 'harbour dance', 'order by']]);
});

test('a bench day of two events: boards before pieces, overdue before all', () => {
  const ticked = [{ fact: 'step', step: 'drying checked', words: '' } as const];
  const supper = anEvent({ date: day('2027-03-13'), lines: [{ piece: 'corsage', count: 2 }] }, aStudio(), 'supper');
  expect(dueAt(day('2027-03-11'), dance({ steps: ticked, recipes: { any: [] } }), supper)).toEqual([
    ['overdue', 'harbour dance', 'order by'],
    ['overdue', 'supper', 'order by'],
    ['today', 'supper', 'boarded'],
    ['today', 'harbour dance', '40 base buttonhole'],
    ['today', 'supper', '2 whole corsage'],
    ['today', 'harbour dance', 'condition'],
  ]);
});

test('of a late supply only its first step is overdue: what is not ordered cannot be hung', () => {
  expect(dueAt(day('2027-03-02'), anEvent({ recipes: { any: [] } }))).toEqual([['overdue', 'harbour dance', 'order by']]);
});

test('a finished order is only boarded and handed over', () => {
  const done = anEvent({ progress: { buttonhole: { made: 40, broke: 0 } } });
  expect(dueAt(day('2027-03-12'), done)).toEqual([
    ['overdue', 'harbour dance', 'boarded'],
    ['today', 'harbour dance', 'hand over'],
  ]);
  const handed = anEvent({ progress: { buttonhole: { made: 40, broke: 0 } }, steps: [{ fact: 'step', step: 'handed over', words: '' }] });
  expect(dueAt(day('2027-03-12'), handed)).toEqual([]);
});
