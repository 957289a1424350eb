// How a question form is written: what it asks, the ways to ask it, and words that make it another question.

import type { Asked } from '../fact.ts';

/** A few words of any kind between the telling ones. */
export const anything = '<any>{0,6}';

export type Forms = readonly (readonly [Asked, readonly string[], RegExp?])[];
