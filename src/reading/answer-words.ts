// The words of an answer and of the choices it may take, made alike: whatever the trade calls a kind, it is the kind's own name.

import { openMessage } from './text/message.ts';
import type { Token } from './text/token.ts';

/** "bouts", "boutonniere" → buttonhole; "corsages" → corsage. A word of other tokens stands as typed. */
const kindWordsOf = ({ means, text }: Token): readonly string[] => {
  const kind = means['piece'];
  return kind === undefined || kind === 'unspecified' ? text.split(' ') : kind.split(' ');
};

const isAmount = ({ number }: Token): boolean => number !== undefined && number.amount !== '';

/** A token's words; of a number its amount alone. */
export const wordsIn = (token: Token): readonly string[] => (isAmount(token) ? [token.number?.amount ?? ''] : kindWordsOf(token));

export const wordsOf = (tokens: readonly Token[]): string[] =>
  tokens.flatMap((token) => (token.kind === 'word' || token.number !== undefined ? wordsIn(token) : []));

export const plainWords = (text: string): string[] => wordsOf(openMessage(text).tokens);

/** "3 wrist 2 pin" of "3 wrist corsages and 2 pin corsages", and not of the two the other way round. */
export const saidInOrder = (said: readonly string[], text: string): boolean => {
  const words = plainWords(text);
  let from = 0;
  return said.every((word) => {
    const at = words.indexOf(word, from);
    from = at + 1;
    return at >= 0;
  });
};
