// The make-ahead calendar: one date to start by and why, then the steps in the order they come, late ones first with what can still be done.

import type { EventPlan } from '../../planning/bench-plan.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, dateSpan, joined, strong, text } from '../span.ts';
import { duration, fullDate, shortDate } from '../words/dates.ts';
import { orderWords } from '../words/order.ts';
import { remedyWords } from '../words/remedies.ts';
import { stepDetail, stepName } from '../words/steps.ts';
import { overloadBlocks } from './overload.ts';

export const calendarBlocks = (plan: EventPlan, answer: Answer): readonly Block[] => {
  const { manner } = answer;
  return [
    { block: 'answer', line: startLine(plan, manner) },
    ...lateBlocks(plan, manner),
    ...(plan.fits ? [] : overloadBlocks(answer.bench(), manner)),
    stepsTable(plan, manner),
    { block: 'assumed', line: eventLine(plan, answer) },
  ];
};

/** Steps already past, in one line, and what can still be done instead of them. */
const lateBlocks = (plan: EventPlan, manner: Manner): readonly Block[] => {
  const late = plan.calendar.filter((step) => step.late).reverse();
  if (late.length === 0) return [];
  const names = joined(
    late.map((step) => text`${stepName(step.step).toLowerCase()} (${dateSpan(shortDate(step.date, manner))})`),
    ', ',
  );
  const still = late
    .flatMap((step) => step.canStill.filter((remedy) => remedy.do !== 'do it today'))
    .map((remedy) => remedyWords(remedy, manner));
  return [
    { block: 'problem', line: text`Already late: ${names}.` },
    ...(still.length > 0 ? [{ block: 'list' as const, title: text`Still possible:`, items: still }] : []),
  ];
};

/** The answer to "when do we start?": the comfortable day, the last possible day, or why there is none. */
export const startLine = (plan: EventPlan, manner: Manner): Line => {
  const date = strong(fullDate(plan.event.date, manner));
  if (plan.minutesLeft === 0) return text`For ${date}: every piece is made.`;
  if (!plan.fits) return text`For ${date}: it does not fit the bench, ${duration(plan.minutesShort)} short.`;
  const { comfortableStart: easy, latestStart: last } = plan;
  if (easy && last && easy !== last) {
    return text`For ${date}: start ${strong(shortDate(easy, manner))} to be comfortable, ${strong(shortDate(last, manner))} at the latest.`;
  }
  if (easy) return text`For ${date}: start on ${strong(shortDate(easy, manner))}.`;
  if (last) return text`For ${date}: start by ${strong(shortDate(last, manner))} at the latest; no start leaves every day under 70 % full.`;
  return text`For ${date}: start now.`;
};

const stepsTable = (plan: EventPlan, { says, ...style }: Manner): Block => ({
  block: 'table',
  caption: 'Make-ahead calendar',
  columns: [
    { title: '', align: 'left' },
    { title: '', align: 'left' },
    { title: '', align: 'left' },
  ],
  rows: plan.calendar
    .filter((step) => !step.done)
    .reverse()
    .map((step) => [
      text`${stepName(step.step)}`,
      text`${dateSpan(shortDate(step.date, style))}${step.movedFrom ? assumedSpan('*') : ''}`,
      text`${step.late ? 'late' : stepDetail(step, says)}`,
    ]),
});

const eventLine = (plan: EventPlan, answer: Answer): Line => {
  const { event, manner } = answer;
  const materials = [...new Set(plan.event.lines.map((line) => line.material))].join(' and ');
  const material = plan.materialAssumed ? text`${assumedSpan('material not said: room kept for fresh work')}` : text`${materials}`;
  const bench = `${duration(plan.minutesPlanned)} at the bench`;
  const byHandbook = plan.event.lines.some((line) => line.minutesBy === 'the handbook')
    ? assumedSpan(' (usual minutes, not yours yet)')
    : '';
  const moved = plan.calendar.some((step) => step.movedFrom) ? text` * moved off a closed day.` : [];
  return text`${orderWords(event.lines, manner)}, ${material}, ${bench}${byHandbook}. May be made from ${dateSpan(shortDate(plan.opens, manner))}.${moved}`;
};
