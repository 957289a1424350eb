// A small language for stretches of tokens, so that phrases read like the things people say:
//   'made <count> <piece>?'   '(up|down) to <n:amount>'   '<any>{0,3} left'
// A plain word stands for itself; <tag> for a kind of token; <name:tag> keeps the token; ( | ) chooses; ? and {a,b} repeat.
// Repeats are bounded, so matching takes time in proportion to the message.

import { has, nextBit } from './patterns/bits.ts';
import { parse } from './patterns/parse-pattern.ts';
import { addStarts, begins, might, nextStart, sight } from './patterns/places.ts';
import { needsOf, openingOf, reachOf } from './patterns/quick-look.ts';
import { numbered } from './patterns/registry.ts';
import { testOf } from './patterns/token-kinds.ts';
import { type Match, trialOf } from './patterns/trial.ts';
import type { Token } from './text/token.ts';

export { isA } from './patterns/token-kinds.ts';
export type { Match } from './patterns/trial.ts';

export interface Pattern {
  readonly source: string;
  /** The match that begins exactly at `index`. */
  at(tokens: readonly Token[], index: number, end: number): Match | undefined;
  /** False when the message cannot hold a match at all. */
  might(tokens: readonly Token[]): boolean;
  /** The first place from `from` on where a match could begin; `end` when there is none. */
  next(tokens: readonly Token[], from: number, end: number): number;
  /** Adds the places where a match could begin. */
  addStarts(tokens: readonly Token[], places: Uint32Array): void;
  /** The first match in the stretch. */
  in(tokens: readonly Token[], start: number, end: number): Match | undefined;
}

/** A pattern that is tried where it is asked to be, with no look at the whole message: for tokens that are still being joined. */
export interface Form {
  at(tokens: readonly Token[], index: number, end?: number): Match | undefined;
}

export const formOf = (source: string): Form => {
  const nodes = parse(source);
  const { words, kinds, open } = openingOf(nodes);
  const tests = [...kinds].map(testOf);
  const trial = trialOf(nodes);
  const opens = (first: Token): boolean => {
    for (const test of tests) if (test(first)) return true;
    return words.has(first.text);
  };
  return {
    at: (tokens, index, end = tokens.length) => {
      const first = tokens[index];
      return open || (first !== undefined && opens(first)) ? trial(tokens, index, end) : undefined;
    },
  };
};

export const pattern = (source: string): Pattern => {
  const nodes = parse(source);
  const trial = trialOf(nodes);
  const id = numbered({ opening: openingOf(nodes), needs: needsOf(nodes), reach: reachOf(nodes) });
  const next = (tokens: readonly Token[], from: number, end: number): number => nextStart(id, tokens, from, end);
  return {
    source,
    might: (tokens) => might(id, tokens),
    at: (tokens, index, end) =>
      index >= 0 && index < end && index < tokens.length && begins(id, tokens, index) ? trial(tokens, index, end, sight()) : undefined,
    next,
    addStarts: (tokens, places) => addStarts(id, tokens, places),
    in: (tokens, start, end) => {
      for (let index = next(tokens, start, end); index < end; index = next(tokens, index + 1, end)) {
        const match = trial(tokens, index, end, sight());
        if (match !== undefined) return match;
      }
      return undefined;
    },
  };
};

const fewForms = 4; // are sooner asked one by one
// Where any of a list of forms could begin, kept for the last message looked at.
const held = new WeakMap<readonly Pattern[], { readonly tokens: readonly Token[]; readonly spots: Uint32Array }>();
// The same forms are asked for many times over one message: the last answer is at hand without a look into the map.
let [lastForms, lastTokens, lastSpots]: [readonly Pattern[], readonly Token[], Uint32Array] = [[], [], new Uint32Array()];
const spotsOf = (forms: readonly Pattern[], tokens: readonly Token[]): Uint32Array => {
  if (forms === lastForms && tokens === lastTokens) return lastSpots;
  lastSpots = spotsKept(forms, tokens);
  [lastForms, lastTokens] = [forms, tokens];
  return lastSpots;
};
const spotsKept = (forms: readonly Pattern[], tokens: readonly Token[]): Uint32Array => {
  const known = held.get(forms);
  if (known?.tokens === tokens) return known.spots;
  const spots = new Uint32Array((tokens.length >> 5) + 1);
  for (const form of forms) form.addStarts(tokens, spots);
  held.set(forms, { tokens, spots });
  return spots;
};

/** Whether any of the forms could begin here: one look for all of them. */
export const beginsAt = (forms: readonly Pattern[], tokens: readonly Token[], index: number): boolean => has(spotsOf(forms, tokens), index);

/** Whether any of the forms could begin in the stretch. */
export const beginsIn = (forms: readonly Pattern[], tokens: readonly Token[], start: number, end: number): boolean =>
  nextBit(spotsOf(forms, tokens), start, end) !== -1;

/** The match at `index` of the first form that has one. */
export const firstAt = (forms: readonly Pattern[], tokens: readonly Token[], index: number, end: number): Match | undefined => {
  if (forms.length > fewForms && !beginsAt(forms, tokens, index)) return undefined;
  for (const form of forms) {
    const match = form.at(tokens, index, end);
    if (match !== undefined) return match;
  }
  return undefined;
};

/** The match in the stretch of the first form that has one. */
export const firstIn = (forms: readonly Pattern[], tokens: readonly Token[], start: number, end: number): Match | undefined => {
  for (const form of forms) {
    const match = form.in(tokens, start, end);
    if (match !== undefined) return match;
  }
  return undefined;
};

/** Whether any of the forms has a match in the stretch. */
export const anyIn = (forms: readonly Pattern[], tokens: readonly Token[], start: number, end: number): boolean => {
  if (forms.length <= fewForms) return forms.some((form) => form.in(tokens, start, end) !== undefined);
  const spots = spotsOf(forms, tokens);
  for (let index = nextBit(spots, start, end); index !== -1; index = nextBit(spots, index + 1, end))
    if (forms.some((form) => form.at(tokens, index, end) !== undefined)) return true;
  return false;
};
