// Where the words and the kinds of a message stand, and which patterns they leave possible: gathered once for all patterns.

import type { Token } from '../text/token.ts';
import { add, has, inOrder } from './bits.ts';
import { kindsOf } from './token-kinds.ts';

/** Words and kinds of which a token is one. */
export interface Either {
  readonly words: ReadonlySet<string>;
  readonly kinds: ReadonlySet<string>;
}

// What the words and kinds of a message say at once about every pattern: which of its needs are met, and where its openings stand.
type Ids = Map<string, number[]>;
const needsBy: { readonly words: Ids; readonly kinds: Ids } = { words: new Map(), kinds: new Map() };
const openingsBy: { readonly words: Ids; readonly kinds: Ids } = { words: new Map(), kinds: new Map() };
let needsInAll = 0;
// The first need of each pattern, and of the one after the last.
const firstNeed: number[] = [0];

const register = (either: Either, id: number, by: typeof needsBy): void => {
  for (const list of ['words', 'kinds'] as const)
    for (const key of either[list]) {
      const ids = by[list].get(key);
      if (ids === undefined) by[list].set(key, [id]);
      else ids.push(id);
    }
};

/** A pattern's number among all patterns, by which a message's places know it. */
export const numbered = (opening: Either, needs: readonly Either[]): number => {
  const id = firstNeed.length - 1;
  register(opening, id, openingsBy);
  for (const need of needs) {
    register(need, needsInAll, needsBy);
    needsInAll += 1;
  }
  firstNeed.push(needsInAll);
  return id;
};

// Where the words and the kinds of a message stand, and what that says about each pattern, gathered once for all of them.
export class Places {
  readonly #words = new Map<string, number[]>();
  readonly #kinds = new Map<string, number[]>();
  // In which lines each need is met, one bit for a line, and where the openings of each pattern stand.
  readonly #oneLine: boolean;
  readonly #width: number;
  readonly #metIn: Uint32Array;
  readonly #openings: ((readonly number[])[] | undefined)[];
  /** Which line each token stands in; the end of a line belongs to it. */
  readonly lines: Uint16Array;
  /** How many tokens there are to a line, on average. */
  readonly lineLength: number;
  /** How many patterns there were. */
  readonly patterns = firstNeed.length - 1;

  constructor(tokens: readonly Token[]) {
    this.lines = new Uint16Array(tokens.length);
    const stands = (places: Map<string, number[]>, key: string, index: number): void => {
      const known = places.get(key);
      if (known === undefined) places.set(key, [index]);
      else known.push(index);
    };
    let line = 0;
    for (let index = 0; index < tokens.length; index++) {
      const token = tokens[index] as Token;
      this.lines[index] = line;
      if (token.kind === 'line') line += 1;
      stands(this.#words, token.text, index);
      for (const kind of kindsOf(token)) stands(this.#kinds, kind, index);
    }
    this.#oneLine = line === 0;
    this.#width = (line >> 5) + 1;
    this.lineLength = tokens.length / (line + 1);
    this.#metIn = new Uint32Array(needsInAll * this.#width);
    this.#openings = new Array(this.patterns);
    for (const [word, places] of this.#words) this.#gather(places, needsBy.words.get(word), openingsBy.words.get(word));
    for (const [kind, places] of this.#kinds) this.#gather(places, needsBy.kinds.get(kind), openingsBy.kinds.get(kind));
  }

  #gather(places: readonly number[], needs: readonly number[] | undefined, openings: readonly number[] | undefined): void {
    const width = this.#width;
    if (needs !== undefined) {
      const lines = new Uint32Array(width);
      for (const place of places) add(lines, this.lines[place] as number);
      for (const need of needs) for (let at = 0; at < width; at++) (this.#metIn[need * width + at] as number) |= lines[at] as number;
    }
    for (const id of openings ?? []) {
      const lists = this.#openings[id];
      if (lists === undefined) this.#openings[id] = [places];
      else lists.push(places);
    }
  }

  // Thirty-two lines in which all needs of a pattern are met.
  #linesMet(id: number, at: number): number {
    let lines = -1;
    for (let need = firstNeed[id] as number; need < (firstNeed[id + 1] as number); need++)
      lines &= this.#metIn[need * this.#width + at] as number;
    return lines;
  }

  /** Whether some line meets all needs of a pattern. */
  meets(id: number): boolean {
    for (let at = 0; at < this.#width; at++) if (this.#linesMet(id, at) !== 0) return true;
    return false;
  }

  /** Where a pattern's openings stand in lines that meet all its needs, in order. */
  openings(id: number): readonly number[] {
    const lists = this.#openings[id] ?? [];
    if (this.#oneLine) return this.meets(id) ? inOrder(lists) : [];
    const met = new Uint32Array(this.#width);
    for (let at = 0; at < this.#width; at++) met[at] = this.#linesMet(id, at);
    return inOrder(lists, (place) => has(met, this.lines[place] as number));
  }

  #lists({ words, kinds }: Either): readonly (readonly number[])[] {
    const lists: (readonly number[])[] = [];
    for (const kind of kinds) lists.push(this.#kinds.get(kind) ?? []);
    // The shorter of the two is gone through.
    if (words.size < this.#words.size) for (const word of words) lists.push(this.#words.get(word) ?? []);
    else for (const [word, places] of this.#words) if (words.has(word)) lists.push(places);
    return lists;
  }

  /** How many places there are, the same one perhaps counted twice. */
  count(either: Either): number {
    return this.#lists(either).reduce((sum, list) => sum + list.length, 0);
  }

  of(either: Either): readonly number[] {
    return inOrder(this.#lists(either));
  }
}

let lastTokens: readonly Token[] | undefined;
let lastPlaces = new Places([]);
/** Where everything stands in this message; the last one's places are kept. */
export const placesIn = (tokens: readonly Token[]): Places => {
  if (tokens !== lastTokens || lastPlaces.patterns !== firstNeed.length - 1) {
    lastTokens = tokens;
    lastPlaces = new Places(tokens);
  }
  return lastPlaces;
};
