// A studio's threads on real parts with a clock that can be moved: messages and taps in, replies read from the outbox as a host would post them.

import { createAssistant } from '../../src/assistant/assistant.ts';
import type { IncomingMessage, OutgoingReply } from '../../src/assistant/ports.ts';
import type { Action, Reply } from '../../src/reply/reply.ts';
import { replyToText } from '../../src/reply/reply-to-text.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { demoStudio } from './converse.ts';

export const workspace = 'W-yard';
export const channel = 'C-events';

export interface BenchTalkOptions {
  readonly now: string; // an instant with a zone
  readonly studio?: StudioSettings;
  readonly path?: string; // of the store; in memory when left out
}

export type BenchTalk = ReturnType<typeof benchTalk>;

export const benchTalk = ({ now, studio = demoStudio, path = ':memory:' }: BenchTalkOptions) => {
  let instant = Date.parse(now);
  let count = 0;
  const clock = { now: () => instant };
  const store = openStore({ path, powerSafe: false });
  const failures: unknown[] = [];
  const assistant = createAssistant({ store, clock, settings: studio, onFailure: (_id, error) => void failures.push(error) });

  const hear = (message: Partial<IncomingMessage> & { readonly thread: string }): OutgoingReply | undefined => {
    count += 1;
    const id = `m${count} ${instant}`;
    const whole = { workspace, channel, id, revision: '0', author: 'isla', kind: 'new', text: '', addressed: true, shared: false } as const;
    const heard: IncomingMessage = { ...whole, sentAt: instant, ...message };
    store.receive(heard, `${heard.id}/${heard.revision}`);
    assistant.work();
    if (failures.length > 0) throw failures[0];
    return posted().find((reply) => reply.about === heard.id);
  };

  /** Posts and returns all that waits, oldest first. */
  const posted = (): readonly OutgoingReply[] => {
    const all: OutgoingReply[] = [];
    for (let waiting = store.unsent(instant); waiting.length > 0; waiting = store.unsent(instant)) {
      for (const reply of waiting) {
        all.push(store.begin(reply.id, instant) ?? reply);
        store.posted(reply.id, `posted ${reply.id}`, instant);
      }
    }
    return all;
  };

  return {
    store,
    clock,
    studio,
    setClock: (text: string): void => {
      instant = Date.parse(text);
    },
    hear,
    posted,
    /** The text of the reply to this message; '' where the bot is silent. */
    say: (thread: string, text: string): string => textOf(hear({ thread, text })?.reply),
    tap: (from: { readonly channel: string; readonly thread?: string }, action: Action, entry?: string): OutgoingReply | undefined =>
      hear({
        channel: from.channel,
        thread: from.thread ?? 'list',
        kind: 'tap',
        tap: { action: action.action, value: entry === undefined ? action.value : `${action.value}\n${entry}` },
      }),
    stateOf: (thread: string, of = channel) => store.thread({ workspace, channel: of, thread }).state,
    close: (): void => store.close(),
  };
};

export const textOf = (reply: Reply | undefined): string => (reply ? replyToText(reply) : '');

export const actionsOf = (reply: Reply | undefined): readonly Action[] =>
  (reply?.blocks ?? []).flatMap((block) => (block.block === 'actions' ? block.actions : []));

export const actionNamed = (reply: Reply | undefined, name: Action['action'], place = 0): Action => {
  const action = actionsOf(reply).filter((one) => one.action === name)[place];
  if (!action) throw new Error(`no button “${name}” in: ${textOf(reply)}`);
  return action;
};
