// The day a price is wanted by: "a price for 14 bouts by tomorrow", "quote 30 bouts for 14 march by fri". The event may be on another day.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { DateRead } from './date-read.ts';

const price = '(price|prices|pricing|quote|quotes|cost|costs|costing|costings|estimate|figure|figures|ballpark|priced|quoted|costed)';
const wanted = pattern(`${price} (needed|required|wanted|please|pls|back|over|to (me|us|them|her))? ((for|on) (<any>){1,5})? (by|before)`);
// "quote 30 bouts for 14 march by": the verb, or the word with anything counted behind it.
const ofCounted = pattern(`${price} (up|out|me|us|them|her|him|for|on|the|these|this|a|please|pls){0,3} <count> (<any>){1,9} (by|before)`);
const close = pattern('(by|before) (the|end|of|close|eod|cob|day|play|business|lunch|lunchtime|on|,){0,5}');
// "price 20 bouts they need by friday", "quote 20 bouts ready by friday": the day of the pieces.
const ofPieces =
  /^(need|needs|needed|want|wants|wanted|ready|due|required|done|finished|made|them|these|those|it|everything|delivered|collected)$/;
const reach = 14;

const byBefore = ({ tokens }: Reader, read: DateRead): number | undefined => {
  for (let by = read.start - 1; by >= 0 && by >= read.start - 5; by--)
    if (/^(by|before)$/.test(tokens[by]?.text ?? '')) return close.at(tokens, by, read.start)?.end === read.start ? by : undefined;
  return undefined;
};

/** Whether a price is wanted by that day: "quote 20 bouts by 14 march" does not say when they are worn. */
export const isPricedBy = (reader: Reader, read: DateRead): boolean => {
  const by = byBefore(reader, read);
  if (by === undefined) return false;
  const { tokens } = reader;
  const said = (form: typeof wanted): boolean => form.in(tokens, Math.max(0, by - reach), by + 1)?.end === by + 1;
  return said(wanted) || (!ofPieces.test(tokens[by - 1]?.text ?? '') && said(ofCounted));
};
