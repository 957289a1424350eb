// Where in a message each pattern could begin: found for all patterns at once, when the first of them is asked for.
// Only the last message's places are kept, in room that is used again. All of it is rows of bits, so that little memory is touched.

import type { Token } from '../text/token.ts';
import { add, has, lastBit, nextBit, orFromNext, roomFor } from './bits.ts';
import { firstNeed, firstOpening, openings, reaches, tests, type Use, useOfKind, useOfWord } from './registry.ts';
import type { Sight } from './trial.ts';
import { forgetUses, usesKept } from './uses-kept.ts';

const longestBlock = 16; // tokens
const none = -1;

let message: readonly Token[] | undefined;
let patterns = 0;
// The message in blocks, each within one line: which block each token stands in (the end of a line belongs to it),
// which blocks go on in the next, and from which each need is within its pattern's reach: one bit for a block.
let blockOf = new Uint16Array();
let blockStart = new Uint32Array();
let blockWords = 1;
let goesOn = new Uint32Array(1);
let metFrom = new Uint32Array();
let blocks = new Uint32Array(1); // for the word, kind or pattern at hand
// The words and kinds that stand in the message: the row of each, and in which tokens and blocks it stands.
const standing: Use[] = [];
let rowOf = new Int16Array();
let tokenWords = 1;
let standsAt = new Uint32Array();
let standsIn = new Uint32Array();
// Where each pattern could begin: the row of those that can begin at all, and one bit in it for a token.
let opened = new Uint8Array();
let startRow = new Int16Array();
let starts = new Uint32Array();
// The message as trials see it.
let seen = { word: new Uint32Array(), kinds: new Uint32Array(), kindWords: 1 };

/** The last message looked at, as trials see it. */
export const sight = (): Sight => seen;

// One row more with nothing in it: the same bits where they are long enough.
const withRow = (bits: Uint32Array<ArrayBuffer>, rows: number, words: number): Uint32Array<ArrayBuffer> => {
  const end = rows * words;
  const room = bits.length < end ? new Uint32Array(end * 2) : bits;
  if (room !== bits) room.set(bits);
  return room.fill(0, end - words, end);
};

const stands = (use: Use, index: number): void => {
  if (use.opens.length === 0 && use.needs.length === 0) return;
  if (rowOf[use.place] === none) {
    rowOf[use.place] = standing.length;
    standing.push(use);
    standsAt = withRow(standsAt, standing.length, tokenWords);
    standsIn = withRow(standsIn, standing.length, blockWords);
  }
  const at = rowOf[use.place] as number;
  add(standsAt, at * tokenWords * 32 + index);
  add(standsIn, at * blockWords * 32 + (blockOf[index] as number));
};
const see = (token: Token, index: number): void => {
  for (const use of usesKept(token)) {
    if (use.isKind) add(seen.kinds, index * seen.kindWords * 32 + use.number);
    else seen.word[index] = use.number;
    stands(use, index);
  }
};

const intoBlocks = (tokens: readonly Token[]): void => {
  const goingOn: number[] = [];
  let [block, length] = [0, 0];
  if (tokens.length > blockOf.length) {
    blockOf = new Uint16Array(tokens.length * 2);
    blockStart = new Uint32Array(tokens.length * 2 + 2);
  }
  for (let index = 0; index < tokens.length; index++) {
    if (length === longestBlock) {
      goingOn.push(block);
      [block, length] = [block + 1, 0];
    }
    if (length === 0) blockStart[block] = index;
    blockOf[index] = block;
    length += 1;
    if (tokens[index]?.kind === 'line') [block, length] = [block + 1, 0];
  }
  blockStart[length === 0 ? block : block + 1] = tokens.length;
  blockWords = (block >> 5) + 1;
  [goesOn, blocks] = [roomFor(goesOn, blockWords), roomFor(blocks, blockWords)];
  for (const each of goingOn) add(goesOn, each);
};

// How many blocks further a pattern reaches than the one it begins in, for each of its needs.
let further = new Uint8Array();
let prepared = 0; // patterns
const prepare = (): void => {
  if (prepared === patterns) return;
  prepared = patterns;
  forgetUses();
  further = new Uint8Array(firstNeed[patterns] as number);
  for (let id = 0; id < patterns; id++)
    further.fill(((reaches[id] as number) + longestBlock - 2) >> 4, firstNeed[id] as number, firstNeed[id + 1] as number);
  for (const uses of [useOfWord, useOfKind])
    for (const { needs } of uses.values()) needs.sort((a, b) => (further[a] as number) - (further[b] as number));
};

const gather = ({ needs, opens }: Use, at: number): void => {
  for (const id of opens) opened[id] = 1;
  const [met, from, words] = [metFrom, blocks, blockWords];
  for (let word = 0; word < words; word++) from[word] = standsIn[at * words + word] as number;
  // The needs of patterns that reach no further come first, so that each step back is made once.
  let stepped = 0;
  for (const need of needs) {
    for (; stepped < (further[need] as number); stepped++) orFromNext(from, goesOn, words);
    for (let word = 0; word < words; word++) (met[need * words + word] as number) |= from[word] as number;
  }
};

// The blocks from which all needs of a pattern are within its reach and in the same line; false when there is none.
const withinReach = (id: number): boolean => {
  const [met, into, words] = [metFrom, blocks, blockWords];
  const [first, end] = [firstNeed[id] as number, firstNeed[id + 1] as number];
  for (let word = 0; word < words; word++) into[word] = -1;
  for (let at = first * words; at < end * words; at += words) {
    let any = 0;
    for (let word = 0; word < words; word++) any |= (into[word] as number) &= met[at + word] as number;
    if (any === 0) return false;
  }
  return true;
};

// The pattern's starts in the blocks at hand, into a row of their own; false when there is none.
let opening = new Int32Array(16); // where the rows begin of what the pattern may open with and stands in the message
const startsInto = (row: number, id: number): boolean => {
  const [words, first] = [tokenWords, row * tokenWords];
  starts = withRow(starts, row + 1, words);
  const [into, from] = [starts, standsAt];
  let open = 0;
  const [begin, end] = [firstOpening[id] as number, firstOpening[id + 1] as number];
  if (end - begin > opening.length) opening = new Int32Array((end - begin) * 2);
  for (let at = begin; at < end; at++) {
    const place = rowOf[openings[at] as number] as number;
    if (place !== none) opening[open++] = place * words;
  }
  const opens = (word: number): number => {
    let bits = 0;
    for (let at = 0; at < open; at++) bits |= from[(opening[at] as number) + word] as number;
    return bits;
  };
  if (firstNeed[id] === firstNeed[id + 1]) {
    for (let word = 0; word < words; word++) into[first + word] = opens(word);
    return true;
  }
  let any = 0;
  const last = lastBit(blocks, blockWords);
  for (let block = nextBit(blocks, 0); block !== none && block <= last; block = nextBit(blocks, block + 1)) {
    const [start, stop] = [blockStart[block] as number, (blockStart[block + 1] as number) - 1];
    for (let word = start >> 5; word <= stop >> 5; word++) {
      const within = (word === start >> 5 ? -1 << (start & 31) : -1) & (word === stop >> 5 ? -1 >>> (31 - (stop & 31)) : -1);
      const bits = opens(word) & within;
      (into[first + word] as number) |= bits;
      any |= bits;
    }
  }
  return any !== 0;
};

const lookAt = (tokens: readonly Token[]): void => {
  message = tokens;
  patterns = reaches.length;
  prepare();
  intoBlocks(tokens);
  tokenWords = (tokens.length >> 5) + 1;
  const kindWords = (tests.length + 31) >> 5;
  seen = { word: roomFor(seen.word, tokens.length), kinds: roomFor(seen.kinds, tokens.length * kindWords), kindWords };
  metFrom = roomFor(metFrom, (firstNeed[patterns] as number) * blockWords);
  standing.length = 0;
  rowOf = new Int16Array(useOfWord.size + useOfKind.size).fill(none);
  for (let index = 0; index < tokens.length; index++) see(tokens[index] as Token, index);
  opened = new Uint8Array(patterns);
  for (const [at, use] of standing.entries()) gather(use, at);
  startRow = new Int16Array(patterns).fill(none);
  let rows = 0;
  for (let id = 0; id < patterns; id++) {
    if (opened[id] === 1 && withinReach(id) && startsInto(rows, id)) startRow[id] = rows++;
  }
};

const startsOf = (id: number, tokens: readonly Token[]): number => {
  if (tokens !== message || id >= patterns) lookAt(tokens);
  return startRow[id] as number;
};

/** Whether a match of the pattern could begin anywhere in the message. */
export const might = (id: number, tokens: readonly Token[]): boolean => startsOf(id, tokens) !== none;

/** Whether a match of the pattern could begin here, at a token of the message. */
export const begins = (id: number, tokens: readonly Token[], index: number): boolean => {
  const row = startsOf(id, tokens);
  return row !== none && has(starts, row * tokenWords * 32 + index);
};

/** The first place from `from` on where a match could begin; `end` when there is none before it. */
export const nextStart = (id: number, tokens: readonly Token[], from: number, end: number): number => {
  const row = startsOf(id, tokens);
  if (row === none) return end;
  const first = row * tokenWords * 32;
  const found = nextBit(starts, first + from, first + Math.min(end, tokenWords * 32));
  return found === none ? end : found - first;
};

/** Adds to the bits, one for a token, where a match could begin. */
export const addStarts = (id: number, tokens: readonly Token[], places: Uint32Array): void => {
  const row = startsOf(id, tokens);
  if (row === none) return;
  for (let word = 0; word < tokenWords; word++) (places[word] as number) |= starts[row * tokenWords + word] as number;
};
