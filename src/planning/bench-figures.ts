// The plan of one event as plain figures for scripts: minutes as numbers, days as text, a key left out where there is no answer.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Day } from '../values/day.ts';
import type { BenchPlan, EventDay, EventPlan, TightStretch } from './bench-plan.ts';
import type { CalendarStep, Remedy, StepGrade, StepName } from './calendar-step.ts';
import type { Cure } from './cures.ts';

export interface BenchFigures {
  readonly minutesPlanned: number;
  readonly minutesLeft: number;
  readonly comfortableStart?: Day;
  readonly latestStart?: Day;
  readonly opens: Day;
  readonly boarded: Day;
  readonly fits: boolean;
  readonly minutesShort?: number;
  readonly days: readonly {
    readonly date: Day;
    readonly minutes: number;
    readonly pieces: { readonly [piece in PieceKind]?: number };
    readonly bases?: { readonly [piece in PieceKind]?: number };
  }[];
  readonly materialAssumed?: true;
  readonly tight?: TightStretch;
  readonly cures?: readonly Cure[];
}

/** Undefined when this event is not in the plan. */
export const benchFigures = (plan: BenchPlan, key: string): BenchFigures | undefined => {
  const event = plan.of(key);
  return event ? figuresOf(event, plan) : undefined;
};

const figuresOf = (event: EventPlan, plan: BenchPlan): BenchFigures => ({
  minutesPlanned: event.minutesPlanned,
  minutesLeft: event.minutesLeft,
  ...(event.comfortableStart === undefined ? {} : { comfortableStart: event.comfortableStart }),
  ...(event.latestStart === undefined ? {} : { latestStart: event.latestStart }),
  opens: event.opens,
  boarded: event.boarded,
  fits: event.fits,
  ...(event.fits ? {} : { minutesShort: event.minutesShort }),
  days: event.days.map(dayFigures),
  ...(event.materialAssumed ? { materialAssumed: true } : {}),
  ...(plan.tight && !event.fits ? { tight: plan.tight } : {}),
  ...(event.fits ? {} : { cures: plan.cures }),
});

const dayFigures = ({ date, minutes, pieces, bases }: EventDay): BenchFigures['days'][number] => ({
  date,
  minutes,
  pieces,
  ...(Object.keys(bases).length > 0 ? { bases } : {}),
});

export interface CalendarFigure {
  readonly step: StepName;
  readonly date: Day;
  readonly late: boolean;
  readonly done?: true;
  readonly material?: CalendarStep['material'];
  readonly grade: StepGrade;
  readonly assumed?: true;
  readonly days?: CalendarStep['days'];
  readonly between?: CalendarStep['between'];
  readonly minutes?: number;
  readonly pieces?: CalendarStep['pieces'];
  readonly bases?: CalendarStep['bases'];
  readonly waitsFor?: StepName;
  readonly canStill?: readonly Remedy[];
}

export const calendarFigures = (plan: BenchPlan, key: string): readonly CalendarFigure[] | undefined =>
  plan
    .of(key)
    ?.calendar.map(({ step, date, late, done, material, grade, assumed, days, between, minutes, pieces, bases, waitsFor, canStill }) => ({
      step,
      date,
      late,
      ...(done ? { done } : {}),
      ...(material === undefined ? {} : { material }),
      grade,
      ...(assumed ? { assumed } : {}),
      ...(days === undefined ? {} : { days: { least: days.least, most: days.most } }),
      ...(between === undefined ? {} : { between }),
      ...(minutes === undefined ? {} : { minutes }),
      ...(pieces === undefined ? {} : { pieces }),
      ...(bases === undefined || Object.keys(bases).length === 0 ? {} : { bases }),
      ...(waitsFor === undefined ? {} : { waitsFor }),
      ...(canStill.length === 0 ? {} : { canStill }),
    }));
