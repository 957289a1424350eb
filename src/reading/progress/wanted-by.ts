// "bouts ready for thurs", "crowns made by friday": by when they are wanted, and not that they are made.

import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';

const byDay = pattern(
  '(for|by|before) (the|this|next|end of|first thing){0,2} (<weekday>|<month>|<ordinal>|<slashed>|tomorrow|tmrw|weekend|wedding|event|ceremony|handover|pickup|collection)',
);

/** The finding, or its words and the day kept unread where the whole of a kind is only wanted by then. */
export const heldWhereWanted = ({ tokens }: Reader, finding: Finding): Finding => {
  const wholly = finding.facts?.some((fact) => fact.fact === 'made' && fact.all === true) === true;
  const day = wholly ? byDay.at(tokens, finding.end, tokens.length) : undefined;
  return day === undefined ? finding : { start: finding.start, end: day.end, held: true };
};
