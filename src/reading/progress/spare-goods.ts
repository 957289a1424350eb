// "2 spare roses in the fridge", "5 extra stems of gyp": flowers that are left over, and no pieces made.

import type { Token } from '../text/token.ts';
import { portionWords } from '../words/trade-words.ts';

const isGoods = (token: Token | undefined): boolean =>
  token !== undefined &&
  token.means['piece'] === undefined &&
  (token.means['ingredient'] !== undefined || token.means['pack'] !== undefined || portionWords.has(token.text));

/** Whether goods are named right behind the word for spares, which ends at `end`. */
export const countsSpareGoods = (tokens: readonly Token[], end: number): boolean => {
  if (tokens[end - 1]?.means['piece'] !== undefined) return false;
  const describes =
    tokens[end]?.kind === 'word' &&
    tokens[end]?.means['piece'] === undefined &&
    !/^(of|and|in|with|plus|from|to|for|but)$/.test(tokens[end]?.text ?? '');
  return isGoods(tokens[end]) || (describes && isGoods(tokens[end + 1]));
};
