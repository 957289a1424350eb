// The calendar as a file for a calendar program, or as a picture: every step in words for whoever cannot open it, then the file itself.

import type { EventPlan } from '../../../planning/bench-plan.ts';
import type { Answer } from '../../answer.ts';
import type { Block } from '../../reply.ts';
import { lineToText } from '../../reply-to-text.ts';
import { strong, text } from '../../span.ts';
import { fullDate, shortDate } from '../../words/dates.ts';
import { stepDetail, stepTitle } from '../../words/steps.ts';
import { startLine, stepsTable } from '../calendar.ts';
import { aheadBlocks } from '../fresh-ahead.ts';
import { noPlan } from './no-plan.ts';
import type { Respond } from './respond.ts';

const icsName = 'make-ahead.ics';

export const calendarFile: Respond = (_question, answer) => {
  const plan = answer.plan();
  if (!plan) return withdrawingFile(answer) ?? noPlan(answer);
  const alt = 'The make-ahead calendar for your own calendar. After a change, import the new one: it updates what is there.';
  return [
    { block: 'answer', line: startLine(plan, answer.manner) },
    ...aheadBlocks(plan, answer.manner),
    stepsTable(plan, answer.manner),
    { block: 'file', file: { kind: 'calendar', name: icsName, alt } },
  ];
};

/** A cancelled event whose dates stand in somebody's calendar: a file that takes them out. */
const withdrawingFile = ({ event, manner }: Answer): readonly Block[] | undefined => {
  const held = event.calendarGiven?.held ?? [];
  if (!event.cancelled || held.length === 0) return undefined;
  const when = event.date ? text` of ${strong(fullDate(event.date, manner))}` : [];
  return [
    { block: 'answer', line: text`The event${when} is off: this file takes its dates out of your calendar.` },
    { block: 'file', file: { kind: 'calendar', name: icsName, alt: 'The same calendar with every step cancelled.' } },
  ];
};

export const calendarPictureOf: Respond = (_question, answer) => {
  const plan = answer.plan();
  if (!plan) return noPlan(answer);
  return [
    { block: 'answer', line: startLine(plan, answer.manner) },
    ...aheadBlocks(plan, answer.manner),
    {
      block: 'file',
      file: { kind: 'picture', name: 'make-ahead.png', alt: `The make-ahead calendar as a picture: ${inWords(plan, answer)}.` },
    },
  ];
};

/** All that the picture shows. */
const inWords = (plan: EventPlan, { manner }: Answer): string =>
  plan.calendar
    .filter((step) => !step.done)
    .reverse()
    .map((step) => {
      const detail = step.step === 'bench' ? ` (${lineToText(stepDetail(step, manner))})` : '';
      return `${stepTitle(step, plan.calendar).toLowerCase()} ${shortDate(step.date, manner)}${detail}`;
    })
    .join(', ');
