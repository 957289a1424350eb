// What "made 12" counts where the pieces are mixed: before their fresh part can be made, only dried bases can have been. Where it could be either, we ask.
// "Nothing today" also gets the day from which work goes on.

import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask, Reading } from '../reading/reading.ts';
import { basesOf, kindsMeant, madeOf, ordered } from '../thread/apply-progress.ts';
import type { EventState } from '../thread/event.ts';
import { addDays, type Day } from '../values/day.ts';

export interface ProgressContext {
  readonly state: EventState;
  readonly today: Day;
  readonly freshOpen: () => boolean; // whether the fresh part of this event's pieces can be made today or could be before
}

type Progress = FactOf<'made'> | FactOf<'left'>;

/** The same reading with each count of mixed pieces given its half. */
export const stageProgress = (reading: Reading, context: ProgressContext): Reading => {
  if (!reading.facts.some((fact) => fact.fact === 'made' || fact.fact === 'left')) return reading;
  const facts: Fact[] = [];
  const asks: Ask[] = [...reading.asks];
  for (const fact of reading.facts) {
    if (fact.fact !== 'made' && fact.fact !== 'left') {
      facts.push(fact);
      continue;
    }
    const staged = stage(fact, context);
    if ('fact' in staged) facts.push(staged);
    else asks.push(staged);
  }
  return { ...reading, facts, asks };
};

const stage = (fact: Progress, { state, today, freshOpen }: ProgressContext): Progress | Ask => {
  if (fact.fact === 'made' && fact.count === 0 && !fact.total && !fact.resumes) return { ...fact, resumes: addDays(today, 1) };
  if (fact.fact === 'made' && fact.stage !== undefined) return fact;
  const kinds = kindsMeant(state, fact.piece);
  const [kind] = kinds;
  const meant = state.lines.filter((line) => kinds.includes(line.piece));
  const isMixed = meant.every((line) => (line.material ?? state.material) === 'mixed');
  if (!kind || !isMixed || meant.length === 0) return fact;
  if (state.date !== undefined && !freshOpen()) return asBases(fact, ordered(state, kind));
  if (fact.fact === 'left' || fact.all || kinds.length > 1) return fact;
  const waiting = basesOf(state, kind) - madeOf(state, kind);
  const now = fact.total ? (fact.count ?? 0) - madeOf(state, kind) : (fact.count ?? 0);
  return waiting >= now ? { ...fact, stage: 'finished' } : askWhich(fact, kind);
};

const asBases = (fact: Progress, of: number): FactOf<'made'> =>
  fact.fact === 'made'
    ? { ...fact, stage: 'base' }
    : {
        fact: 'made',
        count: Math.max(0, of - fact.count),
        total: true,
        stage: 'base',
        words: fact.words,
        ...(fact.piece ? { piece: fact.piece } : {}),
      };

const askWhich = (fact: FactOf<'made'>, piece: NonNullable<FactOf<'made'>['piece']>): Ask => ({
  about: 'made',
  why: 'finished or begun',
  words: fact.words,
  choices: [
    { words: 'finished', facts: [{ ...fact, piece, stage: 'finished' }] },
    { words: 'dried bases', facts: [{ ...fact, piece, stage: 'base' }] },
  ],
});
