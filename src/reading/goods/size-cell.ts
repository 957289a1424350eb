// A number that stands alone between the name and the price: "Ruscus, 10, 5.20", "Roses, white 50cm | 20 | £14.00".
// Only the head of the columns says that it is what a pack holds.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const cell = pattern('<ingredient> (,)? (<word>){0,3} (<length>)? (,|\\|) <n:plain> (,|\\|) <p:amount>');
const unheard = pattern('<ingredient> (,|-)? <unlisted> <n:plain> (,|-|@|<amount>)');
const headed = pattern(
  '(pack|packs|pack size|bunch|bunch size|per bunch|stems|stems per bunch|size|per pack|qty per pack) (,|\\|) (price|prices|cost|each|rate|£|\\$|€)',
);

export interface SizeCell {
  readonly index: number;
  readonly size?: number; // where the head says so
}

/** The number between a name and its price, in a cell of its own or behind a word that no list knows ("statice bu 12 8.60"). */
export const sizeCell = (tokens: readonly Token[], start: number, end: number): SizeCell | undefined => {
  const match = cell.in(tokens, start, end);
  if (match !== undefined) {
    const index = tokens.indexOf(match.kept['n'] as Token, match.start);
    const said = headed.in(tokens, 0, start) !== undefined && match.kept['n']?.number?.max === undefined;
    return said ? { index, size: Number(match.kept['n']?.number?.amount) } : { index };
  }
  const behind = unheard.in(tokens, start, end);
  return behind === undefined ? undefined : { index: behind.end - 2 };
};
