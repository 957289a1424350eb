// The make-ahead calendar of one event, last step to first: event, hand over, boarded, bench days, then each supply's way to the bench, and the decisions.

import type { Material } from '../handbook/pieces.ts';
import { commonPractice } from '../handbook/sources.ts';
import type { BenchJob } from './bench-job.ts';
import { type CalendarParts, plainStep } from './calendar-parts.ts';
import { type CalendarStep, stepNames } from './calendar-step.ts';
import { closingSteps } from './closing-steps.ts';
import { dayNumber } from './day-number.ts';
import { materialSteps } from './material-steps.ts';
import { materialToDecide } from './material-to-decide.ts';
import type { PieceWindows } from './piece-windows.ts';
import { type Supply, suppliesOf, supplyOf } from './supply.ts';

const decideAhead = 5; // working days before the order; common practice, no source
const practice = { grade: 'common practice', sources: [commonPractice] } as const;

export const makeAheadCalendar = (parts: CalendarParts): readonly CalendarStep[] => {
  const material = supplySteps(parts);
  const firstOrder = Math.min(...material.filter((step) => step.step === 'order by').map((step) => dayNumber(step.date)));
  const orderDone = material.every((step) => step.step !== 'order by' || step.done);
  const decide = plainStep(
    parts,
    'decide recipe and ribbon',
    parts.days.before(firstOrder, decideAhead),
    parts.event.recipeDecided || orderDone,
    practice,
  );
  const orderLate = material.some((step) => step.step === 'order by' && step.late);
  const decideOrWait = decide.late && orderLate ? { ...decide, waitsFor: 'order by' as const, canStill: [] } : decide;
  const steps = [
    ...closingSteps(parts),
    ...benchSteps(parts),
    ...material,
    ...materialToDecide(parts),
    ...(Number.isFinite(firstOrder) ? [decideOrWait] : []),
  ];
  return steps
    .map((step, index) => ({ step, index }))
    .sort(
      (a, b) => compare(b.step.date, a.step.date) || stepNames.indexOf(a.step.step) - stepNames.indexOf(b.step.step) || a.index - b.index,
    )
    .map(({ step }) => step);
};

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const benchSteps = (parts: CalendarParts): readonly CalendarStep[] =>
  parts.eventDays.map(({ date, ...counts }) =>
    plainStep(parts, 'bench', dayNumber(date), false, { grade: 'derived', sources: [], ...counts }),
  );

const supplySteps = (parts: CalendarParts): readonly CalendarStep[] => {
  const { event, jobs, work, windows, latestStart, now } = parts;
  const supplies = new Set<Supply>(event.lines.flatMap((line) => suppliesOf(line.material)));
  return [...supplies].flatMap((supply) => {
    const lines = event.lines.map((line, index) => ({ line, index })).filter(({ line }) => suppliesOf(line.material).includes(supply));
    const first = work.find((share) => supplyOf(jobs[share.job] as BenchJob) === supply)?.day;
    const closes = Math.min(...lines.flatMap(({ line, index }) => closesFor(windows[index], line.material, supply)));
    const lastStart = latestStart === undefined ? closes : Math.max(now + latestStart, supply === 'fresh' ? closes : 0);
    return materialSteps({
      event,
      supply,
      firstBench: first === undefined ? closes : now + first,
      lastStart,
      begun: lines.some(({ line }) => line.left < line.ordered),
      rules: parts.rules,
      days: parts.days,
      now,
    });
  });
};

const closesFor = (pieces: PieceWindows | undefined, material: Material, supply: Supply): readonly number[] =>
  (pieces?.stages ?? []).filter(({ stage }) => supplyOf({ material, stage }) === supply).map(({ window }) => window.closes);
