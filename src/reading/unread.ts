// Names what nobody read: words with digits or a trade meaning. Ordinary words are nobody's business.

import { none } from './text/means.ts';
import type { Message } from './text/message.ts';
import type { Token } from './text/token.ts';

const tradeTags = ['piece', 'material', 'taxName', 'taxWord', 'ingredient', 'other', 'budget'];

const ofTrade = ({ means }: Token): boolean => {
  if (means === none) return false;
  for (const tag of tradeTags) if (means[tag] !== undefined) return true;
  return false;
};
const matters = (token: Token): boolean =>
  (token.number !== undefined && token.number.worded !== true) || ofTrade(token) || token.number?.form === 'money';

/** The person's own words for each stretch that matters and was not read. */
export const unreadWords = (message: Message, free: (index: number) => boolean): string[] => {
  const unread: string[] = [];
  for (let index = 0; index < message.tokens.length; index++) {
    const token = message.tokens[index] as Token;
    if (!free(index) || !matters(token)) continue;
    let end = index + 1;
    while (end < message.tokens.length && free(end) && matters(message.tokens[end] as Token)) end += 1;
    unread.push(message.words(index, end));
    index = end - 1;
  }
  return unread;
};
