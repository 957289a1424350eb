// How many studios one process holds: a message of each in turn, so that nothing is still in memory, the look at every minute, and the hour at which
// all of them want their morning list.

import { createAssistant } from '../../src/assistant/assistant.ts';
import { startReminders } from '../../src/start-reminders.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { median, ms, type Row, timed } from './measure.ts';
import { fill, keyOf, message, studioOf } from './season.ts';

const now = Date.UTC(2027, 0, 20, 9);
const events = 20;
const nothing = (): void => undefined;
const log = { info: nothing, warn: nothing, error: nothing };

const withStudios = async (studios: number): Promise<readonly [each: number, look: number, morning: number]> => {
  const store = openStore({ path: ':memory:' });
  const settings: StudioSettings = { ...studioOf(events), reminder: { channel: 'CBENCH', at: '07:00' } };
  const spaces = Array.from({ length: studios }, (_, n) => `W${n}`);
  for (const space of spaces) fill(store, events, 2, now, undefined, space);
  const clock = { now: () => now };
  const fail = (_id: string, error: unknown): never => {
    throw error;
  };
  const assistant = createAssistant({ store, clock, settings, onFailure: fail });
  const say = (n: number): void => {
    const key = { ...keyOf(n % events), workspace: spaces[n % studios] ?? '' };
    store.receive(message(key, `later ${n}`, `${20 + (n % 20)} buttonholes at 22 inc tax`, now), `later ${n}`);
    assistant.work();
  };
  timed(20, say);
  const one = timed(200, (n) => say(n + 20));
  const begun = performance.now();
  const reminders = spaces.map((workspace) => startReminders({ store, clock, settings, workspace, log, onQueued: nothing }));
  const look = async (): Promise<void> => {
    for (const reminder of reminders) await reminder.check();
  };
  await look();
  const morning = performance.now() - begun;
  const again = performance.now();
  await look();
  const looked = performance.now() - again;
  for (const reminder of reminders) await reminder.stop();
  store.close();
  return [median(one.clock), looked, morning];
};

export const scale = async (): Promise<readonly Row[]> => {
  const sizes = [10, 100, 1_000];
  const found: (readonly [number, number, number])[] = [];
  for (const studios of sizes) found.push(await withStudios(studios));
  const row = (what: string, at: 0 | 1 | 2): Row => ({
    what: `${what}: ${sizes.join(', ')} studios of ${events} open events`,
    measured: found.map((one) => ms(one[at])).join(', '),
  });
  return [
    row('an order in each in turn', 0),
    row('the look for what is due, each minute', 1),
    row('the morning lists, all in the same minute', 2),
  ];
};
