// "Why these dates?": each step with what it rests on, and how much weight that bears. Sources that disagree are shown as a range, never averaged.

import { type Source, sourceLine } from '../../handbook/sources.ts';
import type { CalendarStep } from '../../planning/calendar-step.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, dateSpan, strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { daysRange, stepTitle } from '../words/steps.ts';
import { startLine } from './calendar.ts';

const mostSteps = 10;

/** Undefined without a plan. Bench days are one item: they are worked out, not looked up. */
export const whyDates = (answer: Answer): readonly Block[] | undefined => {
  const plan = answer.plan();
  if (!plan) return undefined;
  const steps = plan.calendar.filter((step, index) => step.step !== 'bench' || plan.calendar[index + 1]?.step !== 'bench').reverse();
  return [
    { block: 'answer', line: startLine(plan, answer.manner) },
    { block: 'list', items: steps.slice(0, mostSteps).map((step) => whyLine(step, plan.calendar, answer)) },
  ];
};

const whyLine = (step: CalendarStep, all: readonly CalendarStep[], answer: Answer): Line => {
  const date = dateSpan(shortDate(step.date, answer.manner));
  return text`${strong(stepTitle(step, all))} ${date}: ${reason(step, answer)}`;
};

const reason = (step: CalendarStep, answer: Answer): Line => {
  const moved = step.movedFrom ? text`moved off ${dateSpan(shortDate(step.movedFrom, answer.manner))}, a closed day; ` : [];
  const days = step.days ? text`${daysRange(step.days.least, step.days.most)}${step.plant ? ` for ${step.plant}` : ''}; ` : [];
  if (step.step === 'bench') return text`as late as all open events together allow, no day over its minutes`;
  if (step.grade === 'said') return text`${moved}as you said`;
  if (step.grade === 'the studio') return text`${moved}${days}your own figure`;
  if (step.grade === 'derived') return text`${moved}${days}worked out back from the bench days`;
  if (step.grade === 'common practice') return text`${moved}${days}${assumedSpan('common practice, no source')}`;
  return text`${moved}${days}${named(step.sources)}`;
};

/** The first source by name and grade, and how many others there are. */
const named = (sources: readonly Source[]): Line => {
  const [first, ...others] = sources.filter(({ grade }) => grade !== 'common practice');
  if (!first) return [assumedSpan('common practice, no source')];
  return text`${assumedSpan(sourceLine(first))}${others.length > 0 ? ` and ${others.length} more` : ''}`;
};

const mostSources = 4;

/** The drying range and the sources it spans. */
export const dryingWhy = (hang: CalendarStep): readonly Block[] => {
  if (!hang.days) return [];
  const range = daysRange(hang.days.least, hang.days.most);
  const what = hang.plant ? ` for ${hang.plant}` : '';
  if (hang.grade === 'the studio') return [{ block: 'line', line: text`${strong(range)}${what}, your own figure.` }];
  const assumed = hang.assumed ? assumedSpan(' No plant was said, or none with days of its own: this is the range for hanging.') : '';
  const sources = [...new Set(hang.sources.map(sourceLine))];
  return [
    { block: 'line', line: text`${strong(range)}${what}: sources differ, and a damp room takes longer.${assumed}` },
    { block: 'list', items: sources.slice(0, mostSources).map((source) => text`${assumedSpan(source)}`) },
    ...(sources.length > mostSources ? [{ block: 'assumed' as const, line: text`and ${sources.length - mostSources} more sources.` }] : []),
  ];
};
