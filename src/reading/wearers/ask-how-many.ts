// "groom, 4-5 ushers": how many ushers is asked; the list is kept with the number that is chosen.

import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { nameOf } from './role-counts.ts';
import type { Entry } from './wearers-read.ts';

export const askHowMany = (
  reader: Reader,
  { start, end }: Part,
  entries: readonly Entry[],
  facts: (entries: readonly Entry[]) => readonly Unworded[],
): Finding => {
  const choice = (of: (entry: Entry) => number): Choice[] => {
    const chosen = entries.map((entry) => ({ ...entry, count: of(entry), wearer: nameOf(entry.wearer, of(entry)) }));
    const unsure = chosen.find((entry) => entry.most !== undefined);
    return unsure === undefined
      ? []
      : [{ words: `${unsure.count} ${unsure.wearer}`, facts: found(reader, start, end, facts(chosen)).facts ?? [] }];
  };
  const choices = [...choice((entry) => entry.count), ...choice((entry) => entry.most ?? entry.count)];
  return { start, end, asks: [{ about: 'count', why: 'which number', words: reader.words(start, end), choices }] };
};
