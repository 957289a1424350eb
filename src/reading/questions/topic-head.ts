// "crowns - whats still to make", "gyp: how much is left": what the question is of stands before it, and a stroke or a colon between.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const head = pattern('(so|ok|and|hey|right|for|on|re|about|the|our|those){0,3} (<material>)? (<piece>|<ingredient>) (-|:|,|;)');
const asks = pattern(
  "(so|and){0,1} (what's|whats|when's|whens|where's|wheres|how's|hows|who's|whos|(what|which|how|when|where|who|why) (is|are|do|does|did|can|could|will|would|should|shall|have|has|was|were|am)|(what|which) (time|day|date|price|else|still)|how (many|much|long|far|late|soon|early))",
);

/** Where the question begins behind its head; the part's own start when it has none. "Bouts: what we said, 20" asks nothing. */
export const headEnd = ({ tokens }: Reader, { start, end }: Part): number => {
  const match = head.at(tokens, start, Math.min(end, start + 7));
  return match !== undefined && asks.at(tokens, match.end, end) !== undefined ? match.end : start;
};
