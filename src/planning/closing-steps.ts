// The last steps of a calendar: the event, the hand-over, and the boards.

import { boardedBeforeHandOver, freshHoursAhead, handOverBeforeEvent, keepingDaysAhead } from '../handbook/make-ahead.ts';
import type { Material } from '../handbook/pieces.ts';
import { bestGrade, type Source } from '../handbook/sources.ts';
import type { BenchRules } from './bench-rules.ts';
import { type CalendarParts, plainStep } from './calendar-parts.ts';
import type { CalendarStep, StepGrade } from './calendar-step.ts';
import { dayNumber, dayNumbered } from './day-number.ts';
import { hasBeen } from './supply.ts';

export const closingSteps = (parts: CalendarParts): readonly CalendarStep[] => {
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
