// "add 3 crowns and 2 combs", "drop 2 corsages and 3 bouts": what follows is added or taken off as well, and is no new count.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';

const verb =
  /^(add|adding|added|adds|chuck in|chuck|throw|throw in|stick|tack|pop|include|minus|drop|lose|remove|take|knock|subtract|cancel|scrap|cut|delete|losing|dropping|cancelling|ditch|bin|pull|forget|deduct)$/;
const next = pattern('(,|and|&|n|plus|\\+|also){0,2} (the|those|another)? (<n:count>|a|an|one) (of the)? (<material>)? <p:piece>');
// What makes a matter of its own of it: "cancel 3 crowns, 16 bouts now".
const own =
  /^(more|less|fewer|extra|now|instead|not|to|only|total|done|made|finished|left|stays|stay|remain|remains|as|is|are|was|were|each|should|broke|snapped|for|on)$/;

export interface Followed {
  readonly match: Match;
  readonly fact: Unworded | undefined; // undefined where it may be either
}

/** What follows a difference and shares its verb. */
export const sameVerb = (tokens: readonly Token[], start: number, from: number, end: number, before: Unworded): Followed | undefined => {
  if (before.fact !== 'change' || before.what !== 'count' || before.by === undefined || before.piece === undefined) return undefined;
  const match = verb.test(tokens[start]?.text ?? '') ? next.at(tokens, from, end) : undefined;
  const { n, p } = match?.kept ?? {};
  const piece = p?.means['piece'] as PieceKind | undefined;
  if (match === undefined || piece === undefined) return undefined;
  if (isRangeOrChoice(n?.number)) return { match, fact: undefined };
  const less = Number(before.by) < 0;
  const joined = tokens.slice(match.start, match.end).some(({ text }) => /^(and|&|n|plus|\+|also)$/.test(text));
  // "drop 2 bouts and 3 corsages now"
  if (less && joined && tokens[match.end]?.text === 'now') return { match, fact: undefined };
  if (own.test(tokens[match.end]?.text ?? '')) return undefined;
  // "drop 3 crowns, 16 bouts": those may be what stays.
  if (piece === 'unspecified' || piece === before.piece || (less && !joined)) return { match, fact: undefined };
  const count = n === undefined ? 1 : Number(n.number?.amount);
  return { match, fact: { fact: 'change', what: 'count', by: less ? -count : count, piece } };
};
