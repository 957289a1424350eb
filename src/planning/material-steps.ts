// When each supply must be ordered, hung or put in water, and checked, so that it is ready for its first bench day. Counted back in working days from there.

import { conditioningHours } from '../handbook/conditioning.ts';
import type { DaysRange } from '../handbook/days-range.ts';
import { bestGrade, commonPractice, type Source } from '../handbook/sources.ts';
import type { CalendarStep, StepGrade } from './calendar-step.ts';
import { dayNumber, dayNumbered } from './day-number.ts';
import { arrivalOf, canStillBeReady } from './still-possible.ts';
import { hasBeen, leadDays, slowestDrying } from './supply.ts';
import type { SupplyNeed } from './supply-need.ts';

export const materialSteps = (need: SupplyNeed): readonly CalendarStep[] => (need.supply === 'fresh' ? freshSteps(need) : keptSteps(need));

const practice = { grade: 'common practice', sources: [commonPractice] } as const;

const stepMaker =
  ({ supply, days, now }: SupplyNeed) =>
  (
    step: CalendarStep['step'],
    day: number,
    done: boolean,
    about: { grade: StepGrade; sources: readonly Source[]; assumed?: boolean } & Partial<CalendarStep>,
  ): CalendarStep => {
    const date = days.onOrBefore(day);
    return {
      step,
      date: dayNumbered(date),
      late: date < now && !done,
      done,
      material: supply,
      ...(date === day ? {} : { movedFrom: dayNumbered(day) }),
      canStill: [],
      assumed: false,
      ...about,
    };
  };

const freshSteps = (need: SupplyNeed): readonly CalendarStep[] => {
  const { event, firstBench, begun, rules, days, now } = need;
  const step = stepMaker(need);
  const inWater = days.before(firstBench, 1); // overnight in water covers the longest hours printed
  const lead = leadDays(event, rules);
  const received = begun || hasBeen(event, 'received');
  const inWaterBy = received && inWater < now; // arrived, and nobody ticks a bucket of water
  const sources = conditioningHours.rows.map((row) => row.source);
  const steps = [
    step('material ready', firstBench, begun, { grade: 'derived', sources }),
    step('condition', inWater, begun || inWaterBy, { grade: bestGrade(sources), sources, hours: conditioningHours }),
    step('order by', days.before(inWater, lead.days), received || hasBeen(event, 'ordered'), {
      ...(rules.leadDays === undefined ? practice : { grade: 'the studio', sources: [] }),
      assumed: lead.assumed,
    }),
  ];
  return withRemedies(need, steps, undefined);
};

const keptSteps = (need: SupplyNeed): readonly CalendarStep[] => {
  const { event, supply, firstBench, begun, rules, days } = need;
  const step = stepMaker(need);
  const ready = days.before(firstBench, 1);
  const lead = leadDays(event, rules);
  const checked = begun || hasBeen(event, 'drying checked');
  const hung = checked || hasBeen(event, 'hung');
  const received = hung || hasBeen(event, 'received');
  const drying = supply === 'dried' ? slowestDrying(event, rules) : undefined;
  const steps = [step('material ready', ready, checked || (!drying && received), { grade: 'derived', sources: [] })];
  let wanted = ready; // the day the stems must be in the studio
  if (drying) {
    const hang = days.onOrBefore(ready - drying.most);
    const sources = drying.rows.map((row) => row.source);
    const about = {
      grade: drying.by === 'the studio' ? ('the studio' as const) : bestGrade(sources),
      sources,
      days: { least: drying.least, most: drying.most },
      between: { from: dayNumbered(hang + drying.least), to: dayNumbered(hang + drying.most) },
      assumed: drying.by === 'the method',
      ...(drying.plant === undefined ? {} : { plant: drying.plant }),
    };
    steps.push(step('check the drying', Math.max(hang, days.onOrBefore(hang + drying.least)), checked, about));
    steps.push(step('hang or treat', ready - drying.most, hung, about));
    wanted = hang;
  }
  steps.push(
    step('order by', days.before(wanted, lead.days), received || hasBeen(event, 'ordered'), {
      ...(rules.leadDays === undefined ? practice : { grade: 'the studio', sources: [] }),
      assumed: lead.assumed,
    }),
  );
  return withRemedies(need, steps, drying);
};

// Steps come last to first. Of a supply that is late, the earliest step not done carries what can still be done; the others wait for it, and those still ahead
// get the dates that the stems can keep, so that no step asks for what has not arrived.
const withRemedies = (need: SupplyNeed, steps: readonly CalendarStep[], drying: DaysRange | undefined): readonly CalendarStep[] => {
  const first = steps.findLast((step) => !step.done);
  if (!first?.late) return steps.map((step) => (step.late && first ? { ...step, waitsFor: first.step } : step));
  return steps.map((step) => {
    if (step === first) return { ...step, canStill: canStillBeReady(need, step.step, drying) };
    if (step.late) return { ...step, waitsFor: first.step };
    return step.done ? step : datedAgain(need, step, first, drying);
  });
};

/** From the day the stems can be here; a step that would come too late for the bench has no date of its own. */
const datedAgain = (need: SupplyNeed, step: CalendarStep, first: CalendarStep, drying: DaysRange | undefined): CalendarStep => {
  const { days, lastStart } = need;
  const here = arrivalOf(need);
  const dry = step.step === 'check the drying' || step.step === 'material ready' ? (drying?.least ?? 0) : 0;
  const earliest = days.onOrAfter(here + dry);
  if (dayNumber(step.date) >= earliest) return step;
  if (earliest > lastStart) return { ...step, waitsFor: first.step };
  const { movedFrom: _, ...still } = step;
  const between =
    step.between && drying ? { between: { from: dayNumbered(here + drying.least), to: dayNumbered(here + drying.most) } } : {};
  return { ...still, date: dayNumbered(earliest), ...between };
};
