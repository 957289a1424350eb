// Reads the corpus files beside the tests: JSON lines, one message a line.

import { readdirSync, readFileSync } from 'node:fs';

const folder = new URL('../corpus/', import.meta.url);

export const corpusText = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
export const corpusLines = <T>(name: string): T[] => textLines(name).map((line) => JSON.parse(line) as T);
export const textLines = (name: string): string[] =>
  corpusText(name)
    .split('\n')
    .filter((line) => line !== '');

/** The files of our own corpus, one per fact. */
export const factFiles = (): string[] =>
  readdirSync(folder).filter((name) => name.endsWith('.jsonl') && name !== 'sample.jsonl' && name !== 'more.jsonl');
