// Talks to the assistant on real parts (an in-memory store, the demo studio unless another is given) and gives back what the terminal shows.

import { readFileSync } from 'node:fs';
import { PassThrough, Readable } from 'node:stream';
import { createAssistant } from '../../src/assistant/assistant.ts';
import { morningNow } from '../../src/assistant/remind.ts';
import { converse } from '../../src/hosts/terminal/converse.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import { type StudioSettings, studioSettings } from '../../src/studio/settings.ts';

export const demoStudio: StudioSettings = studioSettings.parse(JSON.parse(readFileSync('demo-data/studio.json', 'utf8')));

export interface Talk {
  readonly now?: string; // an instant with a zone
  readonly studio?: StudioSettings;
  readonly json?: boolean;
}

const morning = '2027-01-20T09:00:00Z';

/** Everything the terminal prints for these lines. */
export const talk = async (lines: readonly string[], { now = morning, studio = demoStudio, json = false }: Talk = {}): Promise<string> => {
  const clock = { now: () => Date.parse(now) };
  const store = openStore({ path: ':memory:', clock });
  const failures: unknown[] = [];
  const assistant = createAssistant({ store, clock, settings: studio, onFailure: (_id, error) => void failures.push(error) });
  const output = new PassThrough();
  const printed: Buffer[] = [];
  output.on('data', (chunk: Buffer) => printed.push(chunk));
  const input = Readable.from(lines.map((line) => `${line}\n`));
  await converse({
    input,
    output,
    store,
    clock,
    json,
    prompt: false,
    greeting: '',
    idPrefix: '',
    work: () => assistant.work(),
    morning: () => morningNow(store, studio, 'terminal', clock.now()),
  });
  store.close();
  if (failures.length > 0) throw failures[0];
  return Buffer.concat(printed).toString('utf8');
};

/** The JSON line of each input line, parsed. */
export const talkJson = async (lines: readonly (string | object)[], options: Omit<Talk, 'json'> = {}): Promise<readonly JsonLine[]> => {
  const text = await talk(
    lines.map((line) => (typeof line === 'string' ? line : JSON.stringify(line))),
    { ...options, json: true },
  );
  return text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as JsonLine);
};

export interface JsonLine {
  readonly id: string;
  readonly repeat?: boolean;
  readonly error?: string;
  readonly reading?: {
    readonly facts: readonly Record<string, unknown>[];
    readonly asks: readonly Record<string, unknown>[];
    readonly unread: readonly string[];
  };
  readonly figures: {
    readonly price?: {
      readonly lines: readonly { readonly count: number; readonly each: Record<string, string>; readonly all: Record<string, string> }[];
      readonly all: Record<string, string>;
    };
    readonly bench?: Record<string, unknown>;
    readonly calendar?: readonly { readonly step: string; readonly date: string; readonly late: boolean }[];
  };
  readonly reply: { readonly text: string } | null;
}
