// What one costs stays as it is: "price per buttonhole stays at £11, she did ask, I said no". It states the price of that kind and changes nothing.

import { currencyFields } from '../order/read-order.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { pieceIn } from '../progress/made-facts.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { onlyTalk } from './talk-behind.ts';

const lead = '(ok|so|and|but|also|sorry|,|the|our|her|my){0,3}';
const price = '(price|rate|cost|charge)';
const stays = '(stays|stay|staying|remains|remain|is staying|to stay|is still|still|holds|keeps) (at|as|to be)?';
const forms = [
  `${lead} ${price} (per|of|for|on|of a|per each) (a|an|each|the|one|our){0,2} <p:piece> ${stays} <n:amount> (<each>)?`,
  `${lead} <p:piece> ${price} ${stays} <n:amount> (<each>)?`,
].map((source) => pattern(source));

export const priceKept = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : firstAt(forms, reader.tokens, start, end);
  const number = match?.kept['n']?.number;
  if (match === undefined || !isSingle(number) || !onlyTalk(reader.tokens, match.end, end)) return undefined;
  return found(reader, start, end, [{ fact: 'price', amount: number.amount, ...currencyFields(number), per: 'each', ...pieceIn(match) }]);
};
