// What is known of a pattern before it is tried: what it may begin with, what it cannot do without, and how far it reaches.

import type { Node } from './parse-pattern.ts';
import type { Either } from './registry.ts';

/** What a match may begin with; `open` when all of it may be left out. */
export const openingOf = (nodes: readonly Node[]): Either & { readonly open: boolean } => {
  const words = new Set<string>();
  const kinds = new Set<string>();
  for (const node of nodes) {
    if (node.is === 'word') return { words: words.add(node.text), kinds, open: false };
    if (node.is === 'tag') return { words, kinds: kinds.add(node.tag), open: false };
    const inner = node.is === 'choice' ? node.choices.map(openingOf) : [openingOf(node.only)];
    for (const each of inner) {
      for (const word of each.words) words.add(word);
      for (const kind of each.kinds) kinds.add(kind);
    }
    const skips = node.is === 'repeat' ? node.least === 0 || inner.some((each) => each.open) : inner.some((each) => each.open);
    if (!skips) return { words, kinds, open: false };
  }
  return { words, kinds, open: true };
};

const canEndLine = (node: Node): boolean => {
  if (node.is === 'repeat') return canEndLine(node.only[0]);
  return node.is === 'choice' ? node.choices.some((choice) => choice.some(canEndLine)) : node.is === 'tag' && node.tag === 'line';
};

const needOf = (node: Node): Either[] => {
  if (node.is === 'word') return [{ words: new Set([node.text]), kinds: new Set() }];
  if (node.is === 'tag') return node.tag === 'any' || node.tag === 'word' ? [] : [{ words: new Set(), kinds: new Set([node.tag]) }];
  if (node.is === 'repeat') return node.least === 0 ? [] : needsOf(node.only);
  const inner = node.choices.map((choice) => needsOf(choice)[0]);
  if (inner.some((each) => each === undefined)) return [];
  const all = (list: keyof Either): Set<string> => new Set(inner.flatMap((each) => [...(each?.[list] ?? [])]));
  return [{ words: all('words'), kinds: all('kinds') }];
};

/** What a match cannot do without in the line it begins in. */
export const needsOf = (nodes: readonly Node[]): Either[] => {
  const last = nodes.findIndex(canEndLine);
  return (last === -1 ? nodes : nodes.slice(0, last)).flatMap(needOf);
};

/** The most tokens a match can take. */
export const reachOf = (nodes: readonly Node[]): number =>
  nodes.reduce((sum, node) => {
    if (node.is === 'repeat') return sum + node.most * reachOf(node.only);
    return sum + (node.is === 'choice' ? Math.max(...node.choices.map(reachOf)) : 1);
  }, 0);
