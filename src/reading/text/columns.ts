// Columns set apart by tabs or by rows of blanks. Who types two blanks between all words has made no columns: a row is wider than the narrowest gap.

import type { Reader } from '../phrase.ts';
import type { CleanText } from './clean-text.ts';

const widest = 16; // blanks
let [known, gap] = ['', /\t| {2,}/]; // of the message asked about last

/** What parts one column from the next, in the words as they were typed. */
export const columnGap = ({ original }: CleanText): RegExp => {
  if (original === known) return gap;
  const rows = /\S \S/.test(original) ? [1] : [...original.matchAll(/\S( +)(?=\S)/g)].map(([, row = '']) => row.length);
  [known, gap] = [original, new RegExp(`\\t| {${Math.min(widest, ...rows) + 1},}`)];
  return gap;
};

/** Whether a new column begins here, in the stretch from `start`. */
export const columnBefore = (reader: Pick<Reader, 'tokens' | 'message'>, index: number, start: number): boolean => {
  const { tokens } = reader;
  const { clean } = reader.message;
  const [before, here] = [tokens[index - 1], tokens[index]];
  if (index === start || before === undefined || here === undefined || here.start === before.end) return false;
  return columnGap(clean).test(clean.original.slice(clean.at[before.end - 1] ?? 0, clean.at[here.start] ?? 0));
};
