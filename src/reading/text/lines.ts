// The lines of a message, those with nothing in them left out.

import type { Stretch } from './message.ts';
import type { Token } from './token.ts';

export const linesOf = (tokens: readonly Token[]): readonly Stretch[] => {
  const lines: Stretch[] = [];
  let start = 0;
  for (let index = 0; index <= tokens.length; index++) {
    if (index < tokens.length && tokens[index]?.kind !== 'line') continue;
    if (index > start) lines.push({ start, end: index });
    start = index + 1;
  }
  return lines;
};
