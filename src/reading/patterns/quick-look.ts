// Where a pattern can begin at all: most are ruled out by one look at the message, and most places by what a match needs further on.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';
import type { Test } from './token-kinds.ts';

/** Words and tests of which one token satisfies one. */
export interface Either {
  readonly words: ReadonlySet<string>;
  readonly tests: readonly Test[];
}
/** What a match cannot do without, with its place among all needs of all patterns. */
export interface Need extends Either {
  readonly id: number;
}

// Which needs each word meets, so that the words of a message say at once which are met.
const needsByWord = new Map<string, number[]>();
let needCount = 0;
const registered = (either: Either): Need => {
  const id = needCount++;
  for (const word of either.words) {
    const ids = needsByWord.get(word);
    if (ids === undefined) needsByWord.set(word, [id]);
    else ids.push(id);
  }
  return { ...either, id };
};

export const openingOf = (nodes: readonly Node[]): { words: string[]; tests: Test[]; open: boolean } => {
  const words: string[] = [];
  const found: Test[] = [];
  const merge = (inner: ReturnType<typeof openingOf>): void => {
    words.push(...inner.words);
    found.push(...inner.tests);
  };
  for (const node of nodes) {
    if (node.is === 'word') return { words: [...words, node.text], tests: found, open: false };
    if (node.is === 'tag') return { words, tests: [...found, node.test], open: false };
    const inner = node.is === 'choice' ? node.choices.map(openingOf) : [openingOf(node.only)];
    for (const each of inner) merge(each);
    const skips = node.is === 'repeat' ? node.least === 0 || inner.some((each) => each.open) : inner.some((each) => each.open);
    if (!skips) return { words, tests: found, open: false };
  }
  return { words, tests: found, open: true };
};

/** What a match cannot do without, the quickest to look for first. */
export const needsOf = (nodes: readonly Node[]): Need[] =>
  needsIn(nodes)
    .sort((a, b) => a.tests.length - b.tests.length)
    .map(registered);

const needsIn = (nodes: readonly Node[]): Either[] =>
  nodes.flatMap((node): Either[] => {
    if (node.is === 'word') return [{ words: new Set([node.text]), tests: [] }];
    if (node.is === 'tag') return node.tag === 'any' || node.tag === 'word' ? [] : [{ words: new Set(), tests: [node.test] }];
    if (node.is === 'repeat') return node.least === 0 ? [] : needsIn(node.only);
    const inner = node.choices.map((choice) => needsIn(choice)[0]);
    if (inner.some((each) => each === undefined)) return [];
    return [{ words: new Set(inner.flatMap((each) => [...(each?.words ?? [])])), tests: inner.flatMap((each) => each?.tests ?? []) }];
  });

/** The most tokens a match can take. */
export const reachOf = (nodes: readonly Node[]): number =>
  nodes.reduce((sum, node) => {
    if (node.is === 'repeat') return sum + node.most * reachOf(node.only);
    return sum + (node.is === 'choice' ? Math.max(...node.choices.map(reachOf)) : 1);
  }, 0);

// Where the words and the kinds of a message stand, gathered once for all patterns.
class Places {
  readonly #tokens: readonly Token[];
  readonly #words = new Map<string, number[]>();
  readonly #kinds = new Map<Test, readonly number[]>();
  readonly #met: Uint8Array;
  /** Which line each token stands in. */
  readonly lines: Uint16Array;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
    this.lines = new Uint16Array(tokens.length);
    let line = 0;
    for (let index = 0; index < tokens.length; index++) {
      const { text, kind } = tokens[index] as Token;
      if (kind === 'line') line += 1;
      this.lines[index] = line;
      const places = this.#words.get(text);
      if (places === undefined) this.#words.set(text, [index]);
      else places.push(index);
    }
    this.#met = new Uint8Array(needCount);
    for (const word of this.#words.keys()) for (const id of needsByWord.get(word) ?? []) this.#met[id] = 1;
  }

  #ofKind(test: Test): readonly number[] {
    let places = this.#kinds.get(test);
    if (places === undefined) {
      const found: number[] = [];
      for (let index = 0; index < this.#tokens.length; index++) if (test(this.#tokens[index] as Token)) found.push(index);
      places = found;
      this.#kinds.set(test, places);
    }
    return places;
  }

  has({ id, tests }: Need): boolean {
    if (this.#met[id] === 1) return true;
    for (const test of tests) if (this.#ofKind(test).length > 0) return true;
    return false;
  }

  /** How many places there are, the same one perhaps counted twice. */
  count({ words, tests }: Either): number {
    let count = 0;
    for (const test of tests) count += this.#ofKind(test).length;
    if (words.size < this.#words.size) {
      for (const word of words) count += this.#words.get(word)?.length ?? 0;
    } else for (const [word, places] of this.#words) if (words.has(word)) count += places.length;
    return count;
  }

  of({ words, tests }: Either): readonly number[] {
    if (words.size === 0 && tests.length === 1) return this.#ofKind(tests[0] as Test);
    if (words.size === 1 && tests.length === 0) for (const word of words) return this.#words.get(word) ?? [];
    const found: number[] = [];
    for (const test of tests) found.push(...this.#ofKind(test));
    if (words.size < this.#words.size) {
      for (const word of words) found.push(...(this.#words.get(word) ?? []));
    } else for (const [word, places] of this.#words) if (words.has(word)) found.push(...places);
    return found;
  }
}

let lastTokens: readonly Token[] | undefined;
let lastPlaces = new Places([]);
const placesIn = (tokens: readonly Token[]): Places => {
  if (tokens !== lastTokens) {
    lastTokens = tokens;
    lastPlaces = new Places(tokens);
  }
  return lastPlaces;
};

/** False when a need is nowhere in the message. */
export const allMet = (needs: readonly Need[], tokens: readonly Token[]): boolean => {
  const places = placesIn(tokens);
  return needs.every((need) => places.has(need));
};

// Where the rarest of the needs stands, in order.
const anchors = (needs: readonly Either[], places: Places): readonly number[] | undefined => {
  let rarest: Either | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const need of needs) {
    const count = needs.length === 1 ? 0 : places.count(need);
    if (count < fewest) [rarest, fewest] = [need, count];
  }
  if (rarest === undefined) return undefined;
  const found = places.of(rarest);
  // A single list stands in order already.
  return rarest.words.size + rarest.tests.length === 1 ? found : found.toSorted((a, b) => a - b);
};

// The first of the sorted places that is not before `from`.
const nextOf = (sorted: readonly number[], from: number): number | undefined => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < from) low = middle + 1;
    else high = middle;
  }
  return sorted[low];
};

const fewStarts = 12;
/** Marks where a match could begin: where an opening stands, in the line of a need and no further before it than a match reaches. */
export const markStarts = (opening: Either, needs: readonly Either[], reach: number, tokens: readonly Token[], spots: Uint8Array): void => {
  const places = placesIn(tokens);
  const starts = places.of(opening);
  // A handful of places is tried sooner than weighed.
  const near = tokens.length <= reach || starts.length <= fewStarts ? undefined : anchors(needs, places);
  for (const start of starts) {
    if (near !== undefined) {
      const need = nextOf(near, start);
      if (need === undefined || need >= start + reach || places.lines[need] !== places.lines[start]) continue;
    }
    spots[start] = 1;
  }
};
