// One supply of one event, and by when the bench needs it.

import type { BenchRules } from './bench-rules.ts';
import type { EventToPlan } from './event-to-plan.ts';
import type { Supply } from './supply.ts';
import type { WorkingDays } from './working-days.ts';

export interface SupplyNeed {
  readonly event: EventToPlan;
  readonly supply: Supply;
  readonly firstBench: number; // day number of the first bench day that uses it
  readonly lastStart: number; // day number of the last day that bench work could start
  readonly begun: boolean; // some piece is finished, so the material is there
  readonly rules: BenchRules;
  readonly days: WorkingDays;
  readonly now: number;
}
