// One question at a time. Several of one sort are put as one: "18 done, 2 broke", which pieces? What any other would have asked about is named, not lost.

import type { Ask } from '../reading/reading.ts';

const isAlike = (one: Ask, other: Ask): boolean =>
  one.why === 'which piece' &&
  other.why === one.why &&
  one.choices.length === other.choices.length &&
  one.choices.every(({ words }, at) => words === other.choices[at]?.words);

const trimmed = (words: string): string => words.replace(/^(\s|,|and\b|but\b)+|[\s,;]+$/gi, '');

const together = (one: Ask, other: Ask): Ask => ({
  ...one,
  words: `${trimmed(one.words)}, ${trimmed(other.words)}`,
  choices: one.choices.map((choice, at) => ({ ...choice, facts: [...choice.facts, ...(other.choices[at]?.facts ?? [])] })),
});

/** The question to put, and the words that wait for no answer. */
export const oneQuestion = (asks: readonly Ask[]): { readonly ask: Ask | undefined; readonly unasked: readonly string[] } => {
  const [first, ...others] = asks;
  if (first === undefined) return { ask: undefined, unasked: [] };
  const alike = others.filter((other) => isAlike(first, other) && other.words !== first.words);
  const left = others.filter((other) => !alike.includes(other) && !first.words.includes(other.words));
  return { ask: alike.reduce(together, first), unasked: [...new Set(left.map(({ words }) => trimmed(words)))] };
};
