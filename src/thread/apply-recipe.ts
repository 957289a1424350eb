// What goes into one piece. A kind's recipe said again replaces it; lines for one wearer join it; a yield ("3 stems makes 2") becomes stems each.

import type { FactOf, RecipeLineFact } from '../reading/fact.ts';
import type { EventState } from './event.ts';

export const applyRecipe = (state: EventState, fact: FactOf<'recipe'>): EventState => {
  const onlyKind = state.lines.length === 1 ? state.lines[0]?.piece : undefined;
  const kind = fact.piece ?? onlyKind ?? 'any';
  const shared = fact.lines.some((line) => !line.wearer);
  const before = shared ? [] : (state.recipes[kind] ?? []);
  const lines = fact.lines.map((line) => eachPiece(line, fact.pieces ?? 1));
  return { ...state, recipes: { ...state.recipes, [kind]: [...before, ...lines] } };
};

const eachPiece = (line: RecipeLineFact, pieces: number): RecipeLineFact =>
  pieces === 1 || line.stems === undefined ? line : { ...line, stems: line.stems / pieces };
