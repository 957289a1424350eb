// Where the words and the kinds of a message stand, and which patterns they leave possible: gathered once for all patterns.

import type { Token } from '../text/token.ts';
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
const patternOfNeed: number[] = [];
const needsOfPattern: number[] = [];

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
  const id = needsOfPattern.length;
  needsOfPattern.push(needs.length);
  register(opening, id, openingsBy);
  for (const need of needs) {
    register(need, patternOfNeed.length, needsBy);
    patternOfNeed.push(id);
  }
  return id;
};

// Each place once, in order: a few are sorted, many are marked.
let marks = new Uint8Array(512);
export const inOrder = (lists: readonly (readonly number[])[]): readonly number[] => {
  if (lists.length <= 1) return lists[0] ?? [];
  let [count, last] = [0, 0];
  for (const list of lists) {
    count += list.length;
    last = Math.max(last, list.at(-1) ?? 0);
  }
  const places: number[] = [];
  if (count <= 8) {
    for (const list of lists)
      for (const place of list) {
        let at = places.length;
        while (at > 0 && (places[at - 1] as number) > place) at -= 1;
        if (places[at - 1] !== place) places.splice(at, 0, place);
      }
    return places;
  }
  if (marks.length <= last) marks = new Uint8Array(2 * last);
  for (const list of lists) for (const place of list) marks[place] = 1;
  for (let place = 0; place <= last; place++)
    if (marks[place] === 1) {
      places.push(place);
      marks[place] = 0;
    }
  return places;
};

const nowhere: readonly (readonly number[])[] = [];

// Where the words and the kinds of a message stand, and what that says about each pattern, gathered once for all of them.
export class Places {
  readonly #words = new Map<string, number[]>();
  readonly #kinds = new Map<string, number[]>();
  // How many needs of each pattern are still unmet, and where its openings stand.
  readonly #unmet: Int32Array;
  readonly #openings: ((readonly number[])[] | undefined)[];
  /** Which line each token stands in. */
  readonly lines: Uint16Array;
  /** How many patterns there were. */
  readonly patterns = needsOfPattern.length;

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
      if (token.kind === 'line') line += 1;
      this.lines[index] = line;
      stands(this.#words, token.text, index);
      for (const kind of kindsOf(token)) stands(this.#kinds, kind, index);
    }
    this.#unmet = Int32Array.from(needsOfPattern);
    this.#openings = new Array(this.patterns);
    const met = new Uint8Array(patternOfNeed.length);
    const gather = (places: readonly number[], needs: readonly number[] | undefined, openings: readonly number[] | undefined): void => {
      for (const need of needs ?? [])
        if (met[need] === 0) {
          met[need] = 1;
          (this.#unmet[patternOfNeed[need] as number] as number) -= 1;
        }
      for (const id of openings ?? []) {
        const lists = this.#openings[id];
        if (lists === undefined) this.#openings[id] = [places];
        else lists.push(places);
      }
    };
    for (const [word, places] of this.#words) gather(places, needsBy.words.get(word), openingsBy.words.get(word));
    for (const [kind, places] of this.#kinds) gather(places, needsBy.kinds.get(kind), openingsBy.kinds.get(kind));
  }

  meets(id: number): boolean {
    return this.#unmet[id] === 0;
  }

  /** Where a pattern's openings stand, in lists of their own; a place may be in two. */
  openings(id: number): readonly (readonly number[])[] {
    return this.#openings[id] ?? nowhere;
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
  if (tokens !== lastTokens || lastPlaces.patterns !== needsOfPattern.length) {
    lastTokens = tokens;
    lastPlaces = new Places(tokens);
  }
  return lastPlaces;
};
