// Questions that only compute: the same plan with one thing changed. Nothing here is ever stored.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { Day } from '../values/day.ts';
import type { BenchPlan, EventPlan } from './bench-plan.ts';
import { type BenchRules, minutesEach } from './bench-rules.ts';
import type { EventToPlan } from './event-to-plan.ts';
import { planBench } from './plan-bench.ts';

export interface WhatIf {
  readonly before: BenchPlan;
  readonly after: BenchPlan;
  /** Events that fit before and no longer do. */
  readonly nowShort: readonly string[];
}

const compare = (before: BenchPlan, after: BenchPlan): WhatIf => {
  const fitted = new Set(before.events.filter((event) => event.fits).map((event) => event.key));
  const nowShort = after.events
    .filter((event) => !event.fits && (fitted.has(event.key) || event.key === extraKey))
    .map((event) => event.key);
  return { before, after, nowShort };
};

/** The key of the event that a what-if adds. */
export const extraKey = 'what if';

/** "Can we take another 30 for the 20th?" Without a material, room is kept for fresh. */
export const withMorePieces = (
  events: readonly EventToPlan[],
  rules: BenchRules,
  today: Day,
  more: { readonly pieces: number; readonly date: Day; readonly time?: string; readonly piece?: PieceKind; readonly material?: Material },
): WhatIf => {
  const piece = more.piece ?? 'unspecified';
  const { minutes, own } = minutesEach(piece, rules);
  const extra: EventToPlan = {
    key: extraKey,
    date: more.date,
    ...(more.time === undefined ? {} : { time: more.time }),
    lines: [
      {
        piece,
        material: more.material ?? 'fresh',
        materialAssumed: more.material === undefined,
        ordered: more.pieces,
        left: more.pieces,
        minutesEach: minutes,
        minutesBy: own ? 'the studio' : 'the handbook',
      },
    ],
    ingredients: [],
    recipeDecided: false,
    steps: [],
  };
  return compare(planBench(events, rules, today), planBench([...events, extra], rules, today));
};

/** "What if one of us is away Thursday?" */
export const withPeopleAway = (
  events: readonly EventToPlan[],
  rules: BenchRules,
  today: Day,
  away: { readonly date: Day; readonly people: number },
): WhatIf => {
  const fact = { fact: 'crew', people: away.people, date: away.date, away: true, words: '' } as const;
  return compare(planBench(events, rules, today), planBench(events, { ...rules, crew: [...rules.crew, fact] }, today));
};

/** "What if it's just me?" On one day, or on every day from today. */
export const withOnly = (
  events: readonly EventToPlan[],
  rules: BenchRules,
  today: Day,
  only: { readonly people: number; readonly date?: Day },
): WhatIf => {
  const after =
    only.date === undefined
      ? { ...rules, people: only.people, crew: rules.crew.filter((fact) => fact.away === true) }
      : { ...rules, crew: [...rules.crew, { fact: 'crew', people: only.people, date: only.date, words: '' } as const] };
  return compare(planBench(events, rules, today), planBench(events, after, today));
};

export interface ReadyFor {
  readonly ready: boolean; // everything handed over by that day fits, and none of it is late
  readonly events: readonly EventPlan[];
  readonly minutesLeft: number;
  readonly minutesShort: number;
}

/** "Are we OK for Saturday?" Everything handed over on or before that day. */
export const readyFor = (plan: BenchPlan, day: Day): ReadyFor => {
  const events = plan.events.filter((event) => event.handOver <= day);
  return {
    ready: events.every((event) => event.fits && !event.late),
    events,
    minutesLeft: events.reduce((total, event) => total + event.minutesLeft, 0),
    minutesShort: events.reduce((total, event) => total + event.minutesShort, 0),
  };
};
