// One line of a log. Append-only: edits, deletions and undo are entries too, and the state of a thread or a studio is a fold over them.

import type { Fact } from '../reading/fact.ts';
import type { OpenQuestion } from '../reading/reading.ts';

export interface Entry {
  readonly scope: 'event' | 'studio'; // studio-wide facts (price list, crew) are said in a thread but belong to the workspace
  readonly message: string; // the message this is about
  readonly revision: string;
  readonly kind: 'stated' | 'edited' | 'deleted' | 'undone' | 'asked';
  readonly author: string;
  readonly at: number; // epoch milliseconds
  readonly facts: readonly Fact[];
  readonly open?: OpenQuestion; // 'asked' only
}
