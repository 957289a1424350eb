// A small language for stretches of tokens, so that phrases read like the things people say:
//   'made <count> <piece>?'   '(up|down) to <n:amount>'   '<any>{0,3} left'
// A plain word stands for itself; <tag> for a kind of token; <name:tag> keeps the token; ( | ) chooses; ? and {a,b} repeat.
// Repeats are bounded, so matching takes time in proportion to the message.

import { parse } from './patterns/parse-pattern.ts';
import { contents, needsOf, openingOf, satisfied } from './patterns/quick-look.ts';
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

export const pattern = (source: string): Pattern => {
  const nodes = parse(source);
  const opening = openingOf(nodes);
  const words = new Set(opening.words);
  const needs = needsOf(nodes);
  // The last message looked at, and whether it holds all that a match needs.
  let seen: readonly Token[] | undefined;
  let possible = false;
  const may = (tokens: readonly Token[]): boolean => {
    if (tokens !== seen) {
      seen = tokens;
      const holds = contents(tokens);
      possible = needs.every((need) => satisfied(need, holds));
    }
    return possible;
  };
  const begins = (first: Token): boolean => {
    if (words.has(first.text)) return true;
    for (const test of opening.tests) if (test(first)) return true;
    return false;
  };
  const at = (tokens: readonly Token[], index: number, end: number): Match | undefined => {
    const first = tokens[index];
    if (first === undefined || index >= end || !may(tokens)) return undefined;
    if (!begins(first)) return undefined;
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
      for (let index = start; index < end; index++) {
        const first = tokens[index];
        const match = first !== undefined && begins(first) ? at(tokens, index, end) : undefined;
        if (match !== undefined) return match;
      }
      return undefined;
    },
  };
};
