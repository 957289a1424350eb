// The Store's promises, on a database in memory and on a file: one suite for both.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type OpenStore, openStore } from '../../src/store/sqlite-store.ts';
import type { Day } from '../../src/values/day.ts';
import { buttonholes, entry, key, message, onDay, outcome, pack, reply, says, tell, workspace, yard } from './builders.ts';

const now = Date.UTC(2027, 0, 20, 9);
const day = (text: string): Day => text as Day;

describe.each(['memory', 'file'])('a store in %s', (where) => {
  let folder: string;
  let store: OpenStore;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'loft-'));
    store = openStore({ path: where === 'file' ? join(folder, 'loft.db') : ':memory:', powerSafe: false });
  });
  afterEach(() => {
    store.close();
    rmSync(folder, { recursive: true });
  });

  describe('receiving', () => {
    it('keeps a message whole until it is handled', () => {
      const tapped = message('m2', { kind: 'tap', text: '', tap: { action: 'undo', value: 'm1' }, addressed: true, shared: true });
      store.receive(message('m1'), 'd1');
      store.receive(tapped, 'd2');
      expect(store.waiting()).toEqual([message('m1'), tapped]);
      expect(store.waiting(1)).toEqual([message('m1')]);
    });

    it('knows a delivery sent again', () => {
      expect(store.receive(message('m1'), 'd1')).toBe('new');
      expect(store.receive(message('m1'), 'd1')).toBe('repeat');
      expect(store.waiting()).toHaveLength(1);
    });

    it('knows one message delivered twice under two ids, as a mention in a channel the bot has joined', () => {
      expect(store.receive(message('m1'), 'as a message')).toBe('new');
      expect(store.receive(message('m1'), 'as a mention')).toBe('repeat');
    });

    it('takes an edit, the same message id in another channel, and another workspace as new', () => {
      store.receive(message('m1'), 'd1');
      expect(store.receive(message('m1', { kind: 'edit', revision: '2' }), 'd2')).toBe('new');
      expect(store.receive(message('m1', { channel: 'parties' }), 'd3')).toBe('new');
      expect(store.receive(message('m1', { workspace: 'W-other' }), 'd1')).toBe('new');
    });

    it('still knows a repeat after the message was handled, and no longer holds its text', () => {
      tell(store, message('m1', { text: '40 lapel pieces for the Sandilands wedding' }), [buttonholes(40)]);
      expect(store.waiting()).toEqual([]);
      expect(store.receive(message('m1'), 'a late retry')).toBe('repeat');
      const texts = store.database.prepare('SELECT text FROM inbox').pluck().all();
      expect(texts).toEqual(['']);
    });
  });

  describe('a thread', () => {
    it('is empty at version 0 before anything was said', () => {
      expect(store.thread(key())).toMatchObject({ version: 0, state: { lines: [] } });
      expect(store.entries(key())).toEqual([]);
      expect(store.knows(key())).toBe(false);
    });

    it('gives back entries as they were stored, in order, and the state they lead to', () => {
      const first = message('m1');
      tell(store, first, [buttonholes(40), { fact: 'price', amount: '25', per: 'each', words: '25 each' }]);
      tell(store, message('m2'), [onDay('2027-03-14')]);
      expect(store.entries(key())).toEqual([
        entry(first, [buttonholes(40), { fact: 'price', amount: '25', per: 'each', words: '25 each' }]),
        entry(message('m2'), [onDay('2027-03-14')]),
      ]);
      expect(store.thread(key())).toMatchObject({ version: 2, state: { date: '2027-03-14', lines: [{ piece: 'buttonhole', count: 40 }] } });
    });

    it('keeps an open question with the facts of its choices', () => {
      const asking = message('m1');
      const open = {
        kind: 'choice',
        ask: { about: 'price', why: 'each or all', words: '12 bouts 12 bucks', choices: [{ words: 'each', facts: [buttonholes(12)] }] },
      } as const;
      store.receive(asking, 'd1');
      const asked = entry(asking, [], { kind: 'asked', open });
      store.commit({
        ...outcome(store, asking, []),
        entries: [asked],
        event: { ...store.thread(key()).state, open: { ...open, askedAt: now } },
      });
      expect(store.entries(key())).toEqual([asked]);
      expect(store.thread(key()).state.open).toEqual({ ...open, askedAt: now });
    });

    it('is known once the bot was addressed in it, even if nothing was stored', () => {
      store.receive(message('m1', { addressed: true, text: 'help' }), 'd1');
      expect(store.knows(key())).toBe(true);
      expect(store.knows(key('t2'))).toBe(false);
      expect(store.knows(key('t1', 'weddings', 'W-other'))).toBe(false);
    });

    it('keeps threads, channels and workspaces with the same names apart', () => {
      tell(store, message('m1'), [buttonholes(40)]);
      tell(store, message('m1', { channel: 'parties' }), [buttonholes(6)]);
      tell(store, message('m1', { workspace: 'W-other' }), [buttonholes(9)]);
      expect(store.thread(key()).state.lines[0]?.count).toBe(40);
      expect(store.thread(key('t1', 'parties')).state.lines[0]?.count).toBe(6);
      expect(store.thread(key('t1', 'weddings', 'W-other')).state.lines[0]?.count).toBe(9);
      expect(store.openEvents(workspace, day('2027-01-01'))).toHaveLength(2);
    });

    it('keeps both when two people write at once: the slower is told to look again', () => {
      const [isla, rory] = [message('m1'), message('m2', { author: 'rory' })];
      store.receive(isla, 'd1');
      store.receive(rory, 'd2');
      const slower = outcome(store, rory, [onDay('2027-03-14')]);
      expect(store.commit(outcome(store, isla, [buttonholes(40)]))).toBe('stored');
      expect(store.commit(slower)).toBe('moved');
      expect(store.waiting()).toEqual([rory]);
      expect(store.unsent(now).map((out) => out.about)).toEqual(['m1']);
      expect(store.commit(outcome(store, rory, [onDay('2027-03-14')]))).toBe('stored');
      expect(store.thread(key())).toMatchObject({ version: 2, state: { date: '2027-03-14', lines: [{ count: 40 }] } });
    });

    it('changes nothing when a message is handled a second time', () => {
      tell(store, message('m1'), [buttonholes(40)]);
      expect(
        store.commit({ ...outcome(store, message('m1'), [buttonholes(40)]), replies: [reply('m1', 'again', { id: 'another id' })] }),
      ).toBe('stored');
      expect(store.thread(key()).version).toBe(1);
      expect(store.unsent(now)).toHaveLength(1);
    });

    it('refuses an outcome for a message that was never received', () => {
      expect(() => store.commit(outcome(store, message('m1'), [buttonholes(40)]))).toThrow('never received');
      expect(store.thread(key()).version).toBe(0);
    });

    it('stores nothing at all of an outcome with a count that is not a number', () => {
      store.receive(message('m1'), 'd1');
      expect(() => store.commit(outcome(store, message('m1'), [onDay('2027-03-14'), buttonholes(Number.NaN)]))).toThrow();
      expect(store.thread(key()).version).toBe(0);
      expect(store.entries(key())).toEqual([]);
      expect(store.unsent(now)).toEqual([]);
      expect(store.waiting()).toHaveLength(1);
    });

    it('never lets an entry be rewritten', () => {
      tell(store, message('m1'), [buttonholes(40)]);
      expect(() => store.database.prepare("UPDATE entries SET facts = '[]'").run()).toThrow('append-only');
    });
  });

  describe('open events', () => {
    const book = (thread: string, date: string | undefined) =>
      tell(store, message(`m-${thread}`, { thread }), [buttonholes(5), ...(date ? [onDay(date)] : [])]);

    it('come by date, then by age; the undated follow; past and cancelled ones are left out', () => {
      book('undated', undefined);
      book('june', '2027-06-05');
      book('march', '2027-03-14');
      book('march too', '2027-03-14');
      book('past', '2026-12-31');
      book('off', '2027-04-01');
      tell(store, message('m9', { thread: 'off' }), [{ fact: 'step', step: 'cancelled', words: 'called off' }]);
      expect(store.openEvents(workspace, day('2027-01-01')).map((event) => event.key.thread)).toEqual([
        'march',
        'march too',
        'june',
        'undated',
      ]);
      expect(store.openEvents(workspace, day('2027-03-15')).map((event) => event.key.thread)).toEqual(['june', 'undated']);
      expect(store.openEvents('W-other', day('2027-01-01'))).toEqual([]);
    });

    it('are found through the index', () => {
      const plan = store.database
        .prepare(
          "EXPLAIN QUERY PLAN SELECT state FROM threads WHERE workspace = 'w' AND cancelled = 0 AND event_date >= '2027' ORDER BY event_date, seq",
        )
        .all()
        .map((step) => (step as { detail: string }).detail);
      expect(plan).toEqual([expect.stringContaining('USING INDEX threads_by_date')]);
    });
  });

  describe('a studio', () => {
    const stateWith = (item: string) => {
      const { state } = store.studio(workspace, yard);
      return { ...state, packs: [...state.packs, pack(item, '9.50') as never] };
    };
    const priced = (id: string, item: string) => {
      const about = message(id);
      store.receive(about, `d ${id}`);
      const base = outcome(store, about, []);
      return { ...base, entries: [entry(about, [pack(item, '9.50')], { scope: 'studio' })], studio: stateWith(item) };
    };

    it('begins with the settings given, and follows the settings file until others are chosen in chat', () => {
      expect(store.studio(workspace, yard)).toMatchObject({ version: 0, state: { settings: yard, packs: [], crew: [] } });
      const renamed = { ...yard, name: 'The Sail Loft' };
      expect(store.studio(workspace, renamed).state.settings.name).toBe('The Sail Loft');
      store.commit(priced('m1', 'statice'));
      expect(store.studio(workspace, yard).state.settings.name).toBe('The Net Loft');

      const about = message('m2');
      store.receive(about, 'd2');
      const { state } = store.studio(workspace, yard);
      store.commit({ ...outcome(store, about, []), studio: { ...state, settings: { ...yard, priceStep: '0.50' } } });
      expect(store.studio(workspace, renamed).state).toMatchObject({
        settings: { name: 'The Net Loft', priceStep: '0.50' },
        packs: [{ item: 'statice' }],
      });
    });

    it('shares prices said in any thread, and only in its workspace', () => {
      expect(store.commit(priced('m1', 'statice'))).toBe('stored');
      expect(store.studio(workspace, yard)).toMatchObject({ version: 1, state: { packs: [{ item: 'statice' }] } });
      expect(store.studioEntries(workspace).map((line) => line.facts)).toEqual([[pack('statice', '9.50')]]);
      expect(store.studio('W-other', yard).state.packs).toEqual([]);
      expect(store.studioEntries('W-other')).toEqual([]);
    });

    it('refuses a figure worked out from an older price list', () => {
      const older = priced('m1', 'statice');
      store.commit(priced('m2', 'ruscus'));
      expect(store.commit({ ...older, message: older.message, expected: { ...older.expected, thread: 1 } })).toBe('moved');
    });
  });

  describe('reminders', () => {
    const morning = [reply('2027-03-01', 'today: 12 buttonholes', { id: 'reminder 2027-03-01', purpose: 'reminder', to: key('') })];

    it('are claimed once for a day, a channel and a kind, with their reply', () => {
      expect(store.remind(workspace, 'bench', 'morning', day('2027-03-01'), morning, now)).toBe(true);
      expect(store.remind(workspace, 'bench', 'morning', day('2027-03-01'), morning, now)).toBe(false);
      expect(store.remind(workspace, 'bench', 'week ahead', day('2027-03-01'), [], now)).toBe(true);
      expect(store.unsent(now).map((out) => out.id)).toEqual(['reminder 2027-03-01']);
      expect(store.lastReminder(workspace, 'bench', 'morning')).toBe('2027-03-01');
      expect(store.lastReminder(workspace, 'weddings', 'morning')).toBeUndefined();
    });
  });

  it('says the same after it was closed and opened again', () => {
    if (where === 'memory') return expect(store.path).toBe(':memory:');
    tell(store, message('m1'), [buttonholes(40), onDay('2027-03-14')]);
    store.receive(message('m2'), 'd2');
    const before = [store.thread(key()), store.entries(key()), store.waiting(), store.unsent(now), store.studio(workspace, yard)];
    store.close();
    store = openStore({ path: store.path, powerSafe: false });
    expect([store.thread(key()), store.entries(key()), store.waiting(), store.unsent(now), store.studio(workspace, yard)]).toEqual(before);
    expect(store.unsent(now)[0]?.reply).toEqual(says('answer to m1'));
  });
});
