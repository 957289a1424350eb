// Those of a list who wear none after all: "priest doesn't want one", "bride and groom excluded".

import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const declines = pattern(
  "(doesn't|doesnt|does not|isn't|isnt|is not|don't|dont|do not|won't|wont|aren't|arent|not|said no|says no|passed|opted out) (want|wants|wanting|having|have|need|needing|wearing|wear|getting|get|bothering|bother)? (one|any|it|a flower|flowers|<piece>)?",
);
const leftOutBehind = pattern(
  "(are|is|being|both)? (excluded|not included|not incl|not counted|left out|don't count|dont count|doesn't count|doesnt count)",
);

// "groom yes, 4 ushers yes, dads no"
const no = pattern('(:|-)? (no|nope|nah|none|not needed|not bothered|not fussed) (thanks|ta|thank you)?');
const closes = /^(,|;|and|&|\/|\.|-)$/;
const saysNo = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
  const match = no.at(tokens, index, end);
  const next = match === undefined || match.end >= end ? undefined : tokens[match.end];
  return match !== undefined && (next === undefined || next.kind === 'line' || closes.test(next.text)) ? match : undefined;
};

/** Where the words end that say so of the last ones listed, the last of whom begins at `last`, and how many of them they are said of. */
export const declinedAt = (
  { tokens }: Reader,
  index: number,
  end: number,
  last: number,
  listed: readonly { readonly at: number; readonly count: number }[],
): { readonly end: number; readonly gone: number } | undefined => {
  if (listed.at(-1)?.at !== last) return undefined;
  const behind = leftOutBehind.at(tokens, index, end);
  const match = behind ?? declines.at(tokens, index, end) ?? saysNo(tokens, index, end);
  if (match === undefined) return undefined;
  // "bride and groom excluded" are two; of "4 ushers and priest not included" only the priest is surely meant.
  const joined = /^(and|&|n|\+)$/.test(tokens[last - 1]?.text ?? '') && listed.at(-2)?.count === 1;
  const gone = behind !== undefined && joined ? 2 : 1;
  return { end: match.end, gone };
};
