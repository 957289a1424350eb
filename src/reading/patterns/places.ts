// Where in a message each pattern could begin: its words and kinds are gathered once for all patterns, and a pattern's places when it is first asked for.

import type { Token } from '../text/token.ts';
import { add, has, inOrder, nextBit } from './bits.ts';
import { all, type Either, firstNeed, needsBy, openingsBy } from './registry.ts';
import { kindsOf } from './token-kinds.ts';

type Stands = Map<string, number[]>;
const [nowhere, somewhere] = [1, 2];
// In shorter lines, or with fewer starts, trying is sooner done than weighing.
const longLine = 40; // tokens
const fewStarts = 12;

/** The first of the sorted places that is not before `from`. */
const nextOf = (sorted: readonly number[], from: number): number | undefined => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < from) low = middle + 1;
    else high = middle;
  }
  return sorted[low];
};

export class Places {
  readonly #words: Stands = new Map();
  readonly #kinds: Stands = new Map();
  /** How many patterns there were. */
  readonly patterns = all.length;
  // Which line each token stands in (the end of a line belongs to it), and in which lines each need is met: one bit for a line.
  readonly #lines: Uint16Array;
  readonly #lineLength: number; // tokens, on average
  readonly #lineWords: number;
  readonly #metIn: Uint32Array;
  // What may open each pattern, and where it could begin: one bit for a token.
  readonly #openings: ((readonly number[])[] | undefined)[];
  readonly #tokenWords: number;
  readonly #starts: Uint32Array;
  readonly #known: Uint8Array;

  constructor(tokens: readonly Token[]) {
    this.#lines = new Uint16Array(tokens.length);
    const stands = (places: Stands, key: string, index: number): void => {
      const known = places.get(key);
      if (known === undefined) places.set(key, [index]);
      else known.push(index);
    };
    let line = 0;
    for (let index = 0; index < tokens.length; index++) {
      const token = tokens[index] as Token;
      this.#lines[index] = line;
      if (token.kind === 'line') line += 1;
      stands(this.#words, token.text, index);
      for (const kind of kindsOf(token)) stands(this.#kinds, kind, index);
    }
    this.#lineLength = tokens.length / (line + 1);
    this.#lineWords = (line >> 5) + 1;
    this.#metIn = new Uint32Array((firstNeed.at(-1) as number) * this.#lineWords);
    this.#openings = new Array(this.patterns);
    this.#tokenWords = (tokens.length >> 5) + 1;
    this.#starts = new Uint32Array(this.patterns * this.#tokenWords);
    this.#known = new Uint8Array(this.patterns);
    for (const [word, places] of this.#words) this.#gather(places, needsBy.words.get(word), openingsBy.words.get(word));
    for (const [kind, places] of this.#kinds) this.#gather(places, needsBy.kinds.get(kind), openingsBy.kinds.get(kind));
  }

  #gather(places: readonly number[], needs: readonly number[] | undefined, openings: readonly number[] | undefined): void {
    if (needs !== undefined) {
      const width = this.#lineWords;
      const lines = new Uint32Array(width);
      for (const place of places) add(lines, this.#lines[place] as number);
      for (const need of needs) for (let at = 0; at < width; at++) (this.#metIn[need * width + at] as number) |= lines[at] as number;
    }
    for (const id of openings ?? []) {
      const lists = this.#openings[id];
      if (lists === undefined) this.#openings[id] = [places];
      else lists.push(places);
    }
  }

  // The lines that meet all needs of a pattern; undefined when none does.
  #linesOf(id: number): Uint32Array | undefined {
    const lines = new Uint32Array(this.#lineWords).fill(-1);
    let any = 0;
    for (let at = 0; at < this.#lineWords; at++) {
      for (let need = firstNeed[id] as number; need < (firstNeed[id + 1] as number); need++)
        (lines[at] as number) &= this.#metIn[need * this.#lineWords + at] as number;
      any |= lines[at] as number;
    }
    return any === 0 ? undefined : lines;
  }

  #look(id: number): void {
    this.#known[id] = nowhere;
    const lists = this.#openings[id];
    const lines = lists === undefined ? undefined : this.#linesOf(id);
    if (lists === undefined || lines === undefined) return;
    const first = id * this.#tokenWords;
    const starts = this.#starts.subarray(first, first + this.#tokenWords);
    let count = 0;
    for (const list of lists)
      for (const place of list)
        if (has(lines, this.#lines[place] as number)) {
          add(starts, place);
          count += 1;
        }
    if (count === 0) return;
    this.#known[id] = somewhere;
    if (count > fewStarts && this.#lineLength > longLine) this.#keepNear(id, starts);
  }

  // Keeps the starts that stand in the line of a need and no further before it than a match reaches.
  #keepNear(id: number, starts: Uint32Array): void {
    const { needs, reach } = all[id] as (typeof all)[number];
    const near = this.#rarest(needs);
    if (near === undefined) return;
    for (let start = nextBit(starts, 0); start !== -1; start = nextBit(starts, start + 1)) {
      const need = nextOf(near, start);
      if (need === undefined || need >= start + reach || this.#lines[need] !== this.#lines[start])
        (starts[start >> 5] as number) &= ~(1 << (start & 31));
    }
  }

  // Where the rarest of the needs stands, in order.
  #rarest(needs: readonly Either[]): readonly number[] | undefined {
    let rarest: readonly (readonly number[])[] | undefined;
    let fewest = Number.POSITIVE_INFINITY;
    for (const need of needs) {
      const lists = this.#lists(need);
      const count = lists.reduce((sum, list) => sum + list.length, 0);
      if (count < fewest) [rarest, fewest] = [lists, count];
    }
    return rarest && inOrder(rarest);
  }

  #lists({ words, kinds }: Either): readonly (readonly number[])[] {
    const lists: (readonly number[])[] = [];
    for (const kind of kinds) lists.push(this.#kinds.get(kind) ?? []);
    // The shorter of the two is gone through.
    if (words.size < this.#words.size) for (const word of words) lists.push(this.#words.get(word) ?? []);
    else for (const [word, places] of this.#words) if (words.has(word)) lists.push(places);
    return lists;
  }

  /** Whether a match of the pattern could begin anywhere. */
  might(id: number): boolean {
    if (this.#known[id] === 0) this.#look(id);
    return this.#known[id] === somewhere;
  }

  /** Whether a match of the pattern could begin here. */
  begins(id: number, index: number): boolean {
    return this.might(id) && has(this.#starts, id * 32 * this.#tokenWords + index);
  }

  /** The first place from `from` on where a match could begin; `end` when there is none before it. */
  next(id: number, from: number, end: number): number {
    if (!this.might(id)) return end;
    const first = id * 32 * this.#tokenWords;
    const found = nextBit(this.#starts, first + from, first + Math.min(end, 32 * this.#tokenWords));
    return found === -1 ? end : found - first;
  }
}

let lastTokens: readonly Token[] | undefined;
let lastPlaces = new Places([]);
/** Where everything stands in this message; the last one's places are kept. */
export const placesIn = (tokens: readonly Token[]): Places => {
  if (tokens !== lastTokens || lastPlaces.patterns !== all.length) {
    lastTokens = tokens;
    lastPlaces = new Places(tokens);
  }
  return lastPlaces;
};
