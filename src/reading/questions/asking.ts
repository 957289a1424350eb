// A question as a finding: what is asked, and the numbers that go with it.

import type { Asked } from '../fact.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';

export const defined = (fields: object): object => Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

// The question, or the words held where its numbers leave open what is asked.
export const asking = (reader: Reader, { start, end }: Stretch, asks: Asked, fields: object | undefined): Finding =>
  fields === undefined
    ? { start, end, held: true }
    : found(reader, start, end, [{ fact: 'question', asks, ...defined(fields) } as Unworded]);
