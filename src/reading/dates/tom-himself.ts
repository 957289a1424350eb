// "tom" is short for tomorrow, and a man's name: "Groom: Tom", "sam & tom", "tom did 2".

import type { Token } from '../text/token.ts';

export const isTomHimself = (tokens: readonly Token[], index: number): boolean => {
  const [before, next] = [tokens[index - 1], tokens[index + 1]];
  const alone = (before === undefined || before.kind === 'line') && (next === undefined || next.kind === 'line');
  return alone || next?.kind === 'word' || before?.kind === 'sign' || before?.text === 'and' || before?.means.role !== undefined;
};
