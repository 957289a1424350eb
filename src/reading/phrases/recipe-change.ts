// A recipe kept, used again or changed: "save that recipe as autumn dance", "no statice", "swap the statice for limonium", "recipe times 1.5".
// Tried before questions, because "recipe" alone asks for it.

import { pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { leaningChange } from '../recipes/leaning-changes.ts';
import { likeBut } from '../recipes/like-but.ts';
import { namedRecipe } from '../recipes/named-recipes.ts';
import { recipeChange } from '../recipes/recipe-changes.ts';

// "do you know is 20 roses enough" asks, mark or none.
const asks = pattern('(enough|know)');

// "do we need more than 3 spools" asks too; "can we swap the fern" does not.
const asked = pattern(
  '(so|and|ok|hey|hi|,)? ((do|does|did|is|are|was|were|should|shall|have|has|how|what|which|when|why) (we|i|you|u|they|she|he|it|there|many|much|if|about|happens)|(what|suppose|supposing|say|if|imagine) (if|we|i|they|she|he|the)|(can|could|would|will) (we|i|you|they|she|he|it) (use|get away with|afford|manage|do with|make do|get by|ever|still|just)|would <any> <any>)',
);

const find = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, 40)
    .filter(
      (part) =>
        !part.asked &&
        asked.at(reader.tokens, part.start, part.end) === undefined &&
        asks.in(reader.tokens, part.start, part.end) === undefined,
    )
    .flatMap((part) =>
      part.end - part.start > 30
        ? []
        : (likeBut(reader, part) ?? namedRecipe(reader, part) ?? recipeChange(reader, part) ?? leaningChange(reader, part) ?? []),
    );

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
