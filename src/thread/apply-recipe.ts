// What goes into one piece. A kind's recipe said again replaces it; lines for one wearer replace that wearer's own; changes leave the rest as it is.
// A yield ("3 stems makes 2") stays a yield: it is divided where it is costed, never here.

import type { PieceKind } from '../handbook/pieces.ts';
import type { FactOf, RecipeLineFact } from '../reading/fact.ts';
import { changedBy } from './change-recipe.ts';
import type { EventState } from './event.ts';

type Recipe = FactOf<'recipe'>;
type Kind = PieceKind | 'any';
type Lines = readonly RecipeLineFact[];

export const applyRecipe = (state: EventState, fact: Recipe): EventState => {
  if (fact.like !== undefined) return put(state, kindOf(state, fact), changedBy(recipeOf(state, fact.like), fact));
  if (fact.lines.length > 0 && !fact.adds) return put(state, kindOf(state, fact), changedBy(stated(state, fact), fact));
  if (!changes(fact)) return state;
  return kindsChanged(state, fact).reduce((next, kind) => put(next, kind, changedBy(recipeOf(next, kind), withYield(fact))), state);
};

const isCorsage = (kind: Kind): boolean => kind === 'wrist corsage' || kind === 'pin corsage';

/** The recipe in force for a kind. One for "a corsage" serves both sorts until they have their own. */
export const recipeOf = (state: EventState, kind: Kind): Lines =>
  state.recipes[kind] ?? (isCorsage(kind) ? state.recipes.corsage : undefined) ?? state.recipes.any ?? [];

/** "Corsage" in an order of one sort of corsage is that sort. */
export const kindMeant = (kinds: readonly PieceKind[], piece: PieceKind): PieceKind => {
  const [sort, another] = [...new Set(kinds.filter(isCorsage))];
  return piece === 'corsage' && !kinds.includes('corsage') && sort !== undefined && another === undefined ? sort : piece;
};

export const changes = (fact: Recipe): boolean =>
  fact.adds === true || fact.drops !== undefined || fact.swaps !== undefined || fact.scale !== undefined;

/** A change without a kind is meant for every recipe of the thread. */
export const kindsChanged = (state: EventState, fact: Recipe): readonly Kind[] => {
  if (fact.piece !== undefined) return [kindOf(state, fact)];
  const held = Object.keys(state.recipes) as Kind[];
  return held.length > 0 ? held : [kindOf(state, fact)];
};

const onlyKind = (state: EventState): PieceKind | undefined => {
  const kinds = [...new Set(state.lines.map((line) => line.piece))];
  return kinds.length === 1 ? kinds[0] : undefined;
};

const kindOf = (state: EventState, fact: Recipe): Kind => {
  const kinds = state.lines.map((line) => line.piece);
  const kind = fact.piece === undefined ? onlyKind(state) : kindMeant(kinds, fact.piece);
  return kind === undefined || kind === 'unspecified' ? 'any' : kind;
};

/** In a thread of one kind, that kind's recipe is the only one; in others it stands beside the recipe for all. */
const put = (state: EventState, kind: Kind, lines: Lines): EventState => {
  const { any, ...own } = state.recipes;
  const keepsAny = kind !== 'any' && any !== undefined && onlyKind(state) !== kind;
  return { ...state, recipes: { ...(keepsAny ? { any } : {}), ...own, [kind]: lines } };
};

const withYield = (fact: Recipe): Recipe => ({ ...fact, lines: [...linesOf(fact)] });

const linesOf = ({ lines, pieces }: Recipe): Lines =>
  pieces === undefined || pieces === 1 ? lines : lines.map((line) => ({ ...line, makes: pieces }));

/** Lines said without a change: the whole recipe, or all that one wearer has of their own. */
const stated = (state: EventState, fact: Recipe): Lines => {
  const lines = linesOf(fact);
  if (lines.some((line) => line.wearer === undefined)) return lines;
  const named = new Set(lines.map((line) => line.wearer?.toLowerCase()));
  return [...recipeOf(state, kindOf(state, fact)).filter((line) => !named.has(line.wearer?.toLowerCase())), ...lines];
};
