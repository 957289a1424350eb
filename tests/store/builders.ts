// A studio, its messages and their outcomes, invented, for the store's tests.

import type { IncomingMessage, Outcome, OutgoingReply, Store, ThreadKey } from '../../src/assistant/ports.ts';
import type { Fact } from '../../src/reading/fact.ts';
import type { Reply } from '../../src/reply/reply.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import type { Entry } from '../../src/thread/entry.ts';
import { foldEvent } from '../../src/thread/fold.ts';

export const yard: StudioSettings = { name: 'The Net Loft', region: 'GB', subdivision: 'SCT', timeZone: 'Europe/London', currency: 'GBP' };
export const workspace = 'W-loft';
export const key = (thread = 't1', channel = 'weddings', space = workspace): ThreadKey => ({ workspace: space, channel, thread });

export const message = (id: string, more: Partial<IncomingMessage> = {}): IncomingMessage => ({
  ...key(),
  id,
  revision: '1',
  author: 'isla',
  kind: 'new',
  text: `message ${id}`,
  addressed: false,
  shared: false,
  sentAt: Date.UTC(2027, 0, 20, 9),
  ...more,
});

export const says = (text: string): Reply => ({ blocks: [{ block: 'answer', line: [{ text, meaning: 'plain' }] }] });

export const reply = (about: string, text = `answer to ${about}`, more: Partial<OutgoingReply> = {}): OutgoingReply => ({
  id: `answer ${about} ${text}`,
  to: key(),
  purpose: 'answer',
  about,
  reply: says(text),
  ...more,
});

export const buttonholes = (count: number): Fact => ({ fact: 'pieces', piece: 'buttonhole', count, words: `${count} lapel pieces` });
export const onDay = (date: string): Fact => ({ fact: 'date', date, words: date });
export const pack = (item: string, price: string): Fact => ({ fact: 'pack', item, price, words: `${item} ${price}` });

export const entry = (about: IncomingMessage, facts: readonly Fact[], more: Partial<Entry> = {}): Entry => ({
  scope: 'event',
  message: about.id,
  revision: about.revision,
  kind: about.kind === 'edit' ? 'edited' : about.kind === 'delete' ? 'deleted' : 'stated',
  author: about.author,
  at: about.sentAt,
  facts,
  ...more,
});

/** What handling a message would hand to the store, from what the store now holds. */
export const outcome = (store: Store, about: IncomingMessage, facts: readonly Fact[], replies = [reply(about.id)]): Outcome => {
  const entries = facts.length > 0 || about.kind === 'delete' ? [entry(about, facts)] : [];
  const expected = { thread: store.thread(about).version, studio: store.studio(about.workspace, yard).version };
  const event = foldEvent([...store.entries(about), ...entries]);
  return {
    message: about,
    entries,
    expected,
    event,
    replies: replies.map((out) => ({
      ...out,
      id: `${about.workspace} ${about.channel} ${out.id}`,
      to: key(about.thread, about.channel, about.workspace),
    })),
  };
};

/** Receives and handles one message. */
export const tell = (store: Store, about: IncomingMessage, facts: readonly Fact[], replies = [reply(about.id)]): void => {
  store.receive(about, `delivery of ${about.channel} ${about.id} ${about.revision}`);
  store.commit(outcome(store, about, facts, replies));
};
