// A tick on a list of the bench: which event's thread it belongs to, and what it states there. It counts what the list asked for less what has been counted
// since the list was written, so a second tap, or a tap on the copy somebody got by direct message, adds nothing.

import type { Fact } from '../reading/fact.ts';
import type { Reading } from '../reading/reading.ts';
import { countedAlready, readTick, type Tick, tapEntry } from '../reply/tick.ts';
import { everMade, ordered } from '../thread/apply-progress.ts';
import type { EventState } from '../thread/event.ts';
import { addDays, type Day, parseDay } from '../values/day.ts';
import { problem } from '../values/result.ts';
import type { IncomingMessage, ThreadKey } from './ports.ts';

/** The thread a message is about: its own, or for a tick the event's. Always of the same workspace. */
export const threadMeant = ({ workspace, channel, thread, tap }: IncomingMessage): ThreadKey => {
  const tick = tap && readTick(tap.value);
  return tick ? { workspace, channel: tick.channel, thread: tick.thread } : { workspace, channel, thread };
};

/** Undefined for a tap that is no tick. */
export const tickReading = (
  tap: { readonly action: string; readonly value: string },
  state: EventState,
  today: Day,
): Reading | undefined => {
  const tick = readTick(tap.value);
  if (!tick) return undefined;
  const entry = tapEntry(tap.value);
  switch (tap.action) {
    case 'made all':
      return counting(tick, tick.pieces, state);
    case 'made some':
      return /^\d{1,6}$/.test(entry ?? '') ? counting(tick, Number(entry), state) : reading([]);
    case 'move date':
      return moving(tick, entry === undefined ? addDays(today, 1) : parseDay(entry), today);
    default:
      return reading([]);
  }
};

const reading = (facts: readonly Fact[]): Reading => ({ facts, unread: [], asks: [], problems: [] });

/** `done`: of the pieces on that list, how many are made. */
const counting = ({ piece, stage, day, before }: Tick, done: number, state: EventState): Reading => {
  const count = done - (everMade(state, piece, stage) - before);
  const words = `ticked on the list of ${day}`;
  if (count <= 0 || ordered(state, piece) === 0) return reading([{ fact: 'question', asks: 'remaining', words: countedAlready }]);
  return reading([{ fact: 'made', piece, count, stage, words }]);
};

const moving = ({ piece, stage, day }: Tick, to: Day | undefined, today: Day): Reading => {
  if (!to) return reading([]);
  if (to < today) return { ...reading([]), problems: [problem('date-is-past', { date: to })] };
  return reading([{ fact: 'made', piece, count: 0, stage, resumes: to, words: `moved on the list of ${day}` }]);
};
