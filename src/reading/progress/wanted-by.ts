// "bouts ready for thurs", "crowns made by friday": by when they are wanted, and not that they are made.

import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const byDay = pattern(
  '(for|by|before) (the|this|next|end of|first thing){0,2} (<weekday>|<month>|<ordinal>|<slashed>|tomorrow|tmrw|weekend|wedding|event|ceremony|handover|pickup|collection)',
);

// "need 12 lapels, also 15 crowns, all done": that may be all they want, and nobody made what is only being ordered.
const wanting = pattern('(need|needs|want|wants|order|please do|pls do|quote) (:)? (<word>)? <count> (<material>)? <piece>');
const isOrder = (tokens: readonly Token[], finding: Finding): boolean => {
  const [fact, another] = finding.facts ?? [];
  const bare = fact?.fact === 'made' && another === undefined && fact.piece === undefined && fact.count === undefined;
  return bare && wanting.in(tokens, 0, finding.start) !== undefined;
};

/** The finding, or its words and the day kept unread where the whole of a kind is only wanted by then. */
export const heldWhereWanted = ({ tokens }: Reader, finding: Finding): Finding => {
  const wholly = finding.facts?.some((fact) => fact.fact === 'made' && fact.all === true) === true;
  if (wholly && isOrder(tokens, finding)) return { start: finding.start, end: finding.end, held: true };
  const day = wholly ? byDay.at(tokens, finding.end, tokens.length) : undefined;
  return day === undefined ? finding : { start: finding.start, end: day.end, held: true };
};
