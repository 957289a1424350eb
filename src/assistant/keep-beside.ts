// Facts the bot keeps beside what a message states, in the message's own entry, so that they live and die with it.

import type { Fact } from '../reading/fact.ts';
import { applyFacts } from '../thread/apply-facts.ts';
import type { Entry } from '../thread/entry.ts';
import { foldEvent } from '../thread/fold.ts';
import type { Logged, Standpoint } from './log-entries.ts';
import type { IncomingMessage, Store } from './ports.ts';

/** A new message extends the snapshot; after an edit or an undo the log is folded again. */
export const keepBeside = (store: Store, at: Standpoint, message: IncomingMessage, logged: Logged, facts: readonly Fact[]): Logged => {
  if (facts.length === 0) return logged;
  const own = logged.entries.find((entry) => entry.scope === 'event' && entry.message === message.id && isSaying(entry));
  const kept: Entry = own
    ? { ...own, facts: [...own.facts, ...facts] }
    : {
        scope: 'event',
        message: message.id,
        revision: message.revision,
        kind: message.kind === 'edit' ? 'edited' : 'stated',
        author: message.author,
        at: message.sentAt,
        facts,
      };
  const entries = own ? logged.entries.map((entry) => (entry === own ? kept : entry)) : [...logged.entries, kept];
  const plain = entries.every((entry) => entry.kind === 'stated');
  return { ...logged, entries, event: plain ? applyFacts(logged.event, facts) : foldEvent([...store.entries(at.thread.key), ...entries]) };
};

const isSaying = ({ kind }: Entry): boolean => kind === 'stated' || kind === 'edited';
