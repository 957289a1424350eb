// Sentences that tell of the work and of nothing else: read before corrections and orders, because every word of them is understood.

import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { inOrder } from '../progress/in-order.ts';
import { withoutRest } from '../progress/part-done.ts';
import { summed } from '../progress/sums.ts';
import { workTold } from '../progress/work-clauses.ts';

const find = (reader: Reader): Finding[] => {
  const findings = workTold(reader).map(({ start, end, facts }) => found(reader, start, end, facts));
  return findings.length === 0 ? [] : inOrder(summed(reader, withoutRest(findings)));
};

export const toldOfWork: Phrase = {
  name: 'progress',
  examples: ['made 12', '12 of the 40 done', 'corsages all done', '2 broke', '5 to go'],
  find,
};
