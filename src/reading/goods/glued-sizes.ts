// Sizes written as one with their word: "pk100", "10st" for ten stems.

import type { Token } from '../text/token.ts';

// "pk100"
export const packCode = ({ means, text }: Token, next: Token | undefined): boolean =>
  means['pack'] !== undefined && /^(pk|pkt|pack|box|bx|bag)$/.test(text) && next?.number?.form === 'code' && /^\d{1,4}$/.test(next.text);
export const stemsShort = ({ number, text }: Token): boolean =>
  number?.form === 'ordinal' && /\dst$|\d st$/.test(text) && (!/1$/.test(number.amount) || /11$/.test(number.amount));

const link = /^(-|to|or)$/;
/** Whether a size glued to its word is one end of a range: "10-12st", "pk100-200". */
export const isOpenSize = (tokens: readonly Token[], index: number): boolean => {
  const [before, token] = [tokens[index - 1], tokens[index]];
  if (token === undefined) return false;
  const by = stemsShort(token) ? -1 : before !== undefined && packCode(before, token) ? 1 : 0;
  return by !== 0 && link.test(tokens[index + by]?.text ?? '') && tokens[index + 2 * by]?.number?.form === 'plain';
};
