// Ingredients that can't be costed yet, each with its reason and the nearest names on the list. The recipe is kept all the while.

import type { MissingPrice } from '../../buying/priced-lines.ts';
import { capital } from '../../values/capital.ts';
import type { Block } from '../reply.ts';
import { joined, ownWords, text } from '../span.ts';

const whyMissing: { readonly [why in MissingPrice['why']]: string } = {
  'no price': 'not on the price list',
  'which stem': 'of which flower?',
  'no pack size': 'how many are in a pack?',
  'sold by length': 'sold by length, so say how long each is cut',
  'sold by count': 'sold by the stem or piece, so say how many',
  'sold by weight': 'sold by weight, so say how many stems a pack makes',
  'unit unclear': 'I do not know that unit',
  'longer than a pack': 'one cut is longer than a whole pack',
};

export const missingBlocks = (missing: readonly MissingPrice[]): readonly Block[] => {
  if (missing.length === 0) return [];
  const once = [...new Map(missing.map((lack) => [`${lack.ingredient} ${lack.why}`, lack])).values()];
  const items = once.map(({ ingredient, why, nearest }) => {
    const names = joined(
      nearest.map((name) => [ownWords(name)]),
      ', ',
    );
    return text`${capital(ownWords(ingredient).text)}: ${whyMissing[why]}${nearest.length > 0 ? text` (did you mean ${names}?)` : []}`;
  });
  const unpriced = missing.find(({ why }) => why === 'no price' || why === 'no pack size');
  const how = unpriced ? text` Say the price, like “${unpriced.ingredient} 4.80 a bunch of 10”.` : [];
  return [{ block: 'list', title: text`Not costed yet; the recipe is kept.${how}`, items }];
};
