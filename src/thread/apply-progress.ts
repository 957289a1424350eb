// Finished, broken and remaining pieces. `made` counts whole good pieces; a broken one comes off it and has to be made again.

import type { PieceKind } from '../handbook/pieces.ts';
import type { FactOf } from '../reading/fact.ts';
import { parseDay } from '../values/day.ts';
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

/** Dried bases of mixed pieces that are made and good, those finished since included. */
export const basesOf = (state: EventState, piece: PieceKind): number => {
  const { made, bases = 0 } = state.progress[piece] ?? none;
  return Math.max(bases, made);
};

/** Every piece or base of this kind ever counted as made, broken ones included: it only rises, so two counts of it tell what was made between. */
export const everMade = (state: EventState, piece: PieceKind, stage: 'base' | 'finished'): number =>
  (stage === 'base' ? basesOf(state, piece) : madeOf(state, piece)) + (state.progress[piece]?.broke ?? 0);

const withProgress = (state: EventState, piece: PieceKind, change: Partial<Progress>): EventState => {
  const { resumes: _, ...before } = state.progress[piece] ?? none; // a word of progress ends a pause
  const { lately: __, latelyBroke: ___, ...rest } = state;
  return { ...rest, progress: { ...state.progress, [piece]: { ...before, ...change } } };
};

export const setMade = (state: EventState, piece: PieceKind, made: number): EventState =>
  withProgress(state, piece, { made: Math.max(0, made) });

/** "only 2 broke not 3": one that never broke is good after all. */
export const setBroke = (state: EventState, piece: PieceKind, broke: number): EventState => {
  const before = state.progress[piece] ?? none;
  return withProgress(state, piece, { broke: Math.max(0, broke), made: Math.max(0, before.made + before.broke - broke) });
};

const setBases = (state: EventState, piece: PieceKind, bases: number): EventState =>
  withProgress(state, piece, { bases: Math.max(0, bases) });

const isCounted = (stage: string | undefined): boolean => stage === undefined || stage === 'finished' || stage === 'base';

export const applyMade = (state: EventState, fact: FactOf<'made'>): EventState => {
  if (!isCounted(fact.stage)) return state; // begun is not made
  const [set, now] = fact.stage === 'base' ? ([setBases, basesOf] as const) : ([setMade, madeOf] as const);
  const kinds = kindsMeant(state, fact.piece);
  if (fact.all) return kinds.reduce((next, kind) => set(next, kind, ordered(next, kind)), state);
  const resumes = fact.resumes === undefined ? undefined : parseDay(fact.resumes);
  if (resumes) return kinds.reduce((next, kind) => withProgress(next, kind, { resumes }), state);
  const [kind] = kinds;
  if (!kind || kinds.length > 1) return state; // decide asks which
  if (fact.fraction) return set(state, kind, decimal(fact.fraction).times(ordered(state, kind)).floor().toNumber());
  if (fact.count === undefined) return state;
  if (fact.total) return set(state, kind, fact.count);
  const next = set(state, kind, now(state, kind) + fact.count);
  return fact.stage === 'base' || fact.count === 0 ? next : { ...next, lately: { piece: kind, added: fact.count } };
};

/** A broken piece is not made any more, and its base is gone with it. */
export const applyBroke = (state: EventState, fact: FactOf<'broke'>): EventState => {
  const [kind] = kindsMeant(state, fact.piece);
  if (!kind) return state;
  const { made, broke, bases } = state.progress[kind] ?? none;
  const next = withProgress(state, kind, {
    made: Math.max(0, made - fact.count),
    broke: broke + fact.count,
    ...(bases === undefined ? {} : { bases: Math.max(0, bases - fact.count) }),
  });
  return { ...next, latelyBroke: { piece: kind, count: fact.count } };
};

export const applyLeft = (state: EventState, fact: FactOf<'left'>): EventState => {
  const kinds = kindsMeant(state, fact.piece);
  const [kind] = kinds;
  return kind && kinds.length === 1 ? setMade(state, kind, ordered(state, kind) - fact.count) : state;
};
