// What answers each question. Nothing here stores anything: a what-if is worked out on a copy.

import type { Asked } from '../../../reading/fact.ts';
import { helpBlocks } from '../help.ts';
import { benchQuestions } from './bench.ts';
import { buyingQuestions } from './buying.ts';
import { eventQuestions } from './event.ts';
import { handOverQuestions } from './hand-over.ts';
import { moneyQuestions } from './money.ts';
import type { Respond } from './respond.ts';

const responses: { readonly [asks in Asked]: Respond } = {
  ...moneyQuestions,
  ...benchQuestions,
  ...buyingQuestions,
  ...eventQuestions,
  ...handOverQuestions,
  help: () => helpBlocks,
  // Answered before anything is composed, and not from what an event comes to.
  forget: () => [],
  export: () => [],
};

export const questionBlocks: Respond = (question, answer) => responses[question.asks](question, answer);
