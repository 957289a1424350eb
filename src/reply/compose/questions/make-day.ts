// "Can we make them on Monday?": whether pieces of this event may be made that day, by its window and by the bench. Not whether something is due.

import { dayNumber } from '../../../planning/day-number.ts';
import { workingDays } from '../../../planning/working-days.ts';
import type { Day } from '../../../values/day.ts';
import type { Answer } from '../../answer.ts';
import type { Block } from '../../reply.ts';
import { dateSpan, strong, text } from '../../span.ts';
import { duration, shortDate } from '../../words/dates.ts';
import type { Question } from './respond.ts';

const making = /\b(make|making|do|wire|start|finish)\b.*\b(on|next|this)\b/i;
const hasCount = /\b(another|more|extra)\b/i;

export const asksToMake = ({ words, date, number }: Question): boolean =>
  date !== undefined && number === undefined && making.test(words) && !hasCount.test(words);

/** Undefined where the thread has nothing left to plan. */
export const makeDayBlocks = (day: Day, answer: Answer): readonly Block[] | undefined => {
  const { manner } = answer;
  const plan = answer.plan();
  if (!plan || plan.minutesLeft === 0) return undefined;
  const when = dateSpan(shortDate(day, manner));
  const window = text`They may be made from ${dateSpan(shortDate(plan.opens, manner))} and are boarded by ${dateSpan(shortDate(plan.boarded, manner))}.`;
  const line: Block = { block: 'line', line: window };
  if (day < plan.opens) return [{ block: 'answer', line: text`${strong('No')}: ${when} is too early for them.` }, line];
  if (day > plan.boarded) return [{ block: 'answer', line: text`${strong('No')}: ${when} is too late for them.` }, line];
  const minutes = workingDays(answer.benchParts().rules).on(dayNumber(day)).minutes;
  if (minutes === 0) return [{ block: 'answer', line: text`${strong('No')}: nobody is at the bench on ${when}.` }, line];
  return [
    {
      block: 'answer',
      line: text`${strong('Yes')}: on ${when} they may be made; the bench has ${duration(minutes)} that day for all events.`,
    },
    line,
    ...notReady(day, answer),
  ];
};

/** Material that by the calendar is not there or not dry by then. */
const notReady = (day: Day, answer: Answer): readonly Block[] => {
  const ready = answer.plan()?.calendar.filter((step) => step.step === 'material ready' && !step.done && step.date > day) ?? [];
  return ready.map(({ date, material }) => ({
    block: 'line',
    line: text`By the calendar the ${material === undefined ? '' : `${material} `}material is ready on ${dateSpan(shortDate(date, answer.manner))}, so check it first.`,
  }));
};
