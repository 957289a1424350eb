// "the groom himself", "himself the groom": one man, said twice. Alone, "himself" is the groom.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { suits } from './share-pieces.ts';
import type { Entry } from './wearers-read.ts';

const before = pattern('(himself|herself) (,|the|our){0,2} <r:role>');

/** Where the word ends that says again who the one beside it is. */
export const saidAgain = ({ tokens }: Reader, index: number, end: number, entries: readonly Entry[]): number | undefined => {
  const token = tokens[index];
  if (token === undefined || !/^(himself|herself)$/.test(token.text)) return undefined;
  // "himself, the groom"; in "himself the best man" they may be two.
  const next = before.at(tokens, index, end);
  if (next !== undefined && next.kept['r']?.means['role'] === token.means['role']) return next.end - 1;
  // "groom is paying himself, 4 ushers"
  if (entries.some(({ wearer }) => wearer === token.means['role'])) return index + 1;
  const last = entries.at(-1);
  if (last === undefined || last.count !== 1 || tokens[index - 1]?.means['role'] === undefined) return undefined;
  return suits(last.wearer, 'buttonhole') === (token.text === 'himself') ? index + 1 : undefined;
};
