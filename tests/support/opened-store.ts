// A store after a conversation in thread t1, for tests that look at what it holds.

import { PassThrough, Readable } from 'node:stream';
import { createAssistant } from '../../src/assistant/assistant.ts';
import type { Clock, ThreadKey } from '../../src/assistant/ports.ts';
import { converse } from '../../src/hosts/terminal/converse.ts';
import { type OpenStore, openStore } from '../../src/store/sqlite-store.ts';
import { demoStudio } from './converse.ts';

export interface Opened {
  readonly store: OpenStore;
  readonly clock: Clock;
  readonly key: ThreadKey;
}

export const openedWith = async (lines: readonly (string | object)[]): Promise<Opened> => {
  const clock = { now: () => Date.parse('2027-01-20T09:00:00Z') };
  const store = openStore({ path: ':memory:', clock });
  const assistant = createAssistant({
    store,
    clock,
    settings: demoStudio,
    onFailure: (_id, error) => {
      throw error;
    },
  });
  const said = lines.map((line) =>
    JSON.stringify(typeof line === 'string' ? { text: line, addressed: true } : { addressed: true, ...line }),
  );
  const output = new PassThrough();
  output.resume();
  const input = Readable.from(said.map((line) => `${line}\n`));
  await converse({ input, output, store, clock, json: true, prompt: false, greeting: '', idPrefix: '', work: () => assistant.work() });
  return { store, clock, key: { workspace: 'terminal', channel: 'terminal', thread: 't1' } };
};
