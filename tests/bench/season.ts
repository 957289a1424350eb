// A studio's season put straight into a store: so many events of so many messages each, spread over three hundred days.

import { readFileSync } from 'node:fs';
import type { Entry, IncomingMessage, ThreadKey } from '../../src/assistant/ports.ts';
import type { Fact } from '../../src/reading/fact.ts';
import type { OpenStore } from '../../src/store/sqlite-store.ts';
import { type StudioSettings, studioSettings } from '../../src/studio/settings.ts';
import { foldEvent } from '../../src/thread/fold.ts';
import { addDays, type Day, dayAt } from '../../src/values/day.ts';

const given = studioSettings.parse(JSON.parse(readFileSync('demo-data/studio.json', 'utf8')));

/** As many hands as the season needs, so that the plan fits and the figures are those of an ordinary day. */
export const studioOf = (events: number): StudioSettings => ({
  ...given,
  bench: { ...given.bench, people: Math.max(2, Math.ceil(events / 25)) },
});

export const workspace = 'T1';
export const keyOf = (event: number): ThreadKey => ({
  workspace,
  channel: `C${event}`,
  thread: `17${String(event).padStart(8, '0')}.000100`,
});

const pieces = ['buttonhole', 'corsage', 'flower crown', 'hair flower'] as const;
const materials = ['dried', 'preserved', 'fresh', 'artificial'] as const;

/** Days from today: all ahead of us, or ten years of work of which the last three hundred events are. */
export type Spread = (event: number) => number;
export const allOpen: Spread = (event) => 20 + (event % 300);
export const tenYears: Spread = (event) => (event < 300 ? 20 + event : 20 - Math.ceil(event * 0.75));

const openingFacts = (event: number, today: Day, spread: Spread): readonly Fact[] => [
  { fact: 'pieces', piece: pieces[event % 4] ?? 'buttonhole', count: 5 + (event % 40), words: 'so many' },
  { fact: 'price', amount: '25', per: 'each', words: 'at 25' },
  { fact: 'date', date: addDays(today, spread(event)), words: 'then' },
  { fact: 'material', material: materials[event % 4] ?? 'dried', words: 'of that' },
];

const laterFacts = (event: number, n: number): readonly Fact[] => [
  n % 5 === 0
    ? { fact: 'made', piece: pieces[event % 4] ?? 'buttonhole', count: 1 + (n % 4), words: 'made some' }
    : { fact: 'pieces', piece: pieces[event % 4] ?? 'buttonhole', count: 5 + ((event + n) % 40), words: 'make it so many' },
];

export const message = (key: ThreadKey, id: string, text: string, sentAt: number): IncomingMessage => ({
  ...key,
  id,
  revision: id,
  author: 'UAILSA',
  kind: 'new',
  text,
  addressed: true,
  shared: false,
  sentAt,
});

/** Fills the store as that many handled and answered messages would have. */
export const fill = (store: OpenStore, events: number, messagesEach: number, now: number, spread = allOpen, space = workspace): void => {
  const studio = studioOf(events);
  const today = dayAt(now, studio.timeZone);
  const { version } = store.studio(space, studio);
  const handled = store.database.prepare(`
    INSERT INTO inbox (workspace, channel, thread, message, revision, delivery, author, kind, text, addressed, shared, sent_at, handled)
    VALUES (?, ?, ?, ?, '1', ?, 'UAILSA', 'new', '', 0, 0, ?, 1)`);
  const posted = store.database.prepare(`
    INSERT INTO outbox (id, workspace, channel, thread, purpose, about, slot, reply, state, attempts, ended_at, host_id)
    VALUES (?, ?, ?, ?, 'answer', ?, 0, '', 'posted', 1, ?, ?)`);
  const beforehand = store.database.pragma('synchronous', { simple: true });
  store.database.pragma('synchronous = OFF');
  for (let event = 0; event < events; event += 1) {
    const key = { ...keyOf(event), workspace: space };
    const entries = Array.from({ length: messagesEach }, (_, n): Entry => {
      const facts = n === 0 ? openingFacts(event, today, spread) : laterFacts(event, n);
      return { scope: 'event', message: `${event}.${n}`, revision: '1', kind: 'stated', author: 'UAILSA', at: now, facts };
    });
    const first = { ...message(key, `${event}.0`, '', now), revision: '1' };
    store.receive(first, `d${event}.0`);
    const expected = { thread: 0, studio: version };
    store.commit({ message: first, entries, expected, event: foldEvent(entries), replies: [] });
    store.database.transaction(() => {
      for (const { message: id } of entries) {
        if (id !== first.id) handled.run(key.workspace, key.channel, key.thread, id, `d${id}`, now);
        posted.run(`r${space} ${id}`, key.workspace, key.channel, key.thread, id, now, `h${id}`);
      }
    })();
  }
  store.database.pragma(`synchronous = ${String(beforehand)}`);
};
