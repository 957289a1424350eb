// "try 13", "try the corsages at 30": one price, not two to go between. "try 18 bouts" is a number of them, "try 2 roses" how many go in.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { details } from './question-details.ts';
import { shaped } from './shape.ts';

type Fields = Readonly<Record<string, unknown>>;

const counted = pattern('<count> (<material>)? (<piece>|of them|pieces)');
const bounded = ['amountMax', 'numberMax', 'step'];

/** What is tried where only one number is said; undefined where there are two ends. */
export const oneTried = (
  reader: Reader,
  start: number,
  end: number,
  told: Fields,
  fields: ReturnType<typeof details>,
): Fields | undefined => {
  if (bounded.some((name) => told[name] !== undefined) || fields.date !== undefined) return undefined;
  if (fields.item !== undefined || counted.in(reader.tokens, start, end) !== undefined) return shaped(reader, start, end, 'whatIf', fields);
  const amount = fields.amount ?? (fields.number === undefined ? undefined : String(fields.number));
  return amount === undefined ? undefined : { ...fields, number: undefined, amount };
};
