// Questions about the bench: when to start, what is due, what is left, how long it takes.

import { conditioningHours, conditioningRows } from '../../../handbook/conditioning.ts';
import { dryingTime } from '../../../handbook/drying.ts';
import type { PieceKind } from '../../../handbook/pieces.ts';
import { plantNamed } from '../../../handbook/plants.ts';
import { sourceLine } from '../../../handbook/sources.ts';
import { benchRules, minutesEach } from '../../../planning/bench-rules.ts';
import { capital } from '../../../values/capital.ts';
import type { Answer } from '../../answer.ts';
import type { Block } from '../../reply.ts';
import { assumedSpan, dateSpan, joined, ownWords, strong, text } from '../../span.ts';
import { duration, paceWords, shortDate } from '../../words/dates.ts';
import { counted } from '../../words/names.ts';
import { daysRange } from '../../words/steps.ts';
import { calendarBlocks, startLine } from '../calendar.ts';
import { dueBlocks, dueDays } from '../due.ts';
import { overloadBlocks } from '../overload.ts';
import { progressBlocks } from '../progress.ts';
import { dryingWhy } from '../why-dates.ts';
import { calendarFile, calendarPictureOf } from './calendar-files.ts';
import { daysAsked } from './day-asked.ts';
import { hands } from './hands.ts';
import { noPlan } from './no-plan.ts';
import { answerLine, below, type Respond } from './respond.ts';
import { away, fits, withHands } from './what-if-bench.ts';

const start: Respond = (_question, answer) => {
  const plan = answer.plan();
  return plan ? calendarBlocks(plan, answer) : noPlan(answer);
};

const latestStart: Respond = (_question, answer) => {
  const plan = answer.plan();
  if (!plan) return noPlan(answer);
  return [...answerLine(startLine(plan, answer.manner)), ...(plan.fits ? [] : overloadBlocks(answer.bench(), answer, plan.key))];
};

/** "What's due today?", on a named day, or over a week. */
const due: Respond = (question, answer) => dueBlocks(dueDays(daysAsked(question, answer), answer), answer);

const labourTime: Respond = (question, answer) => {
  if (/\bdry(ing)?\b/i.test(question.words)) return drying(question, answer);
  const { event, manner, studio } = answer;
  const rules = benchRules(studio);
  const lines =
    question.number === undefined
      ? event.lines
      : [{ piece: question.piece ?? event.lines[0]?.piece ?? ('unspecified' as const), count: question.number }];
  if (lines.length === 0) return answerLine(text`How many pieces? Say “how long will 40 buttonholes take”.`);
  const timed = lines.map((line) => ({ line, each: minutesEach(line.piece, rules, event.rules) }));
  const minutes = timed.reduce((total, { line, each }) => total + line.count * each.minutes, 0);
  const usual = timed.every(({ each }) => each.own) ? '' : ' (usual minutes, not yours yet)';
  const pieces = lines.map((line) => counted(line.count, line.piece, manner.says)).join(', ');
  const pace = timed[0] && timed.length === 1 ? `, ${paceWords(timed[0].each.minutes)} each` : '';
  return answerLine(text`${pieces}: ${strong(duration(minutes))} at the bench${pace}${usual}.`);
};

const remaining: Respond = (question, answer) => {
  if (answer.event.lines.length === 0) return noPlan(answer);
  return asksBroken.test(question.words) ? brokenBlocks(answer) : progressBlocks(answer);
};

/** "How many broke?": so many of each kind, then what is made and left. */
const asksBroken = /\b(broke|broken|break|snapped|binned|damaged|lost|ruined|wrecked)\b/i;
const brokenBlocks = (answer: Answer): readonly Block[] => {
  const { event, manner } = answer;
  const lines = (Object.keys(event.progress) as PieceKind[]).flatMap((piece) => {
    const broke = event.progress[piece]?.broke ?? 0;
    return broke > 0 ? [text`${strong(counted(broke, piece, manner.says))} broke`] : [];
  });
  const told = lines.length > 0 ? text`${joined(lines, ', ')}, as far as I was told.` : text`Nothing has broken, as far as I was told.`;
  return [...answerLine(told), ...below(progressBlocks(answer))];
};

/** "When must I order?": each supply's day, and what it waits for where it is already past. */
const orderBy: Respond = (_question, answer) => {
  const plan = answer.plan();
  if (!plan) return noPlan(answer);
  const orders = plan.calendar.filter((step) => step.step === 'order by').reverse();
  const [first] = orders;
  if (!first) return calendarBlocks(plan, answer);
  if (orders.every((step) => step.done)) return answerLine(text`Everything is ordered.`);
  return orders
    .filter((step) => !step.done)
    .map((step, index): Block => {
      const what = orders.length > 1 && step.material ? ` the ${step.material} stems` : '';
      const assumed = step.assumed ? ' (delivery time assumed: 3 working days)' : '';
      const late = step.late ? ', which is past: today is the next best' : '';
      const line = text`Order${what} by ${strong(shortDate(step.date, answer.manner))}${late}${assumed}.`;
      return index === 0 ? { block: 'answer', line } : { block: 'line', line };
    });
};

/** "When do we hang them, how long do they dry?" with the figures' sources. */
const drying: Respond = (question, answer) => {
  const plan = answer.plan();
  const own = question.item === undefined ? [] : dryingOf(question.item, answer);
  const whole = allDrying(answer);
  if (own.length === 0) return whole;
  return plan ? [...own, ...below(whole)] : own;
};

/** "How long does statice take": its own days, before what the whole event waits for. */
const dryingOf = (item: string, answer: Answer): readonly Block[] => {
  const { least, most, by } = dryingTime(item, 'hang', benchRules(answer.studio).drying);
  const days = text`${capital(ownWords(item).text)}: ${strong(daysRange(least, most))} hung up to dry`;
  const note = {
    'the studio': ', your own figure',
    'this plant': '',
    'the method': '; it has no days of its own here, so this is the range for hanging',
  };
  return answerLine(text`${days}${note[by]}.`);
};

const allDrying = (answer: Answer): readonly Block[] => {
  const plan = answer.plan();
  if (!plan) return noPlan(answer);
  const hang = plan.calendar.find((step) => step.step === 'hang or treat');
  const check = plan.calendar.find((step) => step.step === 'check the drying');
  if (!hang || !check || !hang.days) return answerLine(text`There is nothing to dry for this event.`);
  const style = answer.manner;
  if (check.done) return answerLine(text`The drying is done.`);
  const ready = check.between ? text`, dry by ${dateSpan(shortDate(check.between.to, style))} at the latest` : [];
  const first = hang.done ? text`They are hung.` : text`Hang them by ${strong(shortDate(hang.date, style))}.`;
  return [...answerLine(text`${first} Begin checking on ${strong(shortDate(check.date, style))}${ready}.`), ...dryingWhy(hang)];
};

/** "When do they go in water, and how long?": the step of the calendar, with the hours and where they come from. */
const inWater: Respond = (question, answer) => {
  const { least, most, rows } = conditioningHours;
  const own = question.item === undefined ? undefined : conditioningRows.find(({ plant }) => plant === plantNamed(question.item ?? ''));
  const step = answer.plan()?.calendar.find((one) => one.step === 'condition');
  const hours = own
    ? text`${capital(ownWords(question.item ?? '').text)}: ${strong(`${own.least} h`)} in water${own.note ? `, ${own.note}` : ''}`
    : text`${strong(`${least} to ${most} h`)} in water, best overnight; sources differ`;
  const when = step ? text`In water by ${strong(shortDate(step.date, answer.manner))}${step.done ? ', done' : ''}. ` : [];
  return [
    ...answerLine(text`${when}${hours}.`),
    { block: 'list', items: (own ? [own] : rows).map(({ source }) => text`${assumedSpan(sourceLine(source))}`) },
  ];
};

export const benchQuestions = {
  inWater,
  start,
  latestStart,
  due,
  fits,
  away,
  withHands,
  hands,
  labourTime,
  remaining,
  orderBy,
  drying,
  calendar: calendarFile,
  picture: calendarPictureOf,
} satisfies Readonly<Record<string, Respond>>;
