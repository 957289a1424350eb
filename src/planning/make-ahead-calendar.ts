// The make-ahead calendar of one event, last step to first: event, hand over, boarded, bench days, then each supply's way to the bench, and the decisions.

import { boardedBeforeHandOver, freshHoursAhead, handOverBeforeEvent, keepingDaysAhead } from '../handbook/make-ahead.ts';
import type { Material } from '../handbook/pieces.ts';
import { bestGrade, commonPractice, type Source } from '../handbook/sources.ts';
import type { BenchJob } from './bench-job.ts';
import type { EventDay } from './bench-plan.ts';
import type { BenchRules } from './bench-rules.ts';
import { type CalendarStep, type StepGrade, stepNames } from './calendar-step.ts';
import { comfortable } from './day-limits.ts';
import { dayNumber, dayNumbered } from './day-number.ts';
import type { EventToPlan } from './event-to-plan.ts';
import type { Share } from './latest-fill.ts';
import { materialSteps } from './material-steps.ts';
import { type PieceWindows, pieceWindows } from './piece-windows.ts';
import { hasBeen, type Supply, suppliesOf, supplyOf } from './supply.ts';
import type { WorkingDays } from './working-days.ts';

export interface CalendarParts {
  readonly event: EventToPlan;
  readonly windows: readonly PieceWindows[]; // by line
  readonly jobs: readonly BenchJob[]; // all the bench's; `work` points into it
  readonly work: readonly Share[]; // this event's
  readonly eventDays: readonly EventDay[];
  readonly latestStart: number | undefined; // days from today
  readonly rules: BenchRules;
  readonly days: WorkingDays;
  readonly now: number;
}

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
  const steps = [
    ...endSteps(parts),
    ...benchSteps(parts),
    ...material,
    ...materialToDecide(parts),
    ...(Number.isFinite(firstOrder) ? [decide] : []),
  ];
  return steps
    .map((step, index) => ({ step, index }))
    .sort(
      (a, b) => compare(b.step.date, a.step.date) || stepNames.indexOf(a.step.step) - stepNames.indexOf(b.step.step) || a.index - b.index,
    )
    .map(({ step }) => step);
};

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const plainStep = (
  { now }: CalendarParts,
  step: CalendarStep['step'],
  day: number,
  done: boolean,
  about: { grade: StepGrade; sources: readonly Source[] } & Partial<CalendarStep>,
): CalendarStep => {
  const late = day < now && !done;
  const canStill = late ? [{ do: 'do it today' } as const] : [];
  return { step, date: dayNumbered(day), late, done, assumed: false, canStill, ...about };
};

const endSteps = (parts: CalendarParts): readonly CalendarStep[] => {
  const { event, windows, now } = parts;
  const handed = hasBeen(event, 'handed over');
  const said = { grade: 'said', sources: [] } as const;
  const time = event.time === undefined ? {} : { time: event.time };
  const steps = [plainStep(parts, 'event', dayNumber(event.date), false, { ...said, ...time })];
  const over = windows[0]?.handOver;
  if (over) {
    const clock =
      over.assumed && over.clock
        ? { time: clockText(over.clock) }
        : event.handOver?.time === undefined
          ? {}
          : { time: event.handOver.time };
    const about = over.assumed ? { grade: 'common practice' as const, sources: [handOverBeforeEvent.source] } : said;
    const moved = over.movedFrom === undefined ? {} : { movedFrom: dayNumbered(over.movedFrom) };
    steps.push(plainStep(parts, 'hand over', over.day, handed, { ...about, ...clock, ...moved, assumed: over.assumed }));
  }
  const boarded = new Map<string, { day: number; material: Material }>();
  windows.forEach((pieces, line) => {
    const material = event.lines[line]?.material ?? 'fresh';
    boarded.set(`${pieces.boarded}`, boarded.get(`${pieces.boarded}`) ?? { day: pieces.boarded, material });
  });
  for (const { day, material } of boarded.values()) {
    const done = handed || hasBeen(event, 'boarded');
    const step = plainStep(parts, 'boarded', day, done, { ...boardedGrade(parts.rules, material), material });
    const by = Math.max(now, parts.windows[0]?.handOver.day ?? now);
    steps.push(step.late ? { ...step, canStill: [{ do: 'board as they are finished', by: dayNumbered(by) }] } : step);
  }
  return steps;
};

const boardedGrade = (rules: BenchRules, material: Material): { grade: StepGrade; sources: readonly Source[] } => {
  if (material === 'fresh' || material === 'mixed') {
    const sources = [...freshHoursAhead.buttonhole.sources, boardedBeforeHandOver.source];
    return { grade: bestGrade(sources), sources };
  }
  return rules.boardedDaysBefore === undefined
    ? { grade: 'derived', sources: keepingDaysAhead[material].sources }
    : { grade: 'the studio', sources: [] };
};

const clockText = (clock: number): string => `${String(Math.floor(clock / 60)).padStart(2, '0')}:${String(clock % 60).padStart(2, '0')}`;

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

// Nobody said what the pieces are made of: the last day on which dried is still open is the day its stems would have to be ordered.
const materialToDecide = (parts: CalendarParts): readonly CalendarStep[] => {
  const { event, rules, days, now } = parts;
  const open = event.lines.filter((line) => line.materialAssumed && line.left > 0);
  const [line] = open;
  if (!line) return [];
  const { stages } = pieceWindows(event, line.piece, 'dried', rules, days, now);
  const closes = stages[0]?.window.closes ?? now;
  const first = startBackFrom(
    closes,
    open.reduce((total, one) => total + one.left * one.minutesEach, 0),
    days,
    now,
  );
  const asDried = { ...event, lines: event.lines.map((one) => (one.materialAssumed ? { ...one, material: 'dried' as const } : one)) };
  const steps = materialSteps({
    event: asDried,
    supply: 'dried',
    firstBench: first,
    lastStart: closes,

    begun: false,
    rules,
    days,
    now,
  });
  const order = steps.find((step) => step.step === 'order by');
  return order ? [{ ...order, step: 'decide the material', assumed: true, canStill: order.canStill }] : [];
};

const startBackFrom = (closes: number, minutes: number, days: WorkingDays, now: number): number => {
  let left = minutes;
  let day = closes;
  for (; day > now; day -= 1) {
    left -= comfortable(days.on(day).minutes);
    if (left <= 0) return day;
  }
  return day;
};
