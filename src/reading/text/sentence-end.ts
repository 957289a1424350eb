// Where a sentence ends.

import type { Token } from './token.ts';

/** Whether a sentence ends here: at a line, at ";", "?" or "!", at a full stop with room behind it, or with the message. */
export const isEnd = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  if (token === undefined || token.kind === 'line' || token.text === ';' || token.text === '?' || token.text === '!') return true;
  return token.text === '.' && tokens[index + 1]?.glued !== true;
};
