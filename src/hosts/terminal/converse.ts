// The assistant at a prompt: type a message, read the reply. Piped input works the same, one message a line. Every line goes through the store
// and the outbox like a Slack message does, so that what is shown here is what Slack would show.

import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { Handled } from '../../assistant/handled.ts';
import type { Clock, IncomingMessage, Store } from '../../assistant/ports.ts';
import { replyToText } from '../../reply/reply-to-text.ts';
import { type InputLine, readInputLine } from './input-line.ts';
import { handledToJson, repeatToJson, troubleToJson } from './json-line.ts';

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
  for await (const text of lines) {
    count += 1;
    if (!talk.json && !talk.prompt) say(`> ${text}`);
    const switched = talk.json ? undefined : /^:thread +(\S.*)$/.exec(text)?.[1];
    if (!talk.json && /^:(quit|q)$/.test(text.trim())) break;
    if (switched) {
      thread = switched.trim();
      say(`Now in the thread “${thread}”.\n`);
    } else {
      const context = { thread, nextId: `${talk.idPrefix}m${count}`, now: talk.clock.now(), addressed: !talk.json, json: talk.json };
      const read = readInputLine(text, context);
      if (read.ok) answer(talk, say, read.line);
      else say(talk.json ? troubleToJson(read.trouble) : read.trouble);
    }
    if (talk.prompt) lines.prompt();
  }
};

const answer = (talk: Conversation, say: (text: string) => void, line: InputLine): void => {
  const { message } = line;
  const received = talk.store.receive(message, `${message.id}/${message.revision}`);
  const handled = talk.work();
  for (const one of handled) deliver(talk, say, one, sameMessage(one.message, message) ? line.shownId : one.message.id);
  if (received === 'repeat' && talk.json) say(repeatToJson(message.thread, line.shownId));
  deliverRest(talk, say);
};

const sameMessage = (a: IncomingMessage, b: IncomingMessage): boolean => a.id === b.id && a.revision === b.revision;

/** Prints one handled message and marks its replies as shown. */
const deliver = (talk: Conversation, say: (text: string) => void, handled: Handled, shownId: string): void => {
  const now = talk.clock.now();
  const queued = talk.store.unsent(now).find((reply) => reply.about === handled.message.id && reply.to.thread === handled.message.thread);
  if (queued) talk.store.begin(queued.id, now);
  if (talk.json) say(handledToJson(handled, shownId));
  else if (handled.reply) say(`${replyToText(handled.reply)}\n`);
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
