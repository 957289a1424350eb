// A process of its own for the store's tests: what it does is its first argument.

import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import type { Poster } from '../../src/assistant/ports.ts';
import { startOutboxPump } from '../../src/clockwork/outbox-pump.ts';
import { type OpenStore, openStore } from '../../src/store/sqlite-store.ts';
import { StoreTrouble } from '../../src/store/store-trouble.ts';
import { outcome } from '../store/builders.ts';
import { deliveryNumber, factsOf, replyTo } from './busy-day.ts';

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

/** Dies without a word, as if the power button were held, when its last step has come. */
let stepsLeft = Number(fourth);
const step = (): number => {
  stepsLeft -= 1;
  if (stepsLeft === 0) process.kill(process.pid, 'SIGKILL');
  return 0;
};

/** Steps inside the transactions too, through triggers that only this connection has. */
const stepInside = ({ database }: OpenStore): void => {
  database.function('step', { deterministic: false }, step);
  for (const [when, table] of [
    ['INSERT', 'inbox'],
    ['UPDATE', 'inbox'],
    ['INSERT', 'entries'],
    ['INSERT', 'threads'],
    ['INSERT', 'outbox'],
    ['UPDATE', 'outbox'],
  ]) {
    database.exec(`CREATE TEMP TRIGGER step_${when}_${table} AFTER ${when} ON main.${table} BEGIN SELECT step(); END`);
  }
};

const lines = (file: string): readonly string[] => (existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : []);

/** A whole day: deliveries until acknowledged, each handled and answered. `third` = number of deliveries, `fourth` = the step to die at. */
const workADay = async (): Promise<void> => {
  const store = openStore({ path, powerSafe: false });
  stepInside(store);
  const chat = `${path}.chat`;
  const poster: Poster = {
    post: async (reply) => {
      step();
      const hostId = reply.replaces ?? `h ${reply.id}`;
      const block = reply.reply.blocks[0];
      const text = block?.block === 'answer' ? block.line[0]?.text : '';
      appendFileSync(chat, `${JSON.stringify({ id: reply.id, hostId, text, update: reply.replaces !== undefined })}\n`);
      step();
      return { outcome: 'posted', hostId };
    },
    find: async (reply) => {
      const line = lines(chat).find((posted) => JSON.parse(posted).id === reply.id);
      return line === undefined ? undefined : JSON.parse(line).hostId;
    },
  };
  const silent = { info: () => undefined, warn: () => undefined, error: (line: unknown) => say(line) };
  const clock = { now: () => Date.now() };
  const pump = startOutboxPump({ store, poster, clock, log: silent, channelPause: 0 });
  const acknowledged = `${path}.acknowledged`;
  const done = new Set(lines(acknowledged));
  const handleWaiting = (): void => {
    for (const message of store.waiting()) {
      step();
      store.commit(outcome(store, message, factsOf(message), replyTo(message)));
      step();
    }
  };
  handleWaiting();
  for (let n = 0; n < Number(third); n += 1) {
    if (done.has(String(n))) continue;
    step();
    store.receive(deliveryNumber(n), `delivery ${n}`);
    step();
    appendFileSync(acknowledged, `${n}\n`);
    step();
    handleWaiting();
    if (n % 3 === 0) await pump.settled();
  }
  await pump.stop(5000);
  store.close();
};

if (what === 'lock') {
  const db = new Database(path);
  db.exec('BEGIN IMMEDIATE');
  writeFileSync(1, 'locked\n');
  pause(Number(third));
  db.exec('COMMIT');
} else if (what === 'open-as-nobody') {
  if (process.getuid?.() === 0) process.setuid?.(65_534);
  openAndSay();
} else if (what === 'work-a-day') {
  await workADay();
} else {
  openAndSay();
}
