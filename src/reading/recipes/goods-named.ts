// The known flower, foliage or sundry that fills a stretch of words: "the dried bunny tails" is bunny tail, "the van" nothing.

import { itemName, knowsItem } from '../goods/item-name.ts';
import type { Reader } from '../phrase.ts';
import { isNameless } from '../text/token.ts';

const filler = /^(the|a|an|any|all|some|of|our|those|bit|bits|sprig|sprigs|stem|stems|sprays?)$/;

// "ruscus on hers": whose it is belongs to no name.
const elsewhere =
  /^(on|in|near|under|around|behind|beside|from|for|whatsoever|whatever|anywhere|hers|theirs|mine|yours|anything|anyone|anybody)$/;

// "no euc, use ruscus instead" leaves out one and not both
const verb = /^(use|using|do|doing|have|put|swap|go|make|add|try|get|order|instead|want|sub|replace)$/;

/** The one item these words name and nothing besides; undefined when they say more. */
export const goodsNamed = (reader: Reader, start: number, end: number): string | undefined => {
  const tokens = reader.tokens.slice(start, end);
  if (tokens.length === 0 || tokens.length > 6 || !knowsItem(tokens, reader.context.items)) return undefined;
  const plain = tokens.every(
    (token, at) =>
      !(at > 0 && elsewhere.test(token.text)) &&
      token.kind === 'word' &&
      token.number === undefined &&
      !verb.test(token.text) &&
      (token.means['ingredient'] !== undefined || token.means['material'] !== undefined || filler.test(token.text) || isNameless(token)),
  );
  return plain ? itemName(tokens, true) : undefined;
};

/** "statice and the gyp": each named, or undefined when one is not. */
export const allGoodsNamed = (reader: Reader, start: number, end: number): string[] | undefined => {
  const names: string[] = [];
  let from = start;
  for (let index = start; index <= end; index++) {
    if (index < end && !/^(and|or|,|&|\+)$/.test(reader.tokens[index]?.text ?? '')) continue;
    if (index > from) {
      const name = goodsNamed(reader, from, index);
      if (name === undefined) return undefined;
      names.push(name);
    }
    from = index + 1;
  }
  return names.length === 0 ? undefined : names;
};
