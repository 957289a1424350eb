// "One magnet each", "3 spray roses do 5 bouts" where a recipe of more is held: a sundry joins it; one flower may join it or be all of the new one, and is asked about.

import type { PieceKind } from '../handbook/pieces.ts';
import { soundsLikeSundry } from '../handbook/roles.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import { changes, kindMeant, recipeOf } from './apply-recipe.ts';
import { ingredientIn } from './change-recipe.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';

type Recipe = FactOf<'recipe'>;

/** The lines in force that such a fact would take the place of. */
const heldBy = (state: EventState, { piece, lines }: Recipe): ReturnType<typeof recipeOf> => {
  if (lines.some((line) => line.wearer !== undefined)) return [];
  const kinds = [...new Set(state.lines.map((line) => line.piece))];
  const [only, another] = kinds;
  const kind = piece === undefined ? (another === undefined ? only : undefined) : kindMeant(kinds, piece);
  return recipeOf(state, kind === undefined || kind === 'unspecified' ? 'any' : kind).filter((line) => line.wearer === undefined);
};

// "and pins" where two kinds have their recipes: in the corsages just told, or in all of them.
const opens = /^\W*(oh|ok|okay|so|um|sorry|right)?\W*(and|plus|also|&|\+)(?!\w)/i;
const whichPieces = (state: EventState, fact: Recipe): Settled | undefined => {
  const kinds = (Object.keys(state.recipes) as (PieceKind | 'any')[]).filter((kind) => (state.recipes[kind]?.length ?? 0) > 0);
  if (fact.piece !== undefined || fact.adds !== true || fact.drops !== undefined || kinds.length < 2 || !opens.test(fact.words))
    return undefined;
  if (kinds.includes('any') || fact.lines.some(({ wearer }) => wearer !== undefined)) return undefined;
  const own = kinds.map((kind): Fact => ({ ...fact, piece: kind as PieceKind }));
  const choices = [...own.map((each, at) => ({ words: kinds[at] ?? '', facts: [each] })), { words: 'all of them', facts: own }];
  return { kind: 'ask', ask: { about: 'piece', why: 'which piece', words: fact.words, choices } };
};

export const settleRecipe = (state: EventState, fact: Recipe): Settled => {
  const [line, another] = fact.lines;
  const isPlain = !changes(fact) && fact.name === undefined && fact.from === undefined && fact.like === undefined;
  const joined = whichPieces(state, fact);
  if (joined !== undefined) return joined;
  if (line === undefined || another !== undefined || !isPlain) return settled(fact);
  const held = heldBy(state, fact);
  const isSundry = soundsLikeSundry(line.ingredient);
  if (held.length === 0 || (held.length === 1 && !isSundry && !soundsLikeSundry(held[0]?.ingredient ?? ''))) return settled(fact);
  const beside: Fact = { ...fact, adds: true };
  if (isSundry) return settled(beside);
  const alone: Fact = {
    ...beside,
    drops: held.map(({ ingredient }) => ingredient).filter((name) => name !== ingredientIn(held, line.ingredient)),
  };
  return {
    kind: 'ask',
    ask: {
      about: 'item',
      why: 'which recipe lines',
      words: fact.words,
      choices: [
        { words: 'beside the rest', facts: [beside] },
        { words: 'instead of all of it', facts: [alone] },
      ],
    },
  };
};
