// Said to be none of ours: "my sister's wedding is 12 june, 8 bridesmaids, not ours". The sentence is held; of another's order its clause.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { otherOrders } from './other-orders.ts';

const form = pattern(
  "(not|isn't|isnt|aren't|arent|nothing to do with|none) (actually|really|even|of)? (ours|one of ours|us doing|our (job|wedding|gig|event|client|booking|do|party)|a job of ours|doing the flowers|doing flowers|doing her flowers|doing their flowers)",
);
export const notOurs = (reader: Reader, part: Part): Stretch[] => {
  const { start, end } = part;
  return form.in(reader.tokens, start, end) === undefined ? otherOrders(reader, part) : [{ start, end }];
};
