// Where a pattern can begin at all: most are ruled out by one look at the message, and most places by what a match needs further on.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';
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

/** What a match may begin with; `open` when all of it may be left out. */
export const openingOf = (nodes: readonly Node[]): Either & { readonly open: boolean } => {
  const words = new Set<string>();
  const kinds = new Set<string>();
  for (const node of nodes) {
    if (node.is === 'word') return { words: words.add(node.text), kinds, open: false };
    if (node.is === 'tag') return { words, kinds: kinds.add(node.tag), open: false };
    const inner = node.is === 'choice' ? node.choices.map(openingOf) : [openingOf(node.only)];
    for (const each of inner) {
      for (const word of each.words) words.add(word);
      for (const kind of each.kinds) kinds.add(kind);
    }
    const skips = node.is === 'repeat' ? node.least === 0 || inner.some((each) => each.open) : inner.some((each) => each.open);
    if (!skips) return { words, kinds, open: false };
  }
  return { words, kinds, open: true };
};

/** What a match cannot do without. */
export const needsOf = (nodes: readonly Node[]): Either[] =>
  nodes.flatMap((node): Either[] => {
    if (node.is === 'word') return [{ words: new Set([node.text]), kinds: new Set() }];
    if (node.is === 'tag') return node.tag === 'any' || node.tag === 'word' ? [] : [{ words: new Set(), kinds: new Set([node.tag]) }];
    if (node.is === 'repeat') return node.least === 0 ? [] : needsOf(node.only);
    const inner = node.choices.map((choice) => needsOf(choice)[0]);
    if (inner.some((each) => each === undefined)) return [];
    const all = (list: keyof Either): Set<string> => new Set(inner.flatMap((each) => [...(each?.[list] ?? [])]));
    return [{ words: all('words'), kinds: all('kinds') }];
  });

/** The most tokens a match can take. */
export const reachOf = (nodes: readonly Node[]): number =>
  nodes.reduce((sum, node) => {
    if (node.is === 'repeat') return sum + node.most * reachOf(node.only);
    return sum + (node.is === 'choice' ? Math.max(...node.choices.map(reachOf)) : 1);
  }, 0);

// Each place once, in order: a few are sorted, many are marked.
let marks = new Uint8Array(512);
const inOrder = (lists: readonly (readonly number[])[]): readonly number[] => {
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
class Places {
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
const placesIn = (tokens: readonly Token[]): Places => {
  if (tokens !== lastTokens || lastPlaces.patterns !== needsOfPattern.length) {
    lastTokens = tokens;
    lastPlaces = new Places(tokens);
  }
  return lastPlaces;
};

/** False when a need of the pattern is nowhere in the message. */
export const allMet = (id: number, tokens: readonly Token[]): boolean => placesIn(tokens).meets(id);

// Where the rarest of the needs stands, in order.
const anchors = (needs: readonly Either[], places: Places): readonly number[] | undefined => {
  let rarest: Either | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const need of needs) {
    const count = needs.length === 1 ? 0 : places.count(need);
    if (count < fewest) [rarest, fewest] = [need, count];
  }
  return rarest === undefined ? undefined : places.of(rarest);
};

/** The first of the sorted places that is not before `from`. */
export const nextOf = (sorted: readonly number[], from: number): number | undefined => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < from) low = middle + 1;
    else high = middle;
  }
  return sorted[low];
};

const fewStarts = 12;
/** Where a match of the pattern could begin, in order: where an opening stands, in the line of a need and no further before it than a match reaches. */
export const startsOf = (id: number, needs: readonly Either[], reach: number, tokens: readonly Token[]): readonly number[] => {
  const places = placesIn(tokens);
  const starts = inOrder(places.openings(id));
  // A handful of places is tried sooner than weighed.
  const near = tokens.length <= reach || starts.length <= fewStarts ? undefined : anchors(needs, places);
  if (near === undefined) return starts;
  return starts.filter((start) => {
    const need = nextOf(near, start);
    return need !== undefined && need < start + reach && places.lines[need] === places.lines[start];
  });
};
