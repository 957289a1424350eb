// Finished, broken and remaining pieces. `made` counts whole good pieces; a broken one comes off it and has to be made again.

import type { PieceKind } from '../handbook/pieces.ts';
import type { FactOf } from '../reading/fact.ts';
import { decimal } from '../values/decimal.ts';
import type { EventState, Progress } from './event.ts';

const none: Progress = { made: 0, broke: 0 };

/** Pieces of this kind ordered, over all its lines. */
export const ordered = (state: EventState, piece: PieceKind): number =>
  state.lines.filter((line) => line.piece === piece).reduce((total, line) => total + line.count, 0);

export const madeOf = (state: EventState, piece: PieceKind): number => state.progress[piece]?.made ?? 0;

/** The kinds a message about progress can mean: the one it names, or all of the order. */
export const kindsMeant = (state: EventState, piece: PieceKind | undefined): readonly PieceKind[] =>
  piece && piece !== 'unspecified' ? [piece] : [...new Set(state.lines.map((line) => line.piece))];

export const setMade = (state: EventState, piece: PieceKind, made: number): EventState => {
  const before = state.progress[piece] ?? none;
  return { ...state, progress: { ...state.progress, [piece]: { ...before, made: Math.max(0, made) } } };
};

export const applyMade = (state: EventState, fact: FactOf<'made'>): EventState => {
  if (fact.stage) return state; // begun is not made
  const kinds = kindsMeant(state, fact.piece);
  if (fact.all) return kinds.reduce((next, kind) => setMade(next, kind, ordered(next, kind)), state);
  const [kind] = kinds;
  if (!kind || kinds.length > 1) return state; // decide asks which
  if (fact.fraction) return setMade(state, kind, decimal(fact.fraction).times(ordered(state, kind)).floor().toNumber());
  if (fact.count === undefined) return state;
  return setMade(state, kind, fact.total ? fact.count : madeOf(state, kind) + fact.count);
};

export const applyBroke = (state: EventState, fact: FactOf<'broke'>): EventState => {
  const [kind] = kindsMeant(state, fact.piece);
  if (!kind) return state;
  const before = state.progress[kind] ?? none;
  const after = { made: Math.max(0, before.made - fact.count), broke: before.broke + fact.count };
  return { ...state, progress: { ...state.progress, [kind]: after } };
};

export const applyLeft = (state: EventState, fact: FactOf<'left'>): EventState => {
  const kinds = kindsMeant(state, fact.piece);
  const [kind] = kinds;
  return kind && kinds.length === 1 ? setMade(state, kind, ordered(state, kind) - fact.count) : state;
};
