// Where in a message each pattern could begin: its words and kinds are gathered once for all patterns, and a pattern's places when it is first asked for.

import type { Token } from '../text/token.ts';
import { add, has, nextBit, orFromNext } from './bits.ts';
import { all, firstNeed, needsBy, openingsBy } from './registry.ts';
import { kindsOf } from './token-kinds.ts';

type Stands = Map<string, number[]>;
const [nowhere, somewhere] = [1, 2];
const longestBlock = 16; // tokens

export class Places {
  /** How many patterns there were. */
  readonly patterns = all.length;
  // The message in blocks, each within one line: which block each token stands in (the end of a line belongs to it),
  // which blocks go on in the next, and in which each need is met: one bit for a block.
  readonly #blocks: Uint16Array;
  readonly #goesOn: Uint32Array;
  readonly #metIn: Uint32Array;
  readonly #scratch: readonly [Uint32Array, Uint32Array]; // for the pattern at hand
  // What may open each pattern, and where it could begin: one bit for a token.
  readonly #openings: ((readonly number[])[] | undefined)[];
  readonly #tokenWords: number;
  readonly #starts: Uint32Array;
  readonly #known: Uint8Array;

  constructor(tokens: readonly Token[]) {
    const [words, kinds]: [Stands, Stands] = [new Map(), new Map()];
    const stands = (places: Stands, key: string, index: number): void => {
      const known = places.get(key);
      if (known === undefined) places.set(key, [index]);
      else known.push(index);
    };
    this.#blocks = new Uint16Array(tokens.length);
    const goingOn: number[] = [];
    let [block, length] = [0, 0];
    for (let index = 0; index < tokens.length; index++) {
      const token = tokens[index] as Token;
      if (length === longestBlock) {
        goingOn.push(block);
        [block, length] = [block + 1, 0];
      }
      this.#blocks[index] = block;
      length += 1;
      if (token.kind === 'line') [block, length] = [block + 1, 0];
      stands(words, token.text, index);
      for (const kind of kindsOf(token)) stands(kinds, kind, index);
    }
    this.#goesOn = new Uint32Array((block >> 5) + 1);
    for (const each of goingOn) add(this.#goesOn, each);
    this.#scratch = [new Uint32Array(this.#goesOn.length), new Uint32Array(this.#goesOn.length)];
    this.#metIn = new Uint32Array((firstNeed.at(-1) as number) * this.#goesOn.length);
    this.#openings = new Array(this.patterns);
    this.#tokenWords = (tokens.length >> 5) + 1;
    this.#starts = new Uint32Array(this.patterns * this.#tokenWords);
    this.#known = new Uint8Array(this.patterns);
    for (const [word, places] of words) this.#gather(places, needsBy.words.get(word), openingsBy.words.get(word));
    for (const [kind, places] of kinds) this.#gather(places, needsBy.kinds.get(kind), openingsBy.kinds.get(kind));
  }

  #gather(places: readonly number[], needs: readonly number[] | undefined, openings: readonly number[] | undefined): void {
    if (needs !== undefined) {
      const width = this.#goesOn.length;
      const [blocks] = this.#scratch;
      blocks.fill(0);
      for (const place of places) add(blocks, this.#blocks[place] as number);
      for (const need of needs) for (let at = 0; at < width; at++) (this.#metIn[need * width + at] as number) |= blocks[at] as number;
    }
    for (const id of openings ?? []) {
      const lists = this.#openings[id];
      if (lists === undefined) this.#openings[id] = [places];
      else lists.push(places);
    }
  }

  // The blocks from which all needs of a pattern are within its reach and in the same line; undefined when there is none.
  #blocksOf(id: number): Uint32Array | undefined {
    const width = this.#goesOn.length;
    const further = ((all[id]?.reach ?? 0) + longestBlock - 2) >> 4;
    const [blocks, near] = this.#scratch;
    blocks.fill(-1);
    for (let need = firstNeed[id] as number; need < (firstNeed[id + 1] as number); need++) {
      for (let at = 0; at < width; at++) near[at] = this.#metIn[need * width + at] as number;
      for (let step = 0; step < further; step++) orFromNext(near, this.#goesOn);
      let any = 0;
      for (let at = 0; at < width; at++) any |= (blocks[at] as number) &= near[at] as number;
      if (any === 0) return undefined;
    }
    return blocks;
  }

  #look(id: number): void {
    this.#known[id] = nowhere;
    const lists = this.#openings[id];
    const blocks = lists === undefined ? undefined : this.#blocksOf(id);
    if (lists === undefined || blocks === undefined) return;
    const first = id * 32 * this.#tokenWords;
    for (const list of lists)
      for (const place of list)
        if (has(blocks, this.#blocks[place] as number)) {
          add(this.#starts, first + place);
          this.#known[id] = somewhere;
        }
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
