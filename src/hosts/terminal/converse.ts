// The assistant at a prompt: type a message, read the reply. Piped input works the same, one message a line. Every line goes through the store
// and the outbox like a Slack message does, so that what is shown here is what Slack would show.

import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { Handled } from '../../assistant/handled.ts';
import { headsPriceList } from '../../assistant/import-prices.ts';
import type { Clock, IncomingMessage, Store } from '../../assistant/ports.ts';
import type { Reply } from '../../reply/reply.ts';
import { replyToText } from '../../reply/reply-to-text.ts';
import { type InputContext, type InputLine, type InputRead, readFileLine, readInputLine } from './input-line.ts';
import { handledToJson, repeatToJson, troubleToJson } from './json-line.ts';
import { type ListFileRead, readListFile } from './list-file.ts';
import type { SaveFile } from './save-file.ts';

export interface Conversation {
  readonly input: Readable;
  readonly output: Writable;
  readonly store: Store;
  readonly clock: Clock;
  readonly json: boolean;
  readonly prompt: boolean; // a person is typing; otherwise what was piped in is shown above its reply
  readonly greeting: string;
  readonly idPrefix: string; // keeps ids of this run apart from those of earlier runs on the same store
  readonly work: () => readonly Handled[];
  readonly morning?: () => Reply | undefined; // what the bench channel would be told now, for “:morning”
  readonly save?: SaveFile; // left out: files are only described
}

export const converse = async (talk: Conversation): Promise<void> => {
  const say = (text: string): void => void talk.output.write(`${text}\n`);
  if (!talk.json && talk.greeting !== '') say(`${talk.greeting}\n`);
  for (const handled of talk.work()) deliver(talk, say, handled, handled.message.id); // left over from a run that was killed
  deliverRest(talk, say);
  const lines = createInterface({ input: talk.input, ...(talk.prompt ? { output: talk.output, prompt: '> ' } : {}) });
  if (talk.prompt) lines.prompt();
  let thread = 't1';
  let count = 0;
  let pasted: string[] = []; // a price list pasted line by line, up to an empty line
  const read = (text: string): void => {
    const context = { thread, nextId: `${talk.idPrefix}m${count}`, now: talk.clock.now(), addressed: !talk.json, json: talk.json };
    const file = talk.json ? undefined : /^:file +(\S.*)$/.exec(text)?.[1];
    const given = file === undefined ? readInputLine(text, context) : asLine(readListFile(file), context);
    if (given.ok) answer(talk, say, given.line);
    else say(talk.json ? troubleToJson(given.trouble) : `${given.trouble}\n`);
  };
  const endPaste = (): void => {
    const list = pasted.join('\n');
    pasted = [];
    if (list !== '') read(list);
  };
  let begun = ''; // of a message of several lines: all but the last of them end with a backslash
  for await (const typed of lines) {
    if (!talk.json && !talk.prompt) say(`> ${typed}`);
    if (!talk.json && typed.endsWith('\\')) {
      begun += `${typed.slice(0, -1)}\n`;
      if (talk.prompt) lines.prompt();
      continue;
    }
    count += 1;
    const text = begun + typed;
    begun = '';
    const switched = talk.json ? undefined : /^:thread +(\S.*)$/.exec(text)?.[1];
    if (!talk.json && /^:(quit|q)$/.test(text.trim())) break;
    if (!talk.json && text.trim() !== '' && (pasted.length > 0 || headsPriceList(text))) pasted.push(text);
    else if (pasted.length > 0) endPaste();
    else if (talk.morning && text.trim() === ':morning') sayMorning(talk.morning(), talk.json, say);
    else if (switched) {
      thread = switched.trim();
      say(`Now in the thread “${thread}”.\n`);
    } else read(text);
    if (talk.prompt && pasted.length === 1) say('Paste the rest of the list, then an empty line.');
    if (talk.prompt) lines.prompt();
  }
  if (begun !== '') read(begun.trimEnd());
  endPaste();
};

/** Shown and not kept: it claims nothing, so the bench channel still gets its own. */
const sayMorning = (reply: Reply | undefined, json: boolean, say: (text: string) => void): void => {
  const text = reply ? replyToText(reply) : 'Nothing is due today, so nothing is said.';
  const actions = (reply?.blocks ?? []).flatMap((block) => (block.block === 'actions' ? block.actions : []));
  say(json ? JSON.stringify({ thread: '', id: 'morning', figures: {}, reply: { text, actions } }) : `${text}\n`);
};

const asLine = (file: ListFileRead, context: InputContext): InputRead =>
  file.ok ? { ok: true, line: readFileLine(file.text, context) } : file;

const answer = (talk: Conversation, say: (text: string) => void, line: InputLine): void => {
  const { message } = line;
  const received = talk.store.receive(message, `${message.id}/${message.revision}`);
  const handled = talk.work();
  for (const one of handled) deliver(talk, say, one, sameMessage(one.message, message) ? line.shownId : one.message.id);
  if (received === 'repeat' && talk.json) say(repeatToJson(message.thread, line.shownId));
  deliverRest(talk, say);
};

const howToSave = 'Start with --files FOLDER to have files saved there.';

const sameMessage = (a: IncomingMessage, b: IncomingMessage): boolean => a.id === b.id && a.revision === b.revision;

/** Prints one handled message and marks its replies as shown. */
const deliver = (talk: Conversation, say: (text: string) => void, handled: Handled, shownId: string): void => {
  const now = talk.clock.now();
  const queued = talk.store.unsent(now).find((reply) => reply.about === handled.message.id); // a tick is answered in another thread
  if (queued) talk.store.begin(queued.id, now);
  const files = (handled.reply?.blocks ?? []).flatMap((block) => (block.block === 'file' ? [block.file] : []));
  const saved = talk.save === undefined ? [] : files.map((file) => talk.save?.(file, handled.message) ?? { said: '' });
  if (talk.json) say(handledToJson(handled, shownId, saved));
  else if (handled.reply) {
    const notes = talk.save === undefined && files.length > 0 ? [howToSave] : saved.map(({ said }) => said);
    say(`${[replyToText(handled.reply), ...notes].join('\n')}\n`);
  }
  if (queued) talk.store.posted(queued.id, `shown-${queued.id}`, now);
};

/** Replies without a message of this run: reminders, and answers whose printing was cut short. */
const deliverRest = (talk: Conversation, say: (text: string) => void): void => {
  for (let queued = talk.store.unsent(talk.clock.now()); queued.length > 0; queued = talk.store.unsent(talk.clock.now())) {
    for (const reply of queued) {
      const current = talk.store.begin(reply.id, talk.clock.now());
      if (current) {
        const text = replyToText(current.reply);
        say(talk.json ? JSON.stringify({ thread: current.to.thread, id: current.about, figures: {}, reply: { text } }) : `${text}\n`);
      }
      talk.store.posted(reply.id, `shown-${reply.id}`, talk.clock.now());
    }
  }
};
