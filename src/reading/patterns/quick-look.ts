// Where a pattern can begin at all: most are ruled out by one look at the message, and most places by what a match needs further on.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';
import { type Either, type Places, placesIn } from './places.ts';

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

/** False when no line of the message has all that the pattern needs. */
export const allMet = (id: number, tokens: readonly Token[]): boolean => placesIn(tokens).meets(id);

// Where the rarest of the needs stands, in order.
const anchors = (needs: readonly Either[], places: Places): readonly number[] | undefined => {
  let rarest: Either | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const need of needs) {
    const count = needs.length === 1 ? 0 : places.count(need);
    if (count < fewest) [rarest, fewest] = [need, count];
  }
  return rarest === undefined ? undefined : places.of(rarest);
};

/** The first of the sorted places that is not before `from`. */
export const nextOf = (sorted: readonly number[], from: number): number | undefined => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < from) low = middle + 1;
    else high = middle;
  }
  return sorted[low];
};

const fewStarts = 12;
/** Where a match of the pattern could begin, in order: where an opening stands, in the line of a need and no further before it than a match reaches. */
export const startsOf = (id: number, needs: readonly Either[], reach: number, tokens: readonly Token[]): readonly number[] => {
  const places = placesIn(tokens);
  const starts = places.openings(id);
  // In short lines, or with a handful of places, trying is sooner done than weighing.
  const near = places.lineLength <= reach || starts.length <= fewStarts ? undefined : anchors(needs, places);
  if (near === undefined) return starts;
  return starts.filter((start) => {
    const need = nextOf(near, start);
    return need !== undefined && need < start + reach && places.lines[need] === places.lines[start];
  });
};
