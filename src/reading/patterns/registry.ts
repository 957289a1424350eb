// All patterns by number, and under each word and kind the patterns it could open and the needs it meets: what one look at a message asks for.

import { type Test, testOf } from './token-kinds.ts';

/** Words and kinds of which a token is one. */
export interface Either {
  readonly words: ReadonlySet<string>;
  readonly kinds: ReadonlySet<string>;
}

/** What is known of a pattern before it is tried. */
export interface Looks {
  /** What a match may begin with. */
  readonly opening: Either;
  /** What a match cannot do without in the line it begins in. */
  readonly needs: readonly Either[];
  /** The most tokens a match can take. */
  readonly reach: number;
}

/** What a word or a kind is good for. */
export interface Use {
  readonly isKind: boolean;
  /** Its number among the words, or among the kinds. */
  readonly number: number;
  /** The needs it meets, by their number among the needs of all patterns. */
  readonly needs: number[];
  /** The patterns it may open. */
  readonly opens: number[];
  /** Its number among the words and kinds together. */
  readonly place: number;
}

export const useOfWord = new Map<string, Use>();
export const useOfKind = new Map<string, Use>();
/** The words of all patterns by number; the first is no word of any. */
export const words: string[] = [''];
/** The tests of the kinds by number. */
export const tests: Test[] = [];
/** The reach of each pattern. */
export const reaches: number[] = [];
/** The first need of each pattern, and of the one after the last. */
export const firstNeed: number[] = [0];
/** What each pattern may begin with: the places of words and kinds, one pattern's behind another's. */
export const openings: number[] = [];
/** The first opening of each pattern, and of the one after the last. */
export const firstOpening: number[] = [0];

const used = (uses: Map<string, Use>, key: string, numbered: () => number): Use => {
  const known = uses.get(key);
  if (known !== undefined) return known;
  const use = { isKind: uses === useOfKind, number: numbered() - 1, needs: [], opens: [], place: useOfWord.size + useOfKind.size };
  uses.set(key, use);
  return use;
};
const ofWord = (word: string): Use => used(useOfWord, word, () => words.push(word));
const ofKind = (kind: string): Use => used(useOfKind, kind, () => tests.push(testOf(kind)));

/** The number of a word that a pattern asks for. */
export const wordNumber = (word: string): number => ofWord(word).number;
/** The number of a kind that a pattern asks for. */
export const kindNumber = (kind: string): number => ofKind(kind).number;

const usesOf = ({ words: some, kinds }: Either): Use[] => [...[...some].map(ofWord), ...[...kinds].map(ofKind)];

/** A pattern's number among all patterns, by which a message's places know it. */
export const numbered = ({ opening, needs, reach }: Looks): number => {
  const number = reaches.length;
  const first = firstNeed[number] as number;
  reaches.push(reach);
  for (const use of usesOf(opening)) {
    use.opens.push(number);
    openings.push(use.place);
  }
  firstOpening.push(openings.length);
  for (const [at, need] of needs.entries()) for (const use of usesOf(need)) use.needs.push(first + at);
  firstNeed.push(first + needs.length);
  return number;
};
