// What became of one fact in its thread: complete, open to more than one reading, or impossible.

import type { Fact } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import type { Problem } from '../values/problem.ts';

export type Settled =
  | { readonly kind: 'fact'; readonly fact: Fact }
  | { readonly kind: 'ask'; readonly ask: Ask }
  | { readonly kind: 'problem'; readonly problem: Problem };

export const settled = (fact: Fact): Settled => ({ kind: 'fact', fact });
