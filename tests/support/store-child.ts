// A process of its own for the store's tests: what it does is its first argument.

import { writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { openStore } from '../../src/store/sqlite-store.ts';
import { StoreTrouble } from '../../src/store/store-trouble.ts';
import { workADay } from './work-a-day.ts';

const [what = '', path = '', third = '0', fourth = '0'] = process.argv.slice(2);
const say = (value: unknown): void => void process.stdout.write(`${JSON.stringify(value)}\n`);
const lock = new Int32Array(new SharedArrayBuffer(4));
const pause = (milliseconds: number): void => void Atomics.wait(lock, 0, 0, milliseconds);

/** Opens the store and says how that went; keeps running when it went well and was asked to. */
const openAndSay = (): void => {
  try {
    const store = openStore({ path, powerSafe: false });
    say({ opened: process.pid });
    if (what === 'open-and-stay') setInterval(() => undefined, 1000);
    else store.close();
  } catch (error) {
    if (!(error instanceof StoreTrouble)) throw error;
    say({ code: error.code, sentence: error.message });
  }
};

/** Dies without a word, as if the power button were held, when its last step has come (0: never). */
let stepsLeft = Number(fourth);
const dieInTime = (): void => {
  stepsLeft -= 1;
  if (stepsLeft === 0) process.kill(process.pid, 'SIGKILL');
};

if (what === 'lock') {
  const db = new Database(path);
  db.exec('BEGIN IMMEDIATE');
  writeFileSync(1, 'locked\n');
  pause(Number(third));
  writeFileSync(1, `${Date.now()}\n`);
  db.exec('COMMIT');
} else if (what === 'open-as-nobody') {
  if (process.getuid?.() === 0) process.setuid?.(65_534);
  openAndSay();
} else if (what === 'work-a-day') {
  await workADay({ path, deliveries: Number(third), step: dieInTime });
} else {
  openAndSay();
}
