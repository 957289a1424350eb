// "£50 deposit paid", "10% off for cash", "delivery 25": none of them is kept, and the answer says so. What a discount comes to is worked out.

import { decimal } from '../../../values/decimal.ts';
import { fixedMoney, isWholeCoins } from '../../../values/money.ts';
import type { Answer } from '../../answer.ts';
import { moneySpan, text } from '../../span.ts';
import { answerLine, type Question, type Respond } from './respond.ts';

const ofPayment = /deposit|retainer|down ?payment|booking fee|instalment|part payment/i;
const ofDiscount = /%|per ?cent|discount|disc\b/i;
const ofDelivery =
  /deliver|delivry|post(age)?\b|shipping|freight|courier|set ?up|setting up|install|pinning|travel|transport|packaging|boxes|p ?& ?p/i;
const percentSaid = /(\d{1,2}(?:[.,]\d+)?) ?(?:%|per ?cent)/i;

const discount = ({ words }: Question, { price, manner, studio }: Answer): ReturnType<Respond> => {
  const percent = percentSaid.exec(words)?.[1]?.replace(',', '.');
  if (!price?.ok || price.value.unpriced.length > 0 || percent === undefined || decimal(percent).isZero())
    return answerLine(
      text`I take off no discounts: the figures stand as they were. Say the price it comes to, “13.50 each” or “450 in all”.`,
    );
  const now = price.value.priced.all.printed.price;
  const less = now.times(decimal(100).minus(percent)).dividedBy(100);
  const { currency } = studio.settings;
  const rounded = isWholeCoins(less, currency) ? '' : ' (rounded)';
  return answerLine(
    text`I take off no discounts: the figures stand as they were. ${percent} % off ${moneySpan(manner.money(now))} would be ${moneySpan(manner.money(less))}${rounded}: say “${fixedMoney(less, currency)} in all”, and it is the price.`,
  );
};

export const notKept: Respond = (question, answer) => {
  const { words } = question;
  if (ofPayment.test(words)) return answerLine(text`I keep no deposits or payments: the figures stand as they were.`);
  if (ofDiscount.test(words)) return discount(question, answer);
  return ofDelivery.test(words)
    ? answerLine(
        text`I keep no charge for delivery and the like: the figures stand as they were, without it. Put it on the bill beside them.`,
      )
    : answerLine(text`I keep no deposits or payments: the figures stand as they were.`);
};
