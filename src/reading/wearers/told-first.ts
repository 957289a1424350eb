// How many they are, told before who they are: "9 men wearing: groom, best man, 4 ushers, 2 dads and the priest" are nine.

import type { Reader } from '../phrase.ts';
import { suits } from './share-pieces.ts';
import type { Entry } from './wearers-read.ts';

const allKinds = /^(man|men|woman|women|child|children|boys?|girls?|family members?|guests?|attendants?|friends?)$/;

/** Whether the list begins with a word for all sorts: who they are may be told behind it. */
export const tellsWho = (entries: readonly Entry[]): boolean => allKinds.test(entries[0]?.wearer ?? '');

/** Takes the number told first out of the list, and gives it as the total. */
export const whoTheyAre = (reader: Reader, entries: Entry[]): number | undefined => {
  const [first, second] = entries;
  if (first === undefined || second === undefined || first.count < 2 || !tellsWho(entries)) return undefined;
  const between = reader.tokens.slice(first.at, second.at);
  const mark = between.findLastIndex(({ text }) => text === ':' || text === '(');
  // "lads (4) + groom", "boys: 4, groom": the mark opens their own number.
  const opened = mark >= 0 && !between.slice(mark).some(({ text, number }) => text === ')' || number?.form === 'plain');
  const rest = entries.slice(1);
  const sum = rest.reduce((all, { count }) => all + count, 0);
  // "6 men, groom, 5 ushers": without a mark only when the numbers agree, and all of them are men.
  const agrees = first.count >= 4 && sum === first.count && rest.every(({ wearer }) => suits(wearer, 'buttonhole'));
  if (!opened && !(agrees && /^men$/.test(first.wearer))) return undefined;
  entries.shift();
  if (first.piece !== undefined) for (const each of rest) each.piece ??= first.piece;
  return first.count;
};
