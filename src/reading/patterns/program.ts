// Turns the nodes of a pattern into a program: small numbers one behind another, all programs in one row, so that trying a pattern touches little memory.

import type { Node } from './parse-pattern.ts';

/** What a step does. One that is tried ("or") goes on behind it where the token fits and elsewhere at the place it names. */
export const step = { end: 0, word: 1, kind: 2, wordOr: 3, kindOr: 4, either: 5, goTo: 6 } as const;

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

const writeNode = (node: Node, names: string[]): void => {
  if (node.is === 'word') write(step.word, node.number);
  else if (node.is === 'tag') write(step.kind, node.number, slotOf(node.name, names));
  else if (node.is === 'choice') {
    const ends: number[] = [];
    for (const [at, choice] of node.choices.entries()) {
      if (at === node.choices.length - 1) {
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
const writeTried = (nodes: readonly Node[], names: string[]): number => {
  const [first, ...rest] = nodes;
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
