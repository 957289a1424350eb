// A small language for stretches of tokens, so that phrases read like the things people say:
//   'made <count> <piece>?'   '(up|down) to <n:amount>'   '<any>{0,3} left'
// A plain word stands for itself; <tag> for a kind of token; <name:tag> keeps the token; ( | ) chooses; ? and {a,b} repeat.
// Repeats are bounded, so matching takes time in proportion to the message.

import { parse } from './patterns/parse-pattern.ts';
import { allMet, anchors, needsOf, openingOf, reachOf } from './patterns/quick-look.ts';
import { run } from './patterns/run-pattern.ts';
import type { Token } from './text/token.ts';

export { isA } from './patterns/token-kinds.ts';

export interface Match {
  readonly start: number;
  readonly end: number;
  readonly kept: Readonly<Record<string, Token>>;
}

export interface Pattern {
  readonly source: string;
  /** The match that begins exactly at `index`. */
  at(tokens: readonly Token[], index: number, end: number): Match | undefined;
  /** False when the message cannot hold a match at all. */
  might(tokens: readonly Token[]): boolean;
  /** The first match in the stretch. */
  in(tokens: readonly Token[], start: number, end: number): Match | undefined;
}

const keptPlaces = 512;

export const pattern = (source: string): Pattern => {
  const nodes = parse(source);
  const opening = openingOf(nodes);
  const words = new Set(opening.words);
  const needs = needsOf(nodes);
  const reach = reachOf(nodes);
  const begins = (first: Token): boolean => {
    if (words.has(first.text)) return true;
    for (const test of opening.tests) if (test(first)) return true;
    return false;
  };
  // The last message looked at, and where in it a match could begin: where an opening stands no further before a need than a match reaches.
  let seen: readonly Token[] | undefined;
  let possible = false;
  let looked = false;
  let spots = new Uint8Array(32);
  const look = (tokens: readonly Token[]): void => {
    looked = true;
    // A long message's places are not kept for the short ones after it.
    if (spots.length < tokens.length || spots.length > keptPlaces) spots = new Uint8Array(Math.max(32, tokens.length));
    else spots.fill(0);
    const around = tokens.length <= reach ? undefined : anchors(needs, tokens);
    if (around === undefined) {
      for (let index = 0; index < tokens.length; index++) if (begins(tokens[index] as Token)) spots[index] = 1;
      return;
    }
    for (const anchor of around)
      for (let index = anchor; index >= 0 && index > anchor - reach; index--) {
        const token = tokens[index] as Token;
        if (token.kind === 'line') break;
        if (spots[index] === 0) spots[index] = begins(token) ? 1 : 2;
      }
  };
  const may = (tokens: readonly Token[]): boolean => {
    if (tokens !== seen) {
      seen = tokens;
      looked = false;
      possible = allMet(needs, tokens);
    }
    return possible;
  };
  const at = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
    if (index < 0 || index >= end || index >= tokens.length || !may(tokens)) return undefined;
    if (!looked) look(tokens);
    if (spots[index] !== 1) return undefined;
    const kept = new Map<string, Token>();
    let reached = -1;
    const found = run(nodes, 0, index, tokens, end, kept, (last) => {
      reached = last;
      return true;
    });
    return found ? { start: index, end: reached, kept: Object.fromEntries(kept) } : undefined;
  };
  return {
    source,
    might: may,
    at,
    in: (tokens, start, end) => {
      if (!may(tokens)) return undefined;
      if (!looked) look(tokens);
      for (let index = start; index < end; index++) {
        const match = spots[index] === 1 ? at(tokens, index, end) : undefined;
        if (match !== undefined) return match;
      }
      return undefined;
    },
  };
};

const first = (how: 'at' | 'in', forms: readonly Pattern[], tokens: readonly Token[], start: number, end: number): Match | undefined => {
  for (const form of forms) {
    const match = form[how](tokens, start, end);
    if (match !== undefined) return match;
  }
  return undefined;
};

/** The match at `index` of the first form that has one. */
export const firstAt = (forms: readonly Pattern[], tokens: readonly Token[], index: number, end: number): Match | undefined =>
  first('at', forms, tokens, index, end);

/** The match in the stretch of the first form that has one. */
export const firstIn = (forms: readonly Pattern[], tokens: readonly Token[], start: number, end: number): Match | undefined =>
  first('in', forms, tokens, start, end);
