// A recipe kept, used again or changed: "save that recipe as autumn dance", "no statice", "swap the statice for limonium", "recipe times 1.5".
// Tried before questions, because "recipe" alone asks for it.

import type { Finding, Phrase, Reader } from '../phrase.ts';
import { namedRecipe } from '../recipes/named-recipes.ts';
import { recipeChange } from '../recipes/recipe-changes.ts';

// "do you know is 20 roses enough" asks, mark or none.
const asks = /^(enough|know)$/;

const find = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, 40)
    .filter((part) => !part.asked && !reader.tokens.slice(part.start, part.end).some((token) => asks.test(token.text)))
    .flatMap((part) => (part.end - part.start > 30 ? [] : (namedRecipe(reader, part) ?? recipeChange(reader, part) ?? [])));

export const recipeChanged: Phrase = {
  name: 'recipe change',
  examples: [
    'no statice',
    'swap the statice for limonium',
    'add a fern',
    'recipe times 1.5',
    'save that recipe as autumn dance',
    'same recipe as the autumn dance',
    'corsages the same recipe as the buttonholes',
  ],
  find,
};
