// Whether a message nobody could read tells something of the order after all: a number typed in digits beside a word of the trade, of a
// wearer or of a change. "See you at 4" does not; "2 of them for kids at 10" does.

import { openMessage } from './text/message.ts';
import type { Token } from './text/token.ts';
import { isOfTrade } from './unread.ts';
import { wordList } from './words/word-list.ts';

const ofOrders = new Set(
  wordList(`
  each, ea, apiece, charge, charged, charging, price, prices, priced, cost, costs, quote, quoted, total, discount, delivery, deposit, add,
  adding, added, swap, swapped, made, broke, broken, spare, spares, order, ordered, instead
`),
);
const ofTheBench = /^(girls?|boys?|guys|lads?|ladies)$/; // "2 of the girls are off sick": hands, as often as wearers
const putsRight = /^\W*(no|nope|sorry|soz|oops|whoops|wait|actually|oh|only|make)\b/i;
const mostWords = 5; // of a message that only puts a number right

const isFigure = ({ number }: Token): boolean =>
  number !== undefined && number.worded !== true && (number.form === 'plain' || number.form === 'money' || number.form === 'percent');

const isOfOrder = (token: Token): boolean =>
  token.number?.form === 'percent' ||
  isOfTrade(token) ||
  ofOrders.has(token.text) ||
  (token.means['role'] !== undefined && !ofTheBench.test(token.text));

export const tellsOfOrder = (text: string): boolean => {
  const { tokens } = openMessage(text);
  if (!tokens.some(isFigure)) return false;
  return tokens.some(isOfOrder) || (putsRight.test(text) && tokens.filter(({ kind }) => kind !== 'sign').length <= mostWords);
};
