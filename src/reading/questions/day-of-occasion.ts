// "when is the school ball", "what date's the baby shower": the day of an occasion is asked, though its words are those of everyday talk.

import { occasionNamed } from '../dates/occasion-named.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isOccasion } from '../words/occasion-words.ts';

const opens = pattern(
  "((remind me|remind us|and|so|ok|hey|tell me|do you know|do we know|check){0,2} (when|when's|whens|what date|what time|what day|which date|which day|what date's|what day's|what's the date|whats the date|what is the date|what was the date|whats the day|what's the day|the date|date|day)) (is|are|was|were|'s|of|for|on|the|our|their|her|his|this|that|again|next){0,5}",
);
const ours = /^(ball|formal|prom|debs|christening|gala|dance|do|reception|service|vows|mass|blessing|funeral|ceremony)('s)?$/;
// "the van service", "your sister's party": not asked of the bench.
const before =
  /^(school|church|charity|gala|big|annual|matric|year|deb|debs|spring|summer|winter|autumn|christmas|xmas|easter|club|golf|hunt|hospital|mayoral|memorial|evening)$/;
const behind = pattern('(on|again|now|pls|please|at|then|for|is|meant to be|due|held|happening|,){0,3}');

/** Whether it is the day of an occasion that is asked: nothing else stands in the question. */
export const asksDayOfOccasion = ({ tokens }: Reader, start: number, end: number): boolean => {
  if (!occasionNamed.might(tokens) && !tokens.slice(start, end).some(({ text }) => ours.test(text) || isOccasion(text))) return false;
  const match = opens.in(tokens, start, Math.min(end, start + 6));
  if (match === undefined) return false;
  for (let at = match.end; at < end && at <= match.end + 3; at++) {
    const named = occasionNamed.at(tokens, at, end);
    const text = tokens[at]?.text ?? '';
    const stop = named?.end ?? (ours.test(text) || isOccasion(text) ? at + 1 : undefined);
    if (stop === undefined && !before.test(text) && tokens[at]?.number === undefined) return false;
    if (stop !== undefined && (stop === end || behind.at(tokens, stop, end)?.end === end)) return true;
  }
  return false;
};
