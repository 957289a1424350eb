// What a pattern begins with and cannot do without: most are ruled out by one look at the message.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';
import { kindsAmong, type Test } from './token-kinds.ts';

// What a match can begin with: most patterns are ruled out by one look at a token.
export interface Opening {
  readonly words: ReadonlySet<string>;
  readonly tests: readonly Test[];
}

export const openingOf = (nodes: readonly Node[]): { words: string[]; tests: Test[]; open: boolean } => {
  const words: string[] = [];
  const found: Test[] = [];
  const merge = (inner: ReturnType<typeof openingOf>): void => {
    words.push(...inner.words);
    found.push(...inner.tests);
  };
  for (const node of nodes) {
    if (node.is === 'word') return { words: [...words, node.text], tests: found, open: false };
    if (node.is === 'tag') return { words, tests: [...found, node.test], open: false };
    const inner = node.is === 'choice' ? node.choices.map(openingOf) : [openingOf(node.only)];
    for (const each of inner) merge(each);
    const skips = node.is === 'repeat' ? node.least === 0 || inner.some((each) => each.open) : inner.some((each) => each.open);
    if (!skips) return { words, tests: found, open: false };
  }
  return { words, tests: found, open: true };
};

// What a match cannot do without: each entry lists words and tests of which one token must satisfy one.
export const needsOf = (nodes: readonly Node[]): Opening[] =>
  nodes.flatMap((node): Opening[] => {
    if (node.is === 'word') return [{ words: new Set([node.text]), tests: [] }];
    if (node.is === 'tag') return node.tag === 'any' || node.tag === 'word' ? [] : [{ words: new Set(), tests: [node.test] }];
    if (node.is === 'repeat') return node.least === 0 ? [] : needsOf(node.only);
    const inner = node.choices.map((choice) => needsOf(choice)[0]);
    if (inner.some((each) => each === undefined)) return [];
    return [{ words: new Set(inner.flatMap((each) => [...(each?.words ?? [])])), tests: inner.flatMap((each) => each?.tests ?? []) }];
  });

// What a message holds, gathered once for all patterns: its words, and the kinds of its tokens.
interface Contents {
  readonly words: ReadonlySet<string>;
  readonly kinds: ReadonlySet<Test>;
}

const contentsOf = (tokens: readonly Token[]): Contents => {
  const words = new Set<string>();
  for (const token of tokens) words.add(token.text);
  return { words, kinds: kindsAmong(tokens) };
};

let lastTokens: readonly Token[] | undefined;
let lastContents: Contents = { words: new Set(), kinds: new Set() };
export const contents = (tokens: readonly Token[]): Contents => {
  if (tokens !== lastTokens) {
    lastTokens = tokens;
    lastContents = contentsOf(tokens);
  }
  return lastContents;
};

const anyWord = (few: ReadonlySet<string>, many: ReadonlySet<string>): boolean => {
  for (const word of few) if (many.has(word)) return true;
  return false;
};
export const satisfied = (need: Opening, { words, kinds }: Contents): boolean =>
  need.tests.some((test) => kinds.has(test)) || (need.words.size < words.size ? anyWord(need.words, words) : anyWord(words, need.words));
