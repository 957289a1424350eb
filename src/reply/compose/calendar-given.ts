// Calendar files and pictures in a thread: which steps they hold, whether the newest one still holds, and the one line that says it does not.

import type { EventPlan } from '../../planning/bench-plan.ts';
import type { CalendarStep } from '../../planning/calendar-step.ts';
import type { FactOf } from '../../reading/fact.ts';
import type { HeldStep } from '../../thread/event.ts';
import type { Day } from '../../values/day.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line, Reply } from '../reply.ts';
import { dateSpan, strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { stepTitle } from '../words/steps.ts';

/** Bench days are told apart by their date; the other steps by name and by how many of that name came before. */
export const heldSteps = (plan: EventPlan): readonly HeldStep[] =>
  plan.calendar.flatMap((step, index): HeldStep[] =>
    step.done ? [] : [{ id: stepId(step, plan.calendar.slice(0, index)), title: stepTitle(step, plan.calendar), date: step.date }],
  );

export const stepId = (step: CalendarStep, earlier: readonly CalendarStep[]): string => {
  const name = step.step.replace(/[^a-z]+/gi, '-');
  if (step.step === 'bench') return `${name}-${step.date}`;
  const same = earlier.filter((one) => one.step === step.step).length;
  return same === 0 ? name : `${name}-${same + 1}`;
};

/** Steps of an earlier file that no longer hold and are still ahead. What is past stays in a calendar as it was. */
export const withdrawnSteps = (held: readonly HeldStep[], now: readonly HeldStep[], today: Day): readonly HeldStep[] =>
  held.filter((old) => old.date >= today && !now.some((step) => step.id === old.id));

export interface CalendarKept {
  readonly reply: Reply;
  readonly fact: FactOf<'calendar'> | undefined; // to be kept beside what the message stated
}

/** Notes what a reply gives out; and once, in one line, that what was given out earlier no longer holds. */
export const withCalendarKept = (reply: Reply, answer: Answer): CalendarKept => {
  if (answer.shared) return { reply, fact: undefined };
  const files = reply.blocks.flatMap((block) => (block.block === 'file' ? [block.file.kind] : []));
  const given = files.includes('calendar') ? 'file' : files.includes('picture') ? 'picture' : undefined;
  if (given) {
    const plan = answer.plan();
    return { reply, fact: { fact: 'calendar', given, steps: plan ? [...heldSteps(plan)] : [], words: `calendar ${given}` } };
  }
  const moved = answer.how === 'withdrawn' ? undefined : movedStep(answer);
  if (!moved) return { reply, fact: undefined };
  return { reply: { blocks: withLine(reply.blocks, staleLine(moved, answer)) }, fact: { fact: 'calendar', words: 'out of date' } };
};

interface Moved {
  readonly was: HeldStep | undefined;
  readonly now: HeldStep | undefined;
}

/** The first step whose date in the newest file is no longer its date. Undefined when it holds, when none was given, or when it was said before. */
const movedStep = ({ event, plan, today }: Answer): Moved | undefined => {
  const given = event.calendarGiven;
  if (!given || given.toldStale || given.last.length === 0) return undefined;
  const current = plan();
  if (!current) return { was: given.last[0], now: undefined };
  const now = heldSteps(current);
  const ahead = (step: HeldStep): boolean => step.date >= today;
  const doneSteps = current.calendar.flatMap((step, index) => (step.done ? [stepId(step, current.calendar.slice(0, index))] : []));
  for (const step of now) {
    const was = given.last.find(({ id }) => id === step.id);
    if (was?.date !== step.date && ahead(step)) return { was, now: step };
  }
  const gone = given.last.find((old) => ahead(old) && !doneSteps.includes(old.id) && !now.some(({ id }) => id === old.id));
  return gone && { was: gone, now: undefined };
};

const staleLine = ({ was, now }: Moved, { event, manner }: Answer): Line => {
  const date = (step: HeldStep) => dateSpan(shortDate(step.date, manner));
  const off = event.cancelled ? text`: this event is off` : [];
  const moved =
    was && now
      ? text`: ${now.title.toLowerCase()} was ${date(was)}, now ${date(now)}`
      : now
        ? text`: ${now.title.toLowerCase()} ${date(now)} is new`
        : [];
  const gone = was && !now && !event.cancelled ? text`: ${was.title.toLowerCase()} ${date(was)} is gone` : [];
  return text`${strong('The calendar posted here is out of date')}${off}${moved}${gone}. Say “calendar” for the new one.`;
};

/** Before the row of buttons, which then offers the file. */
const withLine = (blocks: readonly Block[], line: Line): readonly Block[] => {
  const notice: Block = { block: 'assumed', line };
  const last = blocks.at(-1);
  const offers = last?.block === 'actions' && last.actions.some(({ action }) => action === 'calendar file');
  const offer: Block = { block: 'actions', actions: [{ label: 'Calendar file', action: 'calendar file', value: '' }] };
  if (last?.block !== 'actions') return [...blocks, notice, offer];
  return [...blocks.slice(0, -1), notice, last, ...(offers ? [] : [offer])];
};
