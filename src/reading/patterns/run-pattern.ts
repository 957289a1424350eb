// Tries the nodes of a pattern at one place, the longest repeats first, and keeps the named tokens of the first way that fits.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';

type Next = (index: number) => boolean;

export const run = (
  nodes: readonly Node[],
  at: number,
  index: number,
  tokens: readonly Token[],
  end: number,
  kept: Map<string, Token>,
  next: Next,
): boolean => {
  const node = nodes[at];
  if (node === undefined) return next(index);
  const after: Next = (reached) => run(nodes, at + 1, reached, tokens, end, kept, next);
  switch (node.is) {
    case 'word':
      return index < end && tokens[index]?.text === node.text && after(index + 1);
    case 'tag': {
      const token = tokens[index];
      if (index >= end || token === undefined || !node.test(token)) return false;
      const before = kept.get(node.name);
      kept.set(node.name, token);
      if (after(index + 1)) return true;
      if (before === undefined) kept.delete(node.name);
      else kept.set(node.name, before);
      return false;
    }
    case 'choice':
      return ((index < end ? node.byWord.get(tokens[index]?.text ?? '') : undefined) ?? node.others).some((choice) =>
        run(choice, 0, index, tokens, end, kept, after),
      );
    case 'repeat': {
      const again = (times: number, reached: number): boolean => {
        if (times < node.most && run([node.node], 0, reached, tokens, end, kept, (then) => then > reached && again(times + 1, then)))
          return true;
        return times >= node.least && after(reached);
      };
      return again(0, index);
    }
  }
};
