// Tries the nodes of a pattern at one place, the longest repeats first, and keeps the named tokens of the first way that fits.

import type { Token } from '../text/token.ts';
import type { Node } from './parse-pattern.ts';

type Next = (index: number) => boolean;

/** Whether the nodes from `at` on fit from token `index` and `next` accepts where they end. What needs no way back is walked without a call. */
export const run = (
  nodes: readonly Node[],
  at: number,
  index: number,
  tokens: readonly Token[],
  end: number,
  kept: Map<string, Token>,
  next: Next,
): boolean => {
  let place = at;
  let reached = index;
  let node = nodes[place];
  for (;;) {
    if (node?.is === 'word') {
      if (reached >= end || tokens[reached]?.text !== node.text) return false;
      reached += 1;
    } else if (node?.is !== 'repeat' || node.least > 0 || (reached < end && canBegin(node.only[0], tokens[reached]))) break;
    place += 1;
    node = nodes[place];
  }
  if (node === undefined) return next(reached);
  if (node.is === 'tag') return runTag(node, nodes, place, reached, tokens, end, kept, next);
  if (node.is === 'choice' && choicesAt(node, tokens, reached, end).length === 0) return false;
  const rest = place + 1;
  const after: Next = rest === nodes.length ? next : (then) => run(nodes, rest, then, tokens, end, kept, next);
  if (node.is === 'repeat') return runRepeat(node, 0, reached, tokens, end, kept, after);
  for (const choice of choicesAt(node, tokens, reached, end)) if (run(choice, 0, reached, tokens, end, kept, after)) return true;
  return false;
};

const choicesAt = (node: Extract<Node, { is: 'choice' }>, tokens: readonly Token[], index: number, end: number) =>
  (index < end ? node.byWord.get(tokens[index]?.text ?? '') : undefined) ?? node.others;

// One look at the token that would come first.
const canBegin = (node: Node, token: Token | undefined): boolean => {
  if (token === undefined) return false;
  if (node.is === 'word') return node.text === token.text;
  if (node.is === 'tag') return node.test(token);
  return node.is === 'repeat' || node.others.length > 0 || node.byWord.has(token.text);
};

const runTag = (
  node: Extract<Node, { is: 'tag' }>,
  nodes: readonly Node[],
  at: number,
  index: number,
  tokens: readonly Token[],
  end: number,
  kept: Map<string, Token>,
  next: Next,
): boolean => {
  const token = tokens[index];
  if (index >= end || token === undefined || !node.test(token)) return false;
  const before = kept.get(node.name);
  kept.set(node.name, token);
  if (run(nodes, at + 1, index + 1, tokens, end, kept, next)) return true;
  if (before === undefined) kept.delete(node.name);
  else kept.set(node.name, before);
  return false;
};

const runRepeat = (
  node: Extract<Node, { is: 'repeat' }>,
  times: number,
  index: number,
  tokens: readonly Token[],
  end: number,
  kept: Map<string, Token>,
  after: Next,
): boolean => {
  const again: Next = (then) => then > index && runRepeat(node, times + 1, then, tokens, end, kept, after);
  if (times < node.most && run(node.only, 0, index, tokens, end, kept, again)) return true;
  return times >= node.least && after(index);
};
