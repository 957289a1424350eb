// An order whose material nobody said: by when to decide, if dried is to stay open.

import type { CalendarParts } from './calendar-parts.ts';
import type { CalendarStep } from './calendar-step.ts';
import { comfortable } from './day-limits.ts';
import { materialSteps } from './material-steps.ts';
import { pieceWindows } from './piece-windows.ts';
import type { WorkingDays } from './working-days.ts';

// Nobody said what the pieces are made of: the last day on which dried is still open is the day its stems would have to be ordered.
export const materialToDecide = (parts: CalendarParts): readonly CalendarStep[] => {
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
