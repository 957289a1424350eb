// Said to be none of ours: "my sister's wedding is 12 june, 8 bridesmaids, not ours". The sentence is held.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';

const form = pattern(
  "(not|isn't|isnt|aren't|arent|nothing to do with|none) (actually|really|even|of)? (ours|one of ours|us doing|our (job|wedding|gig|event|client|booking|do|party)|a job of ours|doing the flowers|doing flowers|doing her flowers|doing their flowers)",
);
export const notOurs = ({ tokens }: Reader, { start, end }: Part): Stretch[] =>
  form.in(tokens, start, end) === undefined ? [] : [{ start, end }];
