// "40 lapels at 25, ok?", "20 bouts please?": an order with a word of courtesy behind it and a question mark behind that.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const wish = /^(please|pls|plz|plse|thanks|thx|ta|cheers)$/;
const leave = pattern(
  "(,|-)? (if)? (is)? (that|that's|thats|it's)? (is)? (ok|okay|k|alright|all right|cool) (with you|for you|by you|then)?",
);
const counted = pattern('(<count> (x|of|no|nos|off|pcs|more|extra)? (<material>)? <piece>|<piece> (x|:|-) <count>)');
const priced = pattern('((at|@|for) <amount>|<money>|<plain> <each>)');
// These ask, whatever is said behind them; a day by which it must be ready asks whether it can.
const asks =
  /^(so|or|then|what|whats|what's|how|when|any|is|are|was|were|do|does|did|can|could|would|will|should|shall|by|still|enough|price|total|left|remaining)$/;

/** Whether the part only looks like a question: what it says is an order, and nobody asks whether it can be done. */
export const toldPolitely = (reader: Reader, part: Part): boolean => {
  const { tokens, context } = reader;
  const first = part.asked ? counted.in(tokens, part.start, part.end) : undefined;
  if (first === undefined) return false;
  const stop = tokens.slice(part.start, part.end).findIndex((_, at) => leave.at(tokens, part.start + at, part.end)?.end === part.end);
  const end = stop < 0 ? part.end : part.start + stop;
  if (tokens.slice(part.start, end).some((token) => asks.test(token.text) || token.means['weekday'] !== undefined)) return false;
  if (wish.test(tokens[part.end - 1]?.text ?? '')) return true;
  return stop > 0 && context.pieces.length === 0 && priced.in(tokens, first.start, end) !== undefined;
};
