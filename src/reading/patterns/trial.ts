// Tries a pattern's program at one place of a row of tokens.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';
import { mostSteps, type Program, programOf, programs, step } from './program.ts';
import { tests, useOfWord, words } from './registry.ts';
import type { Test } from './token-kinds.ts';

/** A match: where it stands and the tokens it keeps, by name. */
export interface Match {
  readonly start: number;
  readonly end: number;
  readonly kept: Readonly<Record<string, Token>>;
}

/** The tokens of a message as patterns see them: the number of each one's word, and its kinds as bits. */
export interface Sight {
  readonly word: Uint32Array;
  readonly kinds: Uint32Array;
  readonly kindWords: number; // of bits, for each token
}

const nowhere = -1;
const empty = -1;
// Where to come back to (step, token, how far the notes went), the notes (slot, what it held), and the slots: room used again by every trial.
let [back, notes, slots] = [new Int32Array(), new Int32Array(), new Int32Array()];
let [ways, noted] = [0, 0];
const makeRoom = (): void => {
  const most = mostSteps();
  [back, notes, slots] = [new Int32Array(most * 3), new Int32Array(most * 2), new Int32Array(most).fill(empty)];
};
const comeBackTo = (at: number, index: number): void => {
  back[ways++] = at;
  back[ways++] = index;
  back[ways++] = noted;
};
const keep = (slot: number, index: number): void => {
  notes[noted++] = slot;
  notes[noted++] = slots[slot] as number;
  slots[slot] = index;
};
const undoTo = (note: number): void => {
  while (noted > note) {
    noted -= 2;
    slots[notes[noted] as number] = notes[noted + 1] as number;
  }
};

const isWord = (number: number, tokens: readonly Token[], index: number, sight: Sight | undefined): boolean =>
  sight === undefined ? tokens[index]?.text === words[number] : sight.word[index] === number;
/** Whether the word is in the table of so many places and one that stands here. */
const isAmong = (
  program: Int32Array,
  table: number,
  last: number,
  tokens: readonly Token[],
  index: number,
  sight: Sight | undefined,
): boolean => {
  const number = sight === undefined ? (useOfWord.get(tokens[index]?.text ?? '')?.number ?? 0) : (sight.word[index] as number);
  if (number === 0) return false;
  for (let at = number & last; ; at = (at + 1) & last) {
    const here = program[table + at];
    if (here === number) return true;
    if (here === 0) return false;
  }
};
const isKind = (number: number, tokens: readonly Token[], index: number, sight: Sight | undefined): boolean =>
  sight === undefined
    ? (tests[number] as Test)(tokens[index] as Token)
    : (((sight.kinds[index * sight.kindWords + (number >> 5)] as number) >>> (number & 31)) & 1) === 1;

/** Where the match ends; `nowhere` when there is none. The slots hold the places of the tokens it keeps. */
const run = (start: number, tokens: readonly Token[], from: number, upTo: number, sight: Sight | undefined): number => {
  const program = programs();
  const end = Math.min(upTo, tokens.length);
  let [at, index] = [start, from];
  [ways, noted] = [0, 0];
  for (;;) {
    const first = program[at + 1] as number;
    switch (program[at]) {
      case step.end:
        return index;
      case step.word:
        if (index < end && isWord(first, tokens, index, sight)) {
          index += 1;
          at += 2;
          continue;
        }
        break;
      case step.kind:
        if (index < end && isKind(first, tokens, index, sight)) {
          keep(program[at + 2] as number, index);
          index += 1;
          at += 3;
          continue;
        }
        break;
      case step.wordOr:
        if (index < end && isWord(first, tokens, index, sight)) {
          comeBackTo(program[at + 2] as number, index);
          index += 1;
          at += 3;
        } else at = program[at + 2] as number;
        continue;
      case step.kindOr:
        if (index < end && isKind(first, tokens, index, sight)) {
          comeBackTo(program[at + 3] as number, index);
          keep(program[at + 2] as number, index);
          index += 1;
          at += 4;
        } else at = program[at + 3] as number;
        continue;
      case step.words:
        if (index < end && isAmong(program, at + 2, first, tokens, index, sight)) {
          index += 1;
          at += first + 3;
          continue;
        }
        break;
      case step.wordsOr:
        if (index < end && isAmong(program, at + 3, first, tokens, index, sight)) {
          comeBackTo(program[at + 2] as number, index);
          index += 1;
          at += first + 4;
        } else at = program[at + 2] as number;
        continue;
      case step.either:
        comeBackTo(first, index);
        at += 2;
        continue;
      default:
        at = first; // goTo
        continue;
    }
    if (ways === 0) {
      undoTo(0);
      return nowhere;
    }
    ways -= 3;
    [at, index] = [back[ways] as number, back[ways + 1] as number];
    undoTo(back[ways + 2] as number);
  }
};

/** Tries the nodes at one place. The program is made when first needed: many never are. */
export const trialOf = (
  nodes: readonly Node[],
): ((tokens: readonly Token[], index: number, end: number, sight?: Sight) => Match | undefined) => {
  let program: Program | undefined;
  return (tokens, index, end, sight) => {
    program ??= programOf(nodes);
    if (slots.length < mostSteps()) makeRoom();
    const reached = run(program.start, tokens, index, end, sight);
    if (reached === nowhere) return undefined;
    const kept: Record<string, Token> = {};
    for (let slot = 0; slot < program.names.length; slot++) {
      const place = slots[slot] as number;
      if (place === empty) continue;
      kept[program.names[slot] as string] = tokens[place] as Token;
      slots[slot] = empty;
    }
    return { start: index, end: reached, kept };
  };
};
