// "Try 20 to 30": what each price on the way leaves, worked out on a copy of the event.

import { orderOf } from '../../../pricing/order-of-event.ts';
import { type LadderRow, priceLadder } from '../../../pricing/price-ladder.ts';
import { termsOf } from '../../../pricing/terms.ts';
import type { EventState } from '../../../thread/event.ts';
import { decimal } from '../../../values/decimal.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { moneySpan, plainLine, strong, text } from '../../span.ts';
import { counted, plural } from '../../words/names.ts';
import { basisWords } from '../../words/order.ts';
import { type Respond, storedNothing } from './respond.ts';
import { asAsked, problemBlocks, taxBlocks } from './what-if-price.ts';

// Behind an order that was just noted with two prices, only the price is open.
const noPriceYet: Block = { block: 'assumed', line: plainLine('Only worked out: no price is kept yet.') };

export const ladderBlocks: Respond = (question, answer) => {
  const { studio, today, manner } = answer;
  const event = asAsked(question, answer.event);
  const terms = termsOf(studio.settings, event, today);
  if (!terms.ok) return problemBlocks(terms.problem, answer);
  const wanted = {
    from: decimal(question.amount ?? String(question.number ?? 0)),
    to: decimal(question.amountMax ?? String(question.numberMax ?? 0)),
    ...(question.step ? { step: decimal(question.step) } : {}),
    ...(question.piece ? { piece: question.piece } : {}),
  };
  const rows = priceLadder(orderOf(event), terms.value, wanted);
  if (!rows.ok) return problemBlocks(rows.problem, answer);
  const timed = rows.value.some((row) => row.minutesPaid !== undefined);
  const pieces = event.lines.reduce((count, line) => count + line.count, 0);
  const moved = question.piece ?? event.lines[0]?.piece ?? 'unspecified';
  const several = event.lines.length > 1;
  return [
    { block: 'answer', line: text`${ladderName(event, manner.says)}, ${basisWords(terms.value.tax)}: what each price leaves.` },
    ...(several
      ? [{ block: 'line' as const, line: text`Only the ${plural(moved, manner.says)} change price; the rest stay as they are.` }]
      : []),
    {
      block: 'table',
      caption: 'What each price leaves',
      columns: [
        { title: 'each', align: 'right' },
        { title: 'stems', align: 'right' },
        ...(timed ? [{ title: 'min paid', align: 'right' as const }] : []),
        { title: `to spend, ${pieces}`, align: 'right' },
        ...(several ? [{ title: 'client pays', align: 'right' as const }] : []),
      ],
      rows: rows.value.map((row) => [...ladderRow(row, timed, answer), ...(several ? [totalOf(row, answer)] : [])]),
    },
    ...taxBlocks(terms.value.tax, event),
    answer.event.price === undefined && answer.event.lines.every((line) => line.price === undefined) ? noPriceYet : storedNothing,
  ];
};

const totalOf = ({ priced }: LadderRow, { manner }: Answer): Line => (priced ? [moneySpan(manner.money(priced.all.printed.price))] : []);

const ladderName = (event: EventState, says: Answer['manner']['says']): Line =>
  text`${event.lines.map((line) => counted(line.count, line.piece, says)).join(', ')}`;

const ladderRow = (row: LadderRow, timed: boolean, { manner }: Answer): readonly Line[] => {
  const price = [moneySpan(manner.money(row.price))];
  if (!row.priced || !row.line) return [price, plainLine('none'), ...(timed ? [plainLine('')] : []), plainLine('')];
  const each =
    row.minutesPaid === undefined
      ? ''
      : String(Math.floor(row.minutesPaid / row.priced.lines.reduce((count, line) => count + line.count, 0)));
  return [
    price,
    [strong(manner.money(row.line.each.printed.stems))],
    ...(timed ? [plainLine(each)] : []),
    [moneySpan(manner.money(row.priced.all.printed.wholesale))],
  ];
};
