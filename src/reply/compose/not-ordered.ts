// Pieces the wearers need and nobody has ordered: a total says that they are not in it.

import { wearersList } from '../../handover/wearers.ts';
import type { Answer } from '../answer.ts';
import type { Line } from '../reply.ts';
import { moneySpan, strong, text } from '../span.ts';
import { counted, listed } from '../words/names.ts';

/** "Not in it: 2 wrist corsages of the wearers' list, not ordered yet." Empty where all of them are ordered. */
export const notOrderedLines = ({ event, manner }: Answer): readonly Line[] => {
  const short = wearersList(event).differences.filter(({ over }) => over < 0);
  if (short.length === 0 || event.lines.length === 0) return [];
  const names = short.map(({ piece, over }) => counted(-over, piece, manner.says));
  const prices = short.flatMap(({ piece, over }) => {
    const told = event.told?.[piece];
    return told === undefined || told.amountMax !== undefined ? [] : [{ name: counted(-over, piece, manner.says), amount: told.amount }];
  });
  const [price, another] = prices;
  const each =
    price === undefined || another !== undefined || short.length > 1 ? [] : text` (${moneySpan(manner.money(price.amount))} each)`;
  return [
    text`Not in it: ${strong(listed(names))} of the wearers’ list${each}, not ordered yet. Say “add ${names[0] ?? ''}” to order them.`,
  ];
};
