// What the client may see: pieces, price and the tax statement, ready to paste. No costs, no labour, no sums of the studio's own.

import type { ClientFigures } from '../../pricing/client-figures.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { countSpan, dateSpan, moneySpan, ownWords, strong, text } from '../span.ts';
import { fullDate } from '../words/dates.ts';
import { counted } from '../words/names.ts';

export const clientBlocks = (figures: ClientFigures, { event, manner }: Answer): readonly Block[] => {
  const money = (amount: ClientFigures['total']) => moneySpan(manner.money(amount));
  const lines = figures.lines.map((line): Line => {
    const name = text`${countSpan(counted(line.count, line.piece, manner.says))}${line.wearer ? text` (${ownWords(line.wearer)})` : []}`;
    return line.each && line.count > 1 ? text`${name} at ${money(line.each)}: ${money(line.all)}` : text`${name}: ${money(line.all)}`;
  });
  const taxes = figures.taxes.map((tax): Line => text`${tax.name}: ${money(tax.amount)}`);
  const total = text`Total ${strong(manner.money(figures.total))}${totalNote(figures, manner.money)}.`;
  return [
    { block: 'answer', line: event.date ? text`For ${dateSpan(fullDate(event.date, manner))}:` : text`Your flowers:` },
    { block: 'list', items: figures.basis === 'on top' ? [...lines, ...taxes] : lines },
    { block: 'line', line: total },
    ...(figures.cashTotal ? [{ block: 'line' as const, line: text`Paid in cash: ${money(figures.cashTotal)}.` }] : []),
  ];
};

const totalNote = (figures: ClientFigures, money: Answer['manner']['money']): string => {
  if (figures.basis === 'none') return '';
  if (figures.basis === 'on top') return ', tax included';
  return `, including ${figures.taxes.map((tax) => `${money(tax.amount)} ${tax.name}`).join(' and ')}`;
};
