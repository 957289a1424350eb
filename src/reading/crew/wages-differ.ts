// Two wages in one sentence: "Tess 24/hr and Bo 22/hr", "senior rate 29, junior rate 21". Only one of them would be read.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { paidByRate } from './crew-forms.ts';

const paid = pattern('<w:amount> (per|an|a|/|p|ph|p/h|phr) (/)? (hour|hr|h|hrs)?');
const rate = pattern(`(${paidByRate}) (rate|rates)`);
export const wagesDiffer = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const rated = rate.in(tokens, start, end);
  if (rated !== undefined && rate.in(tokens, rated.end, end) !== undefined) return true;
  const first = paid.in(tokens, start, end);
  const second = first === undefined ? undefined : paid.in(tokens, first.end, end);
  const hourly = [first, second].every(
    (match) => match !== undefined && /^(hour|hr|h|hrs|ph|p\/h|phr)$/.test(tokens[match.end - 1]?.text ?? ''),
  );
  return hourly && first?.kept['w']?.number?.amount !== second?.kept['w']?.number?.amount;
};
