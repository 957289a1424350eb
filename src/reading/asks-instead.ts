// Whether a message asks something of its own while a question of ours is open: "who's on friday?", "is the 27th of feb a saturday?".
// A question changes nothing, so it answers none either.

import type { Message } from './text/message.ts';

const asksAlways = /^(who|who's|whos|what|what's|whats|when|when's|whens|where|where's|wheres|why|how|how's|hows|which)\b/;
const asksMarked =
  /^(is|are|was|were|isn't|isnt|aren't|arent|do|does|did|don't|doesn't|can|could|shall|should|will|would|have|has|had|am)\b/;
const lead = /^(and|so|but|ok|okay|hang on|wait|hmm|sorry|er|um|oh|,)$/;

/** The whole of it is one question; "friday?" alone is still an answer. */
export const asksInstead = ({ tokens, parts }: Message): boolean => {
  const [only, second] = parts;
  if (only === undefined || second !== undefined) return false;
  const first = tokens.slice(only.start, only.end).find(({ text, kind }) => kind !== 'sign' && !lead.test(text));
  if (first === undefined) return false;
  // "which ones? the first" has a part behind it; "can we do friday" without a mark may be an answer.
  return asksAlways.test(first.text) || (only.asked && asksMarked.test(first.text));
};
