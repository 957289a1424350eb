// Turns the nodes of a pattern into a program: small numbers one behind another, all programs in one row, so that trying a pattern touches little memory.

import type { Node } from './parse-pattern.ts';

/** What a step does. One that is tried ("or") goes on behind it where the token fits and elsewhere at the place it names. */
export const step = { end: 0, word: 1, kind: 2, wordOr: 3, kindOr: 4, either: 5, goTo: 6, words: 7, wordsOr: 8 } as const;

/** A program: where it begins, and the names of the tokens it keeps, by slot. */
export interface Program {
  readonly start: number;
  readonly names: readonly string[];
}

let row = new Int32Array(1 << 14);
let length = 0;
let longest = 0;

/** All programs. Another row takes its place when a program is added, so it is asked for anew at each trial. */
export const programs = (): Int32Array => row;
/** The steps of the longest program: no trial comes back to more places. */
export const mostSteps = (): number => longest;

const write = (...numbers: readonly number[]): void => {
  if (length + numbers.length > row.length) {
    const longer = new Int32Array(row.length * 2);
    longer.set(row);
    row = longer;
  }
  for (const number of numbers) row[length++] = number;
};
const openEnd = -1; // of a step whose other place is not known yet
const closeHere = (step: number): void => {
  row[step] = length;
};

const slotOf = (name: string, names: string[]): number => {
  if (!names.includes(name)) names.push(name);
  return names.indexOf(name);
};

/** Any one of several words: one look tells, however many they are. */
interface Words {
  readonly is: 'words';
  readonly numbers: readonly number[];
}
type Piece = Node | Words;

// Words that stand side by side in a choice are one of its ways: "(at|@|for|<each>)" has two.
const waysOf = (choices: readonly (readonly Node[])[]): readonly (readonly Piece[])[] => {
  const ways: (readonly Piece[])[] = [];
  for (const choice of choices) {
    const [first, second] = choice;
    const [before, behind] = ways.at(-1) ?? [];
    const beside = first?.is === 'word' && second === undefined && behind === undefined ? numbersOf(before) : [];
    if (first?.is !== 'word' || beside.length === 0) ways.push(choice);
    else ways[ways.length - 1] = [{ is: 'words', numbers: [...beside, first.number] }];
  }
  return ways;
};
const numbersOf = (piece: Piece | undefined): readonly number[] =>
  piece?.is === 'words' ? piece.numbers : piece?.is === 'word' ? [piece.number] : [];

// A number stands at its last bits or at the next free place behind; there is always a free one.
const writeTable = (numbers: readonly number[]): void => {
  const table: number[] = new Array(tableSize(numbers)).fill(0);
  for (const number of numbers) {
    let at = number & (table.length - 1);
    while (table[at] !== 0 && table[at] !== number) at = (at + 1) & (table.length - 1);
    table[at] = number;
  }
  write(...table);
};
const tableSize = ({ length }: readonly number[]): number => 1 << (32 - Math.clz32(length));

const writeNode = (node: Piece, names: string[]): void => {
  if (node.is === 'words') {
    write(step.words, tableSize(node.numbers) - 1);
    writeTable(node.numbers);
  } else if (node.is === 'word') write(step.word, node.number);
  else if (node.is === 'tag') write(step.kind, node.number, slotOf(node.name, names));
  else if (node.is === 'choice') {
    const ends: number[] = [];
    const ways = waysOf(node.choices);
    for (const [at, choice] of ways.entries()) {
      if (at === ways.length - 1) {
        for (const each of choice) writeNode(each, names);
        continue;
      }
      const other = writeTried(choice, names);
      write(step.goTo, openEnd);
      ends.push(length - 1);
      closeHere(other);
    }
    for (const end of ends) closeHere(end);
  } else {
    const exits: number[] = [];
    for (let times = 1; times <= node.most; times++) {
      if (times <= node.least) writeNode(node.only[0], names);
      else exits.push(writeTried(node.only, names));
    }
    for (const exit of exits) closeHere(exit);
  }
};

/** Writes nodes that may fail to fit, and says which number is to tell where to go on then. */
const writeTried = (nodes: readonly Piece[], names: string[]): number => {
  const [only] = nodes;
  const [way, another] = only?.is === 'choice' ? waysOf(only.choices) : [];
  // A choice of nothing but words is tried as they are.
  const [first, ...rest] = way?.[0]?.is === 'words' && another === undefined ? [...way, ...nodes.slice(1)] : nodes;
  if (first?.is === 'words') {
    write(step.wordsOr, tableSize(first.numbers) - 1, openEnd);
    const other = length - 1;
    writeTable(first.numbers);
    for (const node of rest) writeNode(node, names);
    return other;
  }
  if (first?.is === 'word') write(step.wordOr, first.number, openEnd);
  else if (first?.is === 'tag') write(step.kindOr, first.number, slotOf(first.name, names), openEnd);
  else write(step.either, openEnd);
  const other = length - 1;
  for (const node of first?.is === 'word' || first?.is === 'tag' ? rest : nodes) writeNode(node, names);
  return other;
};

/** The program that tries the nodes: the longest repeats first, and the first way that fits. */
export const programOf = (nodes: readonly Node[]): Program => {
  const start = length;
  const names: string[] = [];
  for (const node of nodes) writeNode(node, names);
  write(step.end);
  longest = Math.max(longest, length - start);
  return { start, names };
};
