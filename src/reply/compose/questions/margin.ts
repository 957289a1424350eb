// What is left of the price after what was bought: by the money told as spent, or by the plan, and it says by which.

import type { PricedEvent } from '../../../pricing/price-event.ts';
import { spendingOf } from '../../../review/spending.ts';
import type { Decimal } from '../../../values/decimal.ts';
import { printNumber } from '../../../values/money.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { moneySpan, strong, text } from '../../span.ts';
import { spentOnOf } from '../spent-on.ts';
import { answerLine } from './respond.ts';

const shareOf = (left: Decimal, exTax: Decimal): string => `${printNumber(left.times(100).dividedBy(exTax), 1)} %`;

export const marginBlocks = ({ priced, unpriced, onePiece }: PricedEvent, answer: Answer): readonly Block[] => {
  const { event, manner } = answer;
  const money = (amount: Decimal) => moneySpan(manner.money(amount));
  const { exTax, wholesale, sundries } = priced.all.exact;
  const planned = exTax.minus(wholesale);
  // What was spent went on all of the pieces: only where all of them have a price can it be taken off.
  const spending = unpriced.length > 0 || onePiece ? undefined : spendingOf(event.actuals, sundries, spentOnOf(event));
  const byPlan: Line = text`${strong(shareOf(planned, exTax))} of the price before tax is left after stems and sundries as planned (${money(planned)}), labour not yet paid.`;
  if (spending === undefined) {
    const told = event.actuals.some(({ what }) => what === 'spent');
    return [
      ...answerLine(byPlan),
      ...(told ? [{ block: 'line' as const, line: text`What you told me you spent is not taken off in that.` }] : []),
    ];
  }
  const left = exTax.minus(spending.stems).minus(spending.sundries);
  const spent =
    spending.sundriesFrom === 'planned'
      ? text`the ${money(spending.stems)} you spent and ${money(spending.sundries)} for sundries as planned`
      : text`the ${money(spending.stems.plus(spending.sundries))} you spent`;
  const now: Line = left.isNegative()
    ? text`${strong(`${manner.money(left.negated())} lost`)} after ${spent}, labour not yet paid.`
    : text`${strong(shareOf(left, exTax))} of the price before tax is left after ${spent} (${money(left)}), labour not yet paid.`;
  return [...answerLine(now), { block: 'line', line: text`Planned: ${shareOf(planned, exTax)} (${money(planned)}).` }];
};
