// The event in a few lines: what is ordered and when, the money, what is made, and when to start. The answer to "summary", and the one message of a
// thread that is kept up to date.

import { madeOf, ordered } from '../../thread/apply-progress.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line, Reply } from '../reply.ts';
import { countSpan, dateSpan, joined, moneySpan, ownWords, strong, text } from '../span.ts';
import { fullDate } from '../words/dates.ts';
import { counted } from '../words/names.ts';
import { notPricedYet, orderWords } from '../words/order.ts';
import { startLine } from './calendar.ts';

export type Summarised = Pick<Answer, 'event' | 'manner' | 'price' | 'plan'>;

export const summaryBlocks = (answer: Summarised): readonly Block[] => {
  const { event, manner, price } = answer;
  if (event.lines.length === 0 && !event.date && !event.price)
    return [{ block: 'answer', line: text`There is nothing in this thread yet.` }];
  const when = event.date ? text`, ${dateSpan(fullDate(event.date, manner))}` : [];
  const title = event.title ? text`${strong(ownWords(event.title).text)}: ` : [];
  const order = event.lines.length > 0 ? orderWords(event.lines, manner) : text`no pieces yet`;
  const plan = answer.plan();
  const missing = price?.ok ? notPricedYet(price.value.unpriced, manner) : '';
  const items = [
    ...(price?.ok === true
      ? [
          text`Price${missing === '' ? '' : ' so far'} ${moneySpan(manner.money(price.value.priced.all.printed.price))}; to spend ${strong(manner.money(price.value.priced.all.printed.wholesale))}${missing === '' ? '' : `; ${missing}`}.`,
        ]
      : []),
    ...(event.lines.length > 0 ? [madeLine(answer)] : []),
    ...(plan ? [startLine(plan, manner)] : []),
  ];
  return [
    { block: 'answer', line: text`${title}${order}${event.material ? `, ${event.material}` : ''}${when}.` },
    ...(items.length > 0 ? [{ block: 'list' as const, items }] : []),
  ];
};

const madeLine = ({ event, manner }: Summarised): Line => {
  const kinds = [...new Set(event.lines.map((line) => line.piece))];
  const parts = kinds.map(
    (piece) => text`${countSpan(`${madeOf(event, piece)} of ${counted(ordered(event, piece), piece, manner.says)}`)}`,
  );
  return text`Made: ${joined(parts, ', ')}.`;
};

/** The message that is kept up to date. */
export const summaryReply = (answer: Summarised): Reply => ({
  blocks: [
    ...summaryBlocks(answer),
    ...(answer.event.cancelled ? [{ block: 'problem' as const, line: text`This event is cancelled.` }] : []),
    { block: 'assumed', line: text`The summary of this event: I keep this message up to date.` },
  ],
});
