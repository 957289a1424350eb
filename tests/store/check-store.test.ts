// The check finds every kind of damage it is for; and forgetting and exporting a thread do what they say.

import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkStore } from '../../src/store/check-store.ts';
import { exportThread, exportWorkspace, workspaces } from '../../src/store/export.ts';
import { forget } from '../../src/store/forget.ts';
import type { OpenStore } from '../../src/store/sqlite-store.ts';
import type { Day } from '../../src/values/day.ts';
import { buttonholes, entry, key, message, onDay, outcome, pack, reply, tell, workspace, yard } from './builders.ts';
import { newPath, open } from './in-folder.ts';

const now = Date.UTC(2027, 0, 20, 9);

/** Two threads, a price for the whole studio, one message still waiting. */
const aDay = (path = ':memory:'): OpenStore => {
  const store = open(path);
  tell(
    store,
    message('m1', { text: 'for Catriona', author: 'isla' }),
    [buttonholes(40), onDay('2027-03-14')],
    [reply('m1', 'for Catriona, 40')],
  );
  tell(store, message('m2', { thread: 't2' }), [buttonholes(6)]);
  const priced = message('m3');
  store.receive(priced, 'd3');
  const statice = pack('statice', '9.50');
  const entries = [entry(priced, [statice], { scope: 'studio' })];
  const studio = store.folds.studio(yard, entries);
  store.commit({ ...outcome(store, priced, []), entries, studio });
  store.receive(message('m4', { text: 'and for Catriona too' }), 'd4');
  return store;
};
const faults = (store: OpenStore) => checkStore(store.database, store.folds).faults;

describe('the store check', () => {
  it('finds nothing wrong with a sound store, and counts it', () => {
    expect(checkStore(aDay().database, open(':memory:').folds)).toEqual({
      threads: 2,
      entries: 3,
      waitingMessages: 1,
      waitingReplies: 3,
      faults: [],
    });
  });

  const damage: readonly (readonly [what: string, sql: string, fault: string])[] = [
    [
      'a snapshot that was changed',
      "UPDATE threads SET state = json_set(state, '$.lines[0].count', 41) WHERE thread = 't1'",
      'thread W-loft/weddings/t1: the snapshot is not what its log says',
    ],
    [
      'a studio that was changed',
      "UPDATE studios SET state = json_set(state, '$.packs[0].price', '1.00')",
      'studio W-loft: the snapshot is not what its log says',
    ],
    ['an entry that is gone', "DELETE FROM entries WHERE thread = 't2'", 'thread W-loft/weddings/t2: entries are missing'],
    [
      'an entry that cannot be read',
      "DROP TRIGGER entries_are_append_only; UPDATE entries SET facts = '[7]' WHERE seq = 2",
      'thread W-loft/weddings/t2: Entry 2 of the database cannot be read. Run the store check, and restore a backup if it is damaged.',
    ],
    [
      'a thread that is gone',
      "PRAGMA foreign_keys = OFF; DELETE FROM threads WHERE thread = 't2'",
      'row 2 of entries refers to a thread that is not there',
    ],
    [
      'an index that lost a row',
      `PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'slot, seq', 'seq, slot') WHERE name = 'outbox_about'; PRAGMA writable_schema = RESET`,
      'row 1 missing from index outbox_about',
    ],
    ['text kept too long', "UPDATE inbox SET text = 'for Catriona' WHERE handled = 1", '3 handled messages still hold their text'],
  ];
  it.each(damage)('finds %s', (_, sql, fault) => {
    const store = aDay();
    store.database.unsafeMode();
    store.database.exec(sql);
    expect(faults(store)).toContain(fault);
    expect(faults(store).join()).not.toContain('Catriona');
  });
});

describe('forgetting a thread', () => {
  it('leaves nothing of it in any file, keeps the price list and the other threads', () => {
    const path = newPath();
    const store = aDay(path);
    const onDisk = () => readdirSync(dirname(path)).some((name) => readFileSync(join(dirname(path), name)).includes('Catriona'));
    expect(onDisk()).toBe(true);
    expect(forget(store, key('t1'))).toEqual({ entries: 1, keptForStudio: 1, messages: 3, replies: 2 });
    expect(onDisk()).toBe(false);
    expect(store.thread(key('t1'))).toMatchObject({ version: 0, state: { lines: [] } });
    expect(store.waiting()).toEqual([]);
    expect(store.knows(key('t1'))).toBe(false);
    expect(store.thread(key('t2')).version).toBe(1);
    expect(store.studio(workspace, yard).state.packs).toMatchObject([{ item: 'statice' }]);
    expect(store.studioEntries(workspace)).toMatchObject([{ author: '', facts: [{ item: 'statice' }] }]);
    expect(store.unsent(now).map((out) => out.about)).toEqual(['m2']);
    expect(faults(store)).toEqual([]);
  });

  it('lets the thread begin anew', () => {
    const store = aDay();
    forget(store, key('t1'));
    tell(store, message('m5'), [buttonholes(3)]);
    expect(store.thread(key('t1'))).toMatchObject({ version: 1, state: { lines: [{ count: 3 }] } });
    expect(faults(store)).toEqual([]);
  });
});

describe('an export', () => {
  it('of a thread holds its state, its whole log and what still waits', () => {
    const store = aDay();
    expect(exportThread(store, key('t1'))).toEqual({
      ...store.thread(key('t1')),
      entries: store.entries(key('t1')),
      waiting: [message('m4', { text: 'and for Catriona too' })],
    });
  });

  it('of a workspace holds everything of it and nothing of another, and goes through JSON unchanged', () => {
    const store = aDay();
    tell(store, message('m1', { workspace: 'W-other' }), [buttonholes(77)]);
    store.receive(message('m8', { thread: 'unhandled' }), 'd8');
    store.remind(workspace, 'bench', 'morning', '2027-01-20' as Day, [], now);
    const exported = exportWorkspace(store, workspace);
    expect(exported.threads.map((thread) => thread.key.thread)).toEqual(['t1', 't2', 'unhandled']);
    expect(exported).toMatchObject({
      format: 1,
      studio: { settings: yard, packs: [{ item: 'statice' }] },
      reminders: [{ channel: 'bench', kind: 'morning', day: '2027-01-20' }],
    });
    expect(JSON.parse(JSON.stringify(exported))).toEqual(exported);
    expect(JSON.stringify(exported)).not.toContain('77');
    expect(workspaces(store.database)).toEqual([workspace, 'W-other']);
  });
});
