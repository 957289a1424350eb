// A phrase is one way to say something: it looks at the words nobody has read yet and says what it found there.

import type { Problem } from '../values/problem.ts';
import type { Fact } from './fact.ts';
import type { Ask, ReadingContext } from './reading.ts';
import type { Message, Part } from './text/message.ts';
import { placesIn } from './text/places-in.ts';
import type { Token } from './text/token.ts';

export interface Finding {
  readonly start: number; // first token
  readonly end: number; // one past the last
  /** The tokens it reads, when they do not lie together; else all from start to end. */
  readonly takes?: readonly number[];
  /** Kept from every later phrase, and still named as unread. */
  readonly held?: boolean;
  /** Held, and named as unread word for word, whatever the words are. */
  readonly whole?: boolean;
  /** Held, and sure to be no part of the order: other work on a quote, what was paid of it. */
  readonly apart?: boolean;
  readonly facts?: readonly Fact[];
  readonly asks?: readonly Ask[];
  readonly problems?: readonly Problem[];
}

export interface Reader {
  readonly message: Message;
  readonly tokens: readonly Token[];
  readonly context: ReadingContext;
  /** Facts read so far by earlier phrases. */
  readonly facts: readonly Fact[];
  /** What earlier phrases ask about. */
  readonly asks: readonly Ask[];
  /** Whether no earlier phrase has taken this token. */
  free(index: number): boolean;
  /** Parts with no token taken yet. */
  untouched(): readonly Part[];
  words(start: number, end: number): string;
}

export interface Phrase {
  readonly name: string;
  /** Things people say; the help, the README's table and a test are made from them. */
  readonly examples: readonly string[];
  find(reader: Reader): readonly Finding[];
}

/** A fact as a phrase writes it, before it is given its words. */
export type Unworded = Fact extends infer F ? (F extends Fact ? Omit<F, 'words'> : never) : never;

/** The places of the tokens a finding takes. */
export const takenBy = (finding: Finding): readonly number[] => finding.takes ?? placesIn(finding);

/** Whether no token of the stretch is taken. */
export const allFree = (reader: Reader, start: number, end: number): boolean => {
  for (let index = start; index < end; index++) if (!reader.free(index)) return false;
  return true;
};

/** Whether any token of the stretch is still free. */
export const anyFree = (reader: Reader, start: number, end: number): boolean => {
  for (let index = start; index < end; index++) if (reader.free(index)) return true;
  return false;
};

/** The whole message as a stretch. */
export const everything = ({ tokens }: Reader): { start: number; end: number } => ({ start: 0, end: tokens.length });

/** Gives the facts of a finding the person's own words. */
export const found = (reader: Reader, start: number, end: number, facts: readonly Unworded[], takes?: readonly number[]): Finding => {
  const words = reader.words(start, end);
  const worded = facts.map((fact) => ({ ...fact, words }) as Fact);
  return { start, end, facts: worded, ...(takes === undefined ? {} : { takes }) };
};
