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

/** A word of this trade or an amount of money; not the words of other flower work. */
export const isOfTrade = (token: Token | undefined): boolean =>
  token !== undefined && token.means.other === undefined && (ofTrade(token) || token.number?.form === 'money');

/** The person's own words for each stretch that matters and was not read; `whole`: where every word is told. */
export const unreadWords = (
  message: Message,
  free: (index: number) => boolean,
  whole: (index: number) => boolean = () => false,
): string[] => {
  const unread: string[] = [];
  const isTold = (index: number): boolean => free(index) && (whole(index) || matters(message.tokens[index] as Token));
  for (let index = 0; index < message.tokens.length; index++) {
    if (!isTold(index)) continue;
    let end = index + 1;
    while (end < message.tokens.length && isTold(end)) end += 1;
    unread.push(message.words(index, end));
    index = end - 1;
  }
  return unread;
};
