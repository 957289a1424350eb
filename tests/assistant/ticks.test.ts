// A tick counts what its list asked for and has not been counted since, whatever was typed in between; tapped again it adds nothing.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { threadMeant, tickReading } from '../../src/assistant/ticks.ts';
import type { Fact } from '../../src/reading/fact.ts';
import { readTick, type Tick, tickValue } from '../../src/reply/tick.ts';
import { applyFacts } from '../../src/thread/apply-facts.ts';
import { everMade } from '../../src/thread/apply-progress.ts';
import { type EventState, newEvent } from '../../src/thread/event.ts';
import type { Day } from '../../src/values/day.ts';
import { message } from '../store/builders.ts';
import { broke, made, material, on, pieces } from '../support/facts.ts';

const today = '2027-03-10' as Day;
const list: Omit<Tick, 'before' | 'pieces'> = {
  channel: 'C-events',
  thread: 't|1, "the \n first"',
  piece: 'buttonhole',
  stage: 'finished',
  day: today,
};
const ordered: EventState = applyFacts(newEvent, [pieces(60, 'buttonhole'), material('dried'), on('2027-03-14')]);

const tapped = (state: EventState, value: string): EventState =>
  applyFacts(state, tickReading({ action: 'made all', value }, state, today)?.facts ?? []);

describe('a tick', () => {
  it('adds just what is missing of its list, and nothing the second time', () => {
    const word: fc.Arbitrary<Fact> = fc.oneof(
      fc.nat({ max: 12 }).map((count) => made({ count, piece: 'buttonhole' })),
      fc.nat({ max: 3 }).map((count) => broke(count, 'buttonhole')),
    );
    fc.assert(
      fc.property(
        fc.array(word, { maxLength: 4 }),
        fc.array(word, { maxLength: 6 }),
        fc.integer({ min: 1, max: 20 }),
        (earlier, between, count) => {
          const morning = earlier.reduce((state, fact) => applyFacts(state, [fact]), ordered);
          const before = everMade(morning, 'buttonhole', 'finished');
          const value = tickValue({ ...list, pieces: count, before });
          const noon = between.reduce((state, fact) => applyFacts(state, [fact]), morning);
          const once = tapped(noon, value);
          const since = everMade(noon, 'buttonhole', 'finished') - before;
          expect(everMade(once, 'buttonhole', 'finished') - before).toBe(Math.max(count, since));
          expect(tapped(once, value).progress).toEqual(once.progress);
        },
      ),
    );
  });

  it('belongs to the thread it names, within the workspace it came from', () => {
    const value = tickValue({ ...list, pieces: 3, before: 0 });
    const tap = message('m1', { channel: 'C-bench', thread: '9', kind: 'tap', tap: { action: 'made all', value: `${value}\n4` } });
    expect(threadMeant(tap)).toEqual({ workspace: tap.workspace, channel: list.channel, thread: list.thread });
    expect(threadMeant(message('m2', { channel: 'C-bench', thread: '9' }))).toEqual({
      workspace: tap.workspace,
      channel: 'C-bench',
      thread: '9',
    });
  });

  it('reads back what it carries, and takes nothing else for one', () => {
    const tick: Tick = { ...list, pieces: 17, before: 12 };
    expect(readTick(tickValue(tick))).toEqual(tick);
    for (const value of [
      '',
      '3',
      '[]',
      '["tick"]',
      tickValue({ ...tick, pieces: -1 }),
      tickValue({ ...tick, thread: '' }),
      tickValue({ ...tick, pieces: 1.5 }),
    ]) {
      expect(readTick(value)).toBeUndefined();
    }
  });
});
