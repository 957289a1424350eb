// The make-ahead calendar: one date to start by and why, what is late or does not fit, then the steps in the order they come. Beside a price, or when
// something is wrong, only the dates that matter: the whole calendar is behind a question, so that no reply is longer than a phone's screen.

import type { EventPlan } from '../../planning/bench-plan.ts';
import type { CalendarStep, StepName } from '../../planning/calendar-step.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, dateSpan, joined, strong, text } from '../span.ts';
import { duration, fullDate, shortDate } from '../words/dates.ts';
import { listed } from '../words/names.ts';
import { orderWords } from '../words/order.ts';
import { lateName, stepDetail, stepTitle } from '../words/steps.ts';
import { aheadBlocks, tooFarAhead } from './fresh-ahead.ts';
import { cannotBeReady, lateBlocks } from './late.ts';
import { overloadBlocks } from './overload.ts';

export type CalendarForm = 'whole' | 'key dates';

export const calendarBlocks = (plan: EventPlan, answer: Answer, form: CalendarForm = 'whole'): readonly Block[] => {
  const { manner } = answer;
  const trouble = [
    ...aheadBlocks(plan, manner),
    ...lateBlocks(plan, manner),
    ...(plan.fits ? [] : overloadBlocks(answer.bench(), answer, plan.key)),
  ];
  const whole = form === 'whole' && trouble.length === 0;
  if (form === 'key dates' && trouble.length > 0) return inBrief(plan, trouble, answer);
  return [
    { block: 'answer', line: startLine(plan, manner) },
    ...trouble,
    ...(plan.fits && plan.minutesLeft > 0 ? [{ block: 'line' as const, line: whyLine(plan, manner) }] : []),
    ...(whole ? [stepsTable(plan, manner)] : [keyDates(plan, manner)]),
    { block: 'assumed', line: text`${eventLine(plan, answer)}${whole ? movedNote(plan) : ' Say “calendar” for every step.'}` },
  ];
};

/** Beside a price there is no room for what could be done: only that something is wrong, and where to ask. */
const inBrief = (plan: EventPlan, trouble: readonly Block[], { manner }: Answer): readonly Block[] => [
  { block: 'answer', line: startLine(plan, manner) },
  ...trouble.filter((block) => block.block === 'problem'),
  { block: 'assumed', line: text`Ask “when do we start?” for what can still be done.` },
];

/** The answer to "when do we start?": the comfortable day, the last possible day, or why there is none. */
export const startLine = (plan: EventPlan, manner: Manner): Line => {
  const date = strong(fullDate(plan.event.date, manner));
  if (plan.minutesLeft === 0) return text`For ${date}: every piece is made.`;
  if (!plan.fits) return text`For ${date}: it does not fit the bench, ${duration(plan.minutesShort)} short.`;
  const { comfortableStart: easy, latestStart: last } = plan;
  const first = last ?? easy;
  if (first && cannotBeReady(plan)) {
    return text`For ${date}: the bench would start by ${strong(shortDate(first, manner))}, and the material cannot be ready by then.`;
  }
  if (easy && last && easy !== last) {
    return text`For ${date}: start ${strong(shortDate(easy, manner))} to be comfortable, ${strong(shortDate(last, manner))} at the latest.`;
  }
  if (easy) return text`For ${date}: start on ${strong(shortDate(easy, manner))}.`;
  if (last) return text`For ${date}: start by ${strong(shortDate(last, manner))} at the latest; no start leaves every day under 70 % full.`;
  return text`For ${date}: start now.`;
};

/** Why that day, and what happens if it slips. */
const whyLine = (plan: EventPlan, manner: Manner): Line => {
  const days = plan.days.length === 1 ? '1 bench day' : `${plan.days.length} bench days`;
  const { comfortableStart: easy, latestStart: last } = plan;
  const slips = last === undefined || (easy !== undefined && easy !== last) ? '' : ' A bench day later it no longer fits.';
  return text`${duration(plan.minutesLeft)} of work over ${days}, boarded by ${dateSpan(shortDate(plan.boarded, manner))}.${slips}`;
};

const openSteps = (plan: EventPlan): readonly CalendarStep[] => plan.calendar.filter((step) => !step.done).reverse();

export const stepsTable = (plan: EventPlan, manner: Manner): Block => ({
  block: 'table',
  caption: 'Make-ahead calendar',
  columns: [
    { title: '', align: 'left' },
    { title: '', align: 'left' },
    { title: '', align: 'left' },
  ],
  rows: openSteps(plan).map((step) => [
    text`${stepTitle(step, plan.calendar)}`,
    step.waitsFor && !step.late ? [] : text`${dateSpan(shortDate(step.date, manner))}${step.movedFrom ? assumedSpan('*') : ''}`,
    text`${step.late ? 'late' : step.waitsFor ? `waits for ${lateName(step.waitsFor)}` : stepDetail(step, manner)}`,
  ]),
});

const keySteps: { readonly [step in StepName]?: string } = {
  'decide the material': 'dried or fresh by',
  'order by': 'order by',
  'hang or treat': 'hang by',
  'check the drying': 'check drying from',
  condition: 'in water',
  boarded: 'board by',
};

/** A mixed piece has two orders. */
const whose = (step: CalendarStep, plan: EventPlan): string => {
  const twice = plan.calendar.filter((other) => other.step === step.step).length > 1;
  return twice && step.material ? ` (${step.material})` : '';
};

/** "Order by Tue 9 February, hang by Fri 12 February, board by Thu 11 March." Late steps are told apart. */
const keyDates = (plan: EventPlan, manner: Manner): Block => {
  const dates = openSteps(plan)
    .filter((step) => !step.late && !step.waitsFor && keySteps[step.step] !== undefined)
    .map((step) => text`${keySteps[step.step] ?? ''}${whose(step, plan)} ${dateSpan(shortDate(step.date, manner))}`);
  const line =
    dates.length > 0 ? text`Next: ${joined(dates.slice(0, 5), ', ')}.` : text`Hand over ${dateSpan(shortDate(plan.handOver, manner))}.`;
  return { block: 'line', line };
};

const eventLine = (plan: EventPlan, answer: Answer): Line => {
  const { event, manner } = answer;
  const materials = listed([...new Set(plan.event.lines.map((line) => line.material))]);
  const material = plan.materialAssumed ? text`${assumedSpan('material not said: room kept for fresh work')}` : text`${materials}`;
  const bench = `${duration(plan.minutesPlanned)} at the bench`;
  const byHandbook = plan.event.lines.some((line) => line.minutesBy === 'the handbook')
    ? assumedSpan(' (usual minutes, not yours yet)')
    : '';
  const keeps =
    plan.hoursAhead && !tooFarAhead(plan) ? text` The last bench day is ${plan.hoursAhead} h before: keep the fresh ones cool.` : [];
  return text`${orderWords(event.lines, manner)}, ${material}, ${bench}${byHandbook}. May be made from ${dateSpan(shortDate(plan.opens, manner))}.${keeps}`;
};

const movedNote = (plan: EventPlan): string => (plan.calendar.some((step) => step.movedFrom) ? ' * moved off a closed day.' : '');
