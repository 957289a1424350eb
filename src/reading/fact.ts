// What one message can state, ask or correct. The shapes are schemas because facts are stored for years and read back.
// Money and rates are decimal text ("8.25"); counts, stems and lengths of what goes in are plain numbers as typed; days are YYYY-MM-DD.

import { z } from 'zod';
import { pack, packed, quoted, recipe } from './facts/goods-facts.ts';
import { calendar, care, unread } from './facts/kept-facts.ts';
import { change, date, materialFact, pieces, price, rule, tax, title, undo } from './facts/order-facts.ts';
import { type asked, question } from './facts/question-fact.ts';
import { wearers } from './facts/wearer-facts.ts';
import { actual, broke, crew, drying, left, made, step } from './facts/work-facts.ts';

export type { RecipeLineFact } from './facts/goods-facts.ts';

export const factSchema = z.discriminatedUnion('fact', [
  pieces,
  price,
  tax,
  materialFact,
  date,
  made,
  broke,
  left,
  change,
  undo,
  question,
  recipe,
  pack,
  packed,
  quoted,
  crew,
  wearers,
  title,
  rule,
  actual,
  step,
  drying,
  care,
  calendar,
  unread,
]);
export type Fact = z.infer<typeof factSchema>;
export type FactName = Fact['fact'];
export type FactOf<N extends FactName> = Extract<Fact, { fact: N }>;
export type Asked = (typeof asked)[number];
