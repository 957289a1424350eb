// "lower the hourly rate by 2", "drop the rate by 2 an hour": what hands are paid, and no price.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const forms = [
  '(hourly rate|pay rate|casual rate|wage|wages|hourly) (up|down)? by <amount>',
  '(rate|rates|pay) (up|down)? by <amount> (an|per|a|p|/|ph|hourly) (hour|hr|h)?',
].map((source) => pattern(source));

export const isOfWage = ({ tokens }: Reader, { start, end }: Part): boolean => anyIn(forms, tokens, start, end);
