// The terminal host on real parts: the studio's file or the demo studio, a store (in memory unless one is named), the assistant, the prompt.

import { Readable } from 'node:stream';
import { createAssistant } from './assistant/assistant.ts';
import { createFileMaker } from './assistant/make-file.ts';
import type { Clock } from './assistant/ports.ts';
import { morningNow } from './assistant/remind.ts';
import { converse } from './hosts/terminal/converse.ts';
import { saveInto } from './hosts/terminal/save-file.ts';
import { readConversation } from './read-conversation.ts';
import { readStudioFile } from './read-studio-file.ts';
import type { Settings } from './settings.ts';
import { openStore } from './store/sqlite-store.ts';
import { StoreTrouble } from './store/store-trouble.ts';

const demoStudio = new URL('../demo-data/studio.json', import.meta.url);

/** Returns the exit code: 0, or 2 when a setting stops it from starting. */
export const runTerminal = async (settings: Settings): Promise<number> => {
  const studio = readStudioFile(settings.studioFile ?? demoStudio);
  if (!studio.ok) return refuse(studio.trouble);
  const played = settings.play === undefined ? undefined : readConversation(settings.play);
  if (played && !played.ok) return refuse(played.trouble);
  const now = settings.now ?? played?.now;
  const clock: Clock = { now: () => now ?? Date.now() };
  try {
    const store = openStore({ path: settings.store });
    const assistant = createAssistant({
      store,
      clock,
      settings: studio.settings,
      onFailure: (id, error) => process.stderr.write(`failed ${id}: ${error instanceof Error ? error.message : 'unknown'}\n`),
    });
    const prompt = !settings.json && !played && process.stdin.isTTY === true;
    await converse({
      input: played ? Readable.from(played.lines.map((line) => `${line}\n`)) : process.stdin,
      output: process.stdout,
      store,
      clock,
      json: settings.json,
      prompt,
      greeting: played ? '' : greeting(studio.settings.name, settings),
      idPrefix: settings.store === ':memory:' ? '' : `${Date.now().toString(36)}-`,
      work: () => assistant.work(),
      morning: () => morningNow(store, studio.settings, 'terminal', clock.now()),
      ...(settings.files === undefined
        ? {}
        : { save: saveInto(settings.files, createFileMaker({ store, clock, settings: studio.settings })) }),
    });
    store.close();
    return 0;
  } catch (error) {
    if (error instanceof StoreTrouble) return refuse(error.message);
    throw error;
  }
};

const greeting = (studio: string, settings: Settings): string => {
  const kept = settings.store === ':memory:' ? 'nothing is kept when you leave' : `kept in ${settings.store}`;
  const demo = settings.studioFile ? studio : `the demo studio, ${studio}`;
  return `Benchbell in the terminal, for ${demo} (${kept}; no Slack tokens needed).\nTry: 40 lapel pieces at 25 inc tax`;
};

const refuse = (trouble: string): number => {
  process.stderr.write(`benchbell: ${trouble}\n`);
  return 2;
};
