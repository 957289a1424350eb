// Questions about the bench: when to start, what is due, what is left, whether it fits.

import { benchRules, minutesEach } from '../../../planning/bench-rules.ts';
import { dueOn } from '../../../planning/due-on.ts';
import { readyFor, type WhatIf, withMorePieces, withPeopleAway } from '../../../planning/what-if.ts';
import { addDays, type Day, parseDay } from '../../../values/day.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { dateSpan, strong, text } from '../../span.ts';
import { duration, fullDate, shortDate } from '../../words/dates.ts';
import { counted } from '../../words/names.ts';
import { calendarBlocks, startLine } from '../calendar.ts';
import { dueBlocks } from '../due.ts';
import { overloadBlocks } from '../overload.ts';
import { progressBlocks } from '../progress.ts';
import type { Question, Respond } from './questions.ts';

const answerLine = (line: Line): readonly Block[] => [{ block: 'answer', line }];

const noDate = (answer: Answer): readonly Block[] =>
  answerLine(
    answer.event.date
      ? text`There are no pieces in this thread yet. How many?`
      : text`There is no event date in this thread yet. When is it?`,
  );

const start: Respond = (_question, answer) => {
  const plan = answer.plan();
  return plan ? calendarBlocks(plan, answer) : noDate(answer);
};

const latestStart: Respond = (_question, answer) => {
  const plan = answer.plan();
  return plan ? answerLine(startLine(plan, answer.manner)) : noDate(answer);
};

const dayAsked = (question: Question, answer: Answer): Day => (question.date ? parseDay(question.date) : undefined) ?? answer.today;

/** "What's due today?", or over the coming week when no day is named with a range. */
const due: Respond = (question, answer) => {
  const from = dayAsked(question, answer);
  const days = Array.from({ length: Math.max(1, question.number ?? 1) }, (_, index) => addDays(from, index));
  const bench = answer.bench();
  return dueBlocks(
    days.map((day) => ({ day, due: dueOn(bench, day) })),
    answer,
  );
};

const fits: Respond = (question, answer) => {
  const { manner, today } = answer;
  const { events, rules } = answer.benchParts();
  const date = question.date ? parseDay(question.date) : answer.event.date;
  if (question.number !== undefined && date) {
    const more = {
      pieces: question.number,
      date,
      ...(question.piece ? { piece: question.piece } : {}),
      ...(question.material ? { material: question.material } : {}),
    };
    const name = counted(question.number, question.piece ?? 'unspecified', manner.says);
    return whatIfFits(
      withMorePieces(events, rules, today, more),
      text`${strong(name)} more for ${dateSpan(fullDate(date, manner))}`,
      answer,
    );
  }
  if (!date) return noDate(answer);
  const ready = readyFor(answer.bench(), date);
  const when = dateSpan(fullDate(date, manner));
  if (ready.events.length === 0) return answerLine(text`Nothing is to be handed over by ${when}.`);
  if (ready.ready)
    return answerLine(text`${strong('Yes')}: everything for ${when} fits the bench, ${duration(ready.minutesLeft)} of work left.`);
  return [
    ...answerLine(text`${strong('Not yet')}: for ${when} the bench is ${duration(ready.minutesShort)} short.`),
    ...overloadBlocks(answer.bench(), manner),
  ];
};

const away: Respond = (question, answer) => {
  const { events, rules } = answer.benchParts();
  const date = dayAsked(question, answer);
  const people = question.people ?? 1;
  const asked = text`with ${people} away on ${dateSpan(fullDate(date, answer.manner))}`;
  return whatIfFits(withPeopleAway(events, rules, answer.today, { date, people }), asked, answer);
};

const whatIfFits = (tried: WhatIf, asked: Line, answer: Answer): readonly Block[] => {
  const fitsNow = tried.after.fits;
  const verdict = fitsNow
    ? text`${strong('Yes')}, it fits: ${asked}.`
    : text`${strong('No')}: ${asked}, the bench is ${duration(tried.after.minutesShort)} short.`;
  return [
    ...answerLine(verdict),
    ...(fitsNow ? [] : overloadBlocks(tried.after, answer.manner)),
    { block: 'assumed', line: text`Only worked out: nothing has changed.` },
  ];
};

const labourTime: Respond = (question, answer) => {
  const { event, manner, studio } = answer;
  const rules = benchRules(studio);
  const lines =
    question.number === undefined
      ? event.lines
      : [{ piece: question.piece ?? event.lines[0]?.piece ?? ('unspecified' as const), count: question.number }];
  if (lines.length === 0) return answerLine(text`How many pieces? Say “how long will 40 buttonholes take”.`);
  const timed = lines.map((line) => ({ line, each: minutesEach(line.piece, rules) }));
  const minutes = timed.reduce((total, { line, each }) => total + line.count * each.minutes, 0);
  const usual = timed.every(({ each }) => each.own) ? '' : ' (usual minutes, not yours yet)';
  const pieces = lines.map((line) => counted(line.count, line.piece, manner.says)).join(', ');
  const pace = timed[0] && timed.length === 1 ? `, ${timed[0].each.minutes} min each` : '';
  return answerLine(text`${pieces}: ${strong(duration(minutes))} at the bench${pace}${usual}.`);
};

const remaining: Respond = (_question, answer) => (answer.event.lines.length === 0 ? noDate(answer) : progressBlocks(answer));

/** The steps of this name, or the whole calendar when there is none. */
const stepsNamed =
  (...names: readonly string[]): Respond =>
  (_question, answer) => {
    const plan = answer.plan();
    if (!plan) return noDate(answer);
    const steps = plan.calendar.filter((step) => names.includes(step.step));
    if (steps.length === 0) return calendarBlocks(plan, answer);
    return steps.map((step, index): Block => {
      const range = step.days ? ` (${step.days.least} to ${step.days.most} days)` : '';
      const line = text`${step.step}: ${strong(shortDate(step.date, answer.manner))}${range}${step.late ? ', already late' : ''}.`;
      return index === 0 ? { block: 'answer', line } : { block: 'line', line };
    });
  };

/** The calendar as a file: its day to start by as the answer, its steps in words for whoever cannot open it. */
const fileOf =
  (kind: 'calendar' | 'picture', name: string, what: string): Respond =>
  (_question, answer) => {
    const plan = answer.plan();
    if (!plan) return noDate(answer);
    const steps = plan.calendar.filter((step) => !step.done).map((step) => `${step.step} ${shortDate(step.date, answer.manner)}`);
    return [
      ...answerLine(startLine(plan, answer.manner)),
      { block: 'file', file: { kind, name, alt: `${what}: ${steps.reverse().join(', ')}.` } },
    ];
  };

export const benchQuestions = {
  start,
  latestStart,
  due,
  fits,
  away,
  labourTime,
  remaining,
  orderBy: stepsNamed('order by'),
  drying: stepsNamed('hang or treat', 'check the drying'),
  calendar: fileOf(
    'calendar',
    'make-ahead.ics',
    'The make-ahead calendar as a file for your own calendar; import it again after a change and it updates',
  ),
  picture: fileOf('picture', 'make-ahead.png', 'The make-ahead calendar as a picture'),
} satisfies Readonly<Record<string, Respond>>;
