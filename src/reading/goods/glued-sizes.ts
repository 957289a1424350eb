// Sizes written as one with their word: "pk100", "10st" for ten stems.

import type { Token } from '../text/token.ts';

// "pk100"
export const packCode = ({ means, text }: Token, next: Token | undefined): boolean =>
  means['pack'] !== undefined && /^(pk|pkt|pack|box|bx|bag)$/.test(text) && next?.number?.form === 'code' && /^\d{1,4}$/.test(next.text);
export const stemsShort = ({ number, text }: Token): boolean =>
  number?.form === 'ordinal' && /\dst$|\d st$/.test(text) && (!/1$/.test(number.amount) || /11$/.test(number.amount));
