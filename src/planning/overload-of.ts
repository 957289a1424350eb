// The overload of one event alone. Where other events are short too, each is taken as only what fits of it, so that the tightest stretch and the cures are
// about the event that was asked about and not about the whole season.

import type { BenchPlan } from './bench-plan.ts';
import type { EventToPlan } from './event-to-plan.ts';
import { planBench } from './plan-bench.ts';

/** The same plan where this event alone is short, or where nobody knows what the others would have to leave out. */
export const overloadOf = (bench: BenchPlan, key: string): BenchPlan => {
  const others = bench.events.filter((event) => !event.fits && event.key !== key);
  const fewer = bench.cures.find((cure) => cure.cure === 'fewer pieces');
  if (others.length === 0 || !fewer) return bench;
  const cut = bench.events.map(({ key: own, event }): EventToPlan => {
    if (own === key) return event;
    const lines = event.lines.map((line, index) => {
      const off = fewer.drops.find((drop) => drop.key === own && drop.line === index)?.pieces ?? 0;
      const bases = line.basesLeft === undefined ? {} : { basesLeft: Math.max(0, line.basesLeft - off) };
      return off === 0 ? line : { ...line, left: Math.max(0, line.left - off), ...bases };
    });
    return { ...event, lines };
  });
  const alone = planBench(cut, bench.rules, bench.today);
  return alone.events.some((event) => event.key === key && !event.fits) ? alone : bench;
};
