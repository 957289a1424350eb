// Where in a message each pattern could begin: its words and kinds are gathered once for all patterns, and a pattern is looked at when it is first asked for.
// Only the last message's places are kept, in room that is used again.

import type { Token } from '../text/token.ts';
import { add, addStretch, has, nextBit, orFromNext, roomFor } from './bits.ts';
import { firstNeed, reaches, tests, type Use, useOfKind, useOfWord } from './registry.ts';
import { kindsOf } from './token-kinds.ts';
import type { Sight } from './trial.ts';

const [unseen, nowhere, somewhere] = [0, 1, 2];
const longestBlock = 16; // tokens

let message: readonly Token[] | undefined;
let patterns = 0;
let seen = new Uint8Array(); // by pattern
// The message in blocks, each within one line: which block each token stands in (the end of a line belongs to it),
// which blocks go on in the next, and in which each need is met: one bit for a block.
let blockOf = new Uint16Array();
let blockStart = new Uint32Array();
let blockCount = 0;
let blockWords = 1;
let goesOn = new Uint32Array(1);
let metIn = new Uint32Array();
let [blocks, near] = [new Uint32Array(1), new Uint32Array(1)]; // for the need or pattern at hand
// Where each pattern could begin: one bit for a token, and as many for each pattern.
let row = 32;
let starts = new Uint32Array();
let here = new Uint32Array(1); // where the word or kind at hand stands

const standing: Use[] = [];
const stands = (use: Use, index: number): void => {
  if (use.opens.length === 0 && use.needs.length === 0) return;
  if (use.stands.length === 0) standing.push(use);
  use.stands.push(index);
};

// The message as trials see it.
let seenAs: Sight & { readonly word: Uint32Array<ArrayBuffer>; readonly kinds: Uint32Array<ArrayBuffer> } = {
  word: new Uint32Array(),
  kinds: new Uint32Array(),
  kindWords: 1,
};
/** The last message looked at, as trials see it. */
export const sight = (): Sight => seenAs;

const see = (token: Token, index: number): void => {
  const ofWord = useOfWord.get(token.text);
  if (ofWord !== undefined) {
    seenAs.word[index] = ofWord.number;
    stands(ofWord, index);
  }
  for (const kind of kindsOf(token)) {
    const ofKind = useOfKind.get(kind);
    if (ofKind === undefined) continue;
    add(seenAs.kinds, index * seenAs.kindWords * 32 + ofKind.number);
    stands(ofKind, index);
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
  blockCount = length === 0 ? block : block + 1;
  blockStart[blockCount] = tokens.length;
  blockWords = (block >> 5) + 1;
  [goesOn, blocks, near] = [roomFor(goesOn, blockWords), roomFor(blocks, blockWords), roomFor(near, blockWords)];
  for (const each of goingOn) add(goesOn, each);
};

const gather = ({ needs, opens, stands: places }: Use): void => {
  blocks.fill(0, 0, blockWords);
  for (const place of places) add(blocks, blockOf[place] as number);
  for (const need of needs) for (let at = 0; at < blockWords; at++) (metIn[need * blockWords + at] as number) |= blocks[at] as number;
  const words = row >> 5;
  if (places.length <= words) for (const id of opens) for (const place of places) add(starts, id * row + place);
  else {
    // Found nearly everywhere: sooner added by the word than by the bit.
    here.fill(0, 0, words);
    for (const place of places) add(here, place);
    for (const id of opens) for (let at = 0; at < words; at++) (starts[id * words + at] as number) |= here[at] as number;
  }
  places.length = 0;
};

const lookAt = (tokens: readonly Token[]): void => {
  message = tokens;
  patterns = reaches.length;
  intoBlocks(tokens);
  row = ((tokens.length >> 5) + 1) << 5;
  seen = new Uint8Array(patterns);
  metIn = roomFor(metIn, (firstNeed[patterns] as number) * blockWords);
  starts = roomFor(starts, patterns * (row >> 5));
  here = roomFor(here, row >> 5);
  standing.length = 0;
  const kindWords = (tests.length + 31) >> 5;
  seenAs = { word: roomFor(seenAs.word, tokens.length), kinds: roomFor(seenAs.kinds, tokens.length * kindWords), kindWords };
  for (let index = 0; index < tokens.length; index++) see(tokens[index] as Token, index);
  for (const use of standing) gather(use);
};

// The blocks from which all needs of a pattern are within its reach and in the same line; false when there is none.
const withinReach = (id: number): boolean => {
  const further = ((reaches[id] as number) + longestBlock - 2) >> 4;
  blocks.fill(-1, 0, blockWords);
  for (let need = firstNeed[id] as number; need < (firstNeed[id + 1] as number); need++) {
    for (let at = 0; at < blockWords; at++) near[at] = metIn[need * blockWords + at] as number;
    for (let step = 0; step < further; step++) orFromNext(near, goesOn, blockWords);
    let any = 0;
    for (let at = 0; at < blockWords; at++) any |= (blocks[at] as number) &= near[at] as number;
    if (any === 0) return false;
  }
  return true;
};

const look = (id: number): void => {
  const [first, end] = [id * row, (id + 1) * row];
  seen[id] = nowhere;
  if (nextBit(starts, first, end) === -1) return;
  if (!withinReach(id)) {
    starts.fill(0, first >> 5, end >> 5);
    return;
  }
  keep(id);
};

// Of a pattern's starts those in the blocks at hand.
const keep = (id: number): void => {
  const [from, words] = [(id * row) >> 5, row >> 5];
  here.fill(0, 0, words);
  for (let block = nextBit(blocks, 0, blockCount); block !== -1; block = nextBit(blocks, block + 1, blockCount))
    addStretch(here, blockStart[block] as number, blockStart[block + 1] as number);
  let any = 0;
  for (let at = 0; at < words; at++) any |= (starts[from + at] as number) &= here[at] as number;
  if (any !== 0) seen[id] = somewhere;
};

/** Whether a match of the pattern could begin anywhere in the message. */
export const might = (id: number, tokens: readonly Token[]): boolean => {
  if (tokens !== message || id >= patterns) lookAt(tokens);
  if (seen[id] === unseen) look(id);
  return seen[id] === somewhere;
};

/** Whether a match of the pattern could begin here, at a token of the message. */
export const begins = (id: number, tokens: readonly Token[], index: number): boolean => might(id, tokens) && has(starts, id * row + index);

/** The first place from `from` on where a match could begin; `end` when there is none before it. */
export const nextStart = (id: number, tokens: readonly Token[], from: number, end: number): number => {
  if (!might(id, tokens)) return end;
  const first = id * row;
  const found = nextBit(starts, first + from, first + Math.min(end, row));
  return found === -1 ? end : found - first;
};

/** Adds to the bits, one for a token, where a match could begin. */
export const addStarts = (id: number, tokens: readonly Token[], places: Uint32Array): void => {
  if (!might(id, tokens)) return;
  const first = (id * row) >> 5;
  for (let word = 0; word < row >> 5; word++) (places[word] as number) |= starts[first + word] as number;
};
