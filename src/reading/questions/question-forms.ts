// The questions the studio asks, in the order they are tried: the first form found decides, so more telling forms stand first.

import type { Asked } from '../fact.ts';
import { type Pattern, pattern } from '../pattern.ts';
import { askedAgain } from './asked-again.ts';
import { benchQuestions } from './bench.ts';
import { budgetQuestions } from './budgets.ts';
import { dueAndDone, latestStarts } from './due-and-done.ts';
import { eventQuestions } from './event.ts';
import { goodsAndDays } from './goods-and-days.ts';
import { goodsInHand } from './goods-in-hand.ts';
import { handQuestions } from './hands.ts';
import { moneyQuestions } from './money-inside.ts';
import { ofCare } from './of-care.ts';
import { ofFlowers } from './of-flowers.ts';
import { plainQuestions } from './plain-questions.ts';
import { priceAndTotal } from './price-and-total.ts';
import { sheetQuestions } from './sheets.ts';
import { pricingQuestions } from './showing-and-pricing.ts';
import { goodsQuestions } from './time-and-goods.ts';
import { toldApart } from './told-apart.ts';
import { whereTo } from './where-to.ts';
import { whoseAndWhether } from './whose-and-whether.ts';

export interface QuestionForm {
  readonly asks: Asked;
  readonly pattern: Pattern;
  /** Words that make it another question. */
  readonly unless?: RegExp;
  /** Never gives way to what other words tell of. */
  readonly decides?: true;
}

const forms = [
  ...latestStarts,
  ...handQuestions,
  ...whereTo,
  ...whoseAndWhether,
  ...dueAndDone,
  ...goodsInHand,
  ...toldApart,
  ...budgetQuestions,
  ...goodsAndDays,
  ...priceAndTotal,
  ...plainQuestions,
  ...askedAgain,
  ...pricingQuestions,
  ...goodsQuestions,
  ...sheetQuestions,
  ...moneyQuestions,
  ...benchQuestions,
  ...ofCare,
  ...eventQuestions,
  ...ofFlowers,
];

const telling = new Set([...handQuestions, ...whoseAndWhether, ...dueAndDone, ...goodsInHand, ...toldApart]);
export const questionForms: readonly QuestionForm[] = forms.flatMap((form) => {
  const [asks, sources, unless] = form;
  const decides = telling.has(form) ? { decides: true as const } : {};
  return sources.map((source) => ({ asks, pattern: pattern(source), ...(unless === undefined ? {} : { unless }), ...decides }));
});
