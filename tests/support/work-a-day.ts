// The work on a busy day with everything outside the process kept in files beside the database: what the chat host was shown, and which
// deliveries it was told had arrived. Whoever calls may stop the world at any step.

import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import type { Poster } from '../../src/assistant/ports.ts';
import { startOutboxPump } from '../../src/clockwork/outbox-pump.ts';
import { type OpenStore, openStore } from '../../src/store/sqlite-store.ts';
import { outcome } from '../store/builders.ts';
import { deliveryNumber, factsOf, replyTo } from './busy-day.ts';

export interface Day {
  readonly path: string;
  readonly deliveries: number;
  /** Called before and after each thing that leaves a trace, and inside every transaction. */
  readonly step: () => void;
}

const lines = (file: string): readonly string[] => (existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : []);

/** Steps inside the transactions, through triggers that only this connection has. */
const stepInside = ({ database }: OpenStore, step: () => void): void => {
  database.function('step', { deterministic: false }, () => {
    step();
    return 0;
  });
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

/** A chat host whose messages are lines of a file. */
const chatIn = (file: string, step: () => void): Poster => ({
  post: async (reply) => {
    step();
    const hostId = reply.replaces ?? `h ${reply.id}`;
    const [block] = reply.reply.blocks;
    const text = block?.block === 'answer' ? block.line[0]?.text : '';
    appendFileSync(file, `${JSON.stringify({ id: reply.id, hostId, text, update: reply.replaces !== undefined })}\n`);
    step();
    return { outcome: 'posted', hostId };
  },
  find: async (reply) => {
    const line = lines(file).find((posted) => JSON.parse(posted).id === reply.id);
    return line === undefined ? undefined : JSON.parse(line).hostId;
  },
});

/** Does what of the day is not done yet. A delivery not acknowledged is sent again, as Slack does. */
export const workADay = async ({ path, deliveries, step }: Day): Promise<void> => {
  const store = openStore({ path, powerSafe: false });
  stepInside(store, step);
  const failed = (line: unknown): never => {
    throw new Error(JSON.stringify(line));
  };
  const log = { info: () => undefined, warn: () => undefined, error: failed };
  const poster = chatIn(`${path}.chat`, step);
  const pump = startOutboxPump({ store, poster, clock: { now: () => Date.now() }, log, channelPause: 0 });
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
  for (let n = 0; n < deliveries; n += 1) {
    if (done.has(String(n))) continue;
    step();
    store.receive(deliveryNumber(n), `delivery ${n}`);
    step();
    appendFileSync(acknowledged, `${n}\n`);
    step();
    handleWaiting();
    if (n % 3 === 0) await pump.settled();
  }
  if ((await pump.stop(60_000)) !== 'drained') throw new Error('the day did not end');
  store.close();
};
