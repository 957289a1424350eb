// All open events as one load on the bench: their jobs, and the bench minutes of every day from today to the last closing.

import type { BenchJob, DayMinutes } from './bench-job.ts';
import type { BenchRules } from './bench-rules.ts';
import { dayNumber } from './day-number.ts';
import { baseMinutes, type EventToPlan } from './event-to-plan.ts';
import { type PieceWindows, pieceWindows } from './piece-windows.ts';
import type { WorkingDays } from './working-days.ts';

export interface BenchLoad {
  readonly jobs: readonly BenchJob[];
  readonly days: DayMinutes;
  /** Per event and line, the windows its pieces have. */
  readonly windows: readonly (readonly PieceWindows[])[];
}

export const benchLoad = (events: readonly EventToPlan[], rules: BenchRules, days: WorkingDays, today: number): BenchLoad => {
  const jobs: BenchJob[] = [];
  const windows = events.map((event, eventIndex) =>
    event.lines.map((line, lineIndex) => {
      const pieces = pieceWindows(event, line.piece, line.material, rules, days, today);
      const base = pieces.stages.length > 1 ? baseMinutes(line.minutesEach) : line.minutesEach;
      for (const { stage, window } of pieces.stages) {
        const each = stage === 'finish' ? line.minutesEach - base : base;
        const count = stage === 'base' ? Math.min(line.left, line.basesLeft ?? line.left) : line.left;
        if (count <= 0 || each <= 0) continue;
        const closes = window.closes - today;
        const resumes = line.notBefore === undefined ? Number.NEGATIVE_INFINITY : dayNumber(line.notBefore) - today;
        const opened = Math.max(window.opens - today, Math.min(resumes, closes)); // a pause never outlasts the window
        jobs.push({
          event: eventIndex,
          line: lineIndex,
          piece: line.piece,
          material: line.material,
          stage,
          each,
          pieces: count,
          minutes: each * count,
          opened,
          opens: Math.max(0, Math.min(opened, closes)),
          closes,
          ...(window.closesAfter === undefined ? {} : { closesAfter: window.closesAfter }),
          late: window.late,
        });
      }
      return pieces;
    }),
  );
  const last = jobs.reduce((latest, job) => Math.max(latest, job.closes), -1);
  return { jobs, days: Array.from({ length: last + 1 }, (_, day) => days.on(today + day).minutes), windows };
};
