// Where a pattern can begin at all: most are ruled out by one look at the message, and most places by what a match needs further on.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';
import type { Test } from './token-kinds.ts';

/** Words and tests of which one token satisfies one. */
export interface Either {
  readonly words: ReadonlySet<string>;
  readonly tests: readonly Test[];
}

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

/** What a match cannot do without. */
export const needsOf = (nodes: readonly Node[]): Either[] =>
  nodes.flatMap((node): Either[] => {
    if (node.is === 'word') return [{ words: new Set([node.text]), tests: [] }];
    if (node.is === 'tag') return node.tag === 'any' || node.tag === 'word' ? [] : [{ words: new Set(), tests: [node.test] }];
    if (node.is === 'repeat') return node.least === 0 ? [] : needsOf(node.only);
    const inner = node.choices.map((choice) => needsOf(choice)[0]);
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

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
    for (let index = 0; index < tokens.length; index++) {
      const { text } = tokens[index] as Token;
      const places = this.#words.get(text);
      if (places === undefined) this.#words.set(text, [index]);
      else places.push(index);
    }
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

  has({ words, tests }: Either): boolean {
    for (const test of tests) if (this.#ofKind(test).length > 0) return true;
    if (words.size < this.#words.size) {
      for (const word of words) if (this.#words.has(word)) return true;
    } else for (const word of this.#words.keys()) if (words.has(word)) return true;
    return false;
  }

  of({ words, tests }: Either): readonly number[] {
    if (words.size === 0 && tests.length === 1) return this.#ofKind(tests[0] as Test);
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
export const allMet = (needs: readonly Either[], tokens: readonly Token[]): boolean => {
  const places = placesIn(tokens);
  return needs.every((need) => places.has(need));
};

/** Where the rarest of the needs stands. */
export const anchors = (needs: readonly Either[], tokens: readonly Token[]): readonly number[] | undefined => {
  const places = placesIn(tokens);
  let rarest: readonly number[] | undefined;
  for (const need of needs) {
    const found = places.of(need);
    if (rarest === undefined || found.length < rarest.length) rarest = found;
  }
  return rarest;
};
