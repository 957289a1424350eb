// The event's day moved, and what that does to a hand-over said before.

import { describe, expect, it } from 'vitest';
import { newEvent } from '../../src/thread/event.ts';
import { onDay } from '../../src/thread/event-day.ts';
import type { Day } from '../../src/values/day.ts';
import { replyTo } from '../support/plain-studio.ts';

const [thursday, saturday, earlier] = ['2027-03-11', '2027-03-13', '2027-02-27'] as Day[] as [Day, Day, Day];
const handed = { ...newEvent, date: saturday, handOver: { date: thursday, time: '14:00' } };

describe('a hand-over said before', () => {
  it('stays while it goes before the event', () =>
    expect(onDay(handed, '2027-03-12' as Day).handOver).toEqual({ date: thursday, time: '14:00' }));
  it('loses its day once that is after the event', () =>
    expect(onDay(handed, earlier)).toMatchObject({ date: earlier, handOver: { time: '14:00' } }));
});

describe('said back', () => {
  const order = 'wedding sat 13 march 2pm, 24 buttonholes at 15 inc, dried';
  it.each([
    [['ceremony 3pm'], 'Time: 14:00 → 15:00'],
    [['pick up at 11'], 'Hand over at: 11:00'],
    [['pick up at 11', 'pick up thurs 11 march 2pm'], 'Hand over at: 11:00 → 14:00'],
    [['pick up thurs 11 march 2pm', '2 weeks earlier'], 'Hand over: Thu 11 March 2027 is after the event now and no longer holds.'],
    [["the wedding's off"], 'This event is off: nothing of it is on the bench any more.'],
  ])('%j', async (said, line) => expect(await replyTo([order, ...said])).toContain(line));
});
