// Which facts of a log still stand: an edit replaces what its message said, a deletion or an undo takes it back. The place in time stays the message's own.

import type { Fact } from '../reading/fact.ts';
import type { Entry } from './entry.ts';

export interface Standing {
  readonly message: string;
  readonly author: string;
  readonly at: number;
  readonly facts: readonly Fact[];
}

/** The facts that stand, message by message, in the order the messages were first written. */
export const standing = (entries: readonly Entry[]): readonly Standing[] => {
  const messages = new Map<string, Standing>();
  for (const entry of entries) {
    const first = messages.get(entry.message);
    if (entry.kind === 'stated' || entry.kind === 'edited') {
      const at = first?.at ?? entry.at;
      messages.set(entry.message, { message: entry.message, author: entry.author, at, facts: entry.facts });
    } else if (entry.kind === 'deleted' || entry.kind === 'undone') {
      if (first) messages.set(entry.message, { ...first, facts: [] });
    }
  }
  return [...messages.values()].filter((message) => message.facts.length > 0);
};
