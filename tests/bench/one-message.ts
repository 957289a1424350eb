// What handling one message costs against the least it could cost: the date read by chrono-node alone, and its bytes put into SQLite by one bare insert.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { en } from 'chrono-node';
import { createAssistant } from '../../src/assistant/assistant.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import { median, ms, type Row, timed, times } from './measure.ts';
import { message, studioOf, workspace } from './season.ts';

const goes = 300;
const warmUp = 200;
const texts = ['40 lapel pieces at 25 inc tax', 'dried, event 14 March'] as const;

export const oneMessage = (): readonly Row[] => {
  const folder = mkdtempSync(join(tmpdir(), 'benchbell-bench-'));
  const now = Date.UTC(2027, 0, 20, 9);
  const store = openStore({ path: join(folder, 'studio.sqlite') });
  const fail = (_id: string, error: unknown): never => {
    throw error;
  };
  const assistant = createAssistant({ store, clock: { now: () => now }, settings: studioOf(1), onFailure: fail });
  let count = 0;
  const receive = (text: string): void => {
    count += 1;
    const key = { workspace, channel: `C${count % 50}`, thread: `t${count}` };
    store.receive(message(key, `m${count}`, text, now), `d${count}`);
  };
  const written = (): number =>
    store.database.prepare<[], { bytes: number }>('SELECT length(reply) AS bytes FROM outbox ORDER BY seq DESC LIMIT 1').get()?.bytes ?? 0;

  const raw = new Database(join(folder, 'raw.sqlite'));
  raw.pragma('journal_mode = WAL');
  raw.pragma('synchronous = FULL');
  raw.exec('CREATE TABLE kept (id INTEGER PRIMARY KEY, bytes TEXT NOT NULL) STRICT');
  const insert = raw.prepare('INSERT INTO kept (bytes) VALUES (?)');

  const rows = texts.flatMap((text): Row[] => {
    const handle = (): void => void assistant.work();
    for (let n = 0; n < warmUp; n += 1) {
      receive(text);
      handle();
      en.GB.parse(text);
    }
    const bytes = 'x'.repeat(written() + 2_000); // the reply, and about as much again for the message, its entry and the snapshot
    const date = timed(goes, () => void en.GB.parse(text));
    const bare = timed(goes, () => void insert.run(bytes));
    const taking = timed(goes, () => receive(text));
    handle(); // what was just taken
    const one = timed(goes, () => {
      receive(text);
      handle();
    });
    const least = median(date.clock) + median(bare.clock);
    const handled = median(one.clock) - median(taking.clock);
    const leastWork = date.processor + bare.processor;
    return [
      { what: `“${text}”: chrono alone, one bare insert`, measured: `${ms(median(date.clock))} + ${ms(median(bare.clock))}` },
      { what: '  read, fold, compute and store', measured: `${ms(handled)}, ${times(handled / least)}`, aim: 'at most 3×' },
      {
        what: '  the same in processor time',
        measured: `${ms(one.processor - taking.processor)}, ${times((one.processor - taking.processor) / leastWork)}`,
      },
      { what: '  with taking the delivery (a second commit)', measured: `${ms(median(one.clock))}, ${times(median(one.clock) / least)}` },
    ];
  });
  raw.close();
  store.close();
  rmSync(folder, { recursive: true, force: true });
  return rows;
};
