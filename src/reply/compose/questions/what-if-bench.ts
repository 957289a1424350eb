// "Are we OK for Saturday?", "can we take another 30 for the 20th?", "what if one of us is away Thursday?": worked out on a copy of the bench, never stored.

import type { BenchPlan, EventPlan } from '../../../planning/bench-plan.ts';
import { extraKey, readyFor, type WhatIf, withMorePieces, withOnly, withPeopleAway } from '../../../planning/what-if.ts';
import type { Day } from '../../../values/day.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { dateSpan, joined, ownWords, strong, text } from '../../span.ts';
import { duration, fullDate, shortDate } from '../../words/dates.ts';
import { counted } from '../../words/names.ts';
import { lateBlocks } from '../late.ts';
import { overloadBlocks } from '../overload.ts';
import { dayNamed } from './day-asked.ts';
import { asksToMake, makeDayBlocks } from './make-day.ts';
import { noPlan } from './no-plan.ts';
import type { Question, Respond } from './respond.ts';

const onlyWorkedOut: Block = { block: 'assumed', line: text`Only worked out: nothing has changed.` };

export const fits: Respond = (question, answer) => {
  const date = dayNamed(question, answer) ?? answer.event.date;
  if (!date) return noPlan(answer);
  const making = asksToMake(question) ? makeDayBlocks(date, answer) : undefined;
  if (making) return making;
  return question.number === undefined ? readyBy(date, answer) : morePieces(question, question.number, date, answer);
};

const readyBy = (date: Day, answer: Answer): readonly Block[] => {
  const { manner } = answer;
  const bench = answer.bench();
  const ready = readyFor(bench, date);
  const when = dateSpan(fullDate(date, manner));
  if (ready.events.length === 0)
    return [{ block: 'answer', line: text`${strong('Yes')}: nothing is to be handed over by ${when}.` }, ...nextEvent(bench, date, answer)];
  const names = joined(
    ready.events.slice(0, 3).map(({ key }) => [ownWords(answer.titleOf(key))]),
    ', ',
  );
  if (ready.minutesShort > 0) {
    return [
      { block: 'answer', line: text`${strong('No')}: for ${when} the bench is ${strong(duration(ready.minutesShort))} short.` },
      ...shortOnes(ready.events, answer),
      ...overloadBlocks(bench, answer, ready.events.find((event) => !event.fits)?.key),
    ];
  }
  const late = ready.events.flatMap((event) => lateBlocks(event, manner));
  const work = ready.minutesLeft === 0 ? text`every piece is made` : text`it fits the bench, ${duration(ready.minutesLeft)} of work left`;
  if (!ready.ready || late.length > 0) {
    return [{ block: 'answer', line: text`${strong('Only just')}: for ${when} ${work}, but something is late.` }, ...late.slice(0, 4)];
  }
  return [
    { block: 'answer', line: text`${strong('Yes')}: for ${when} ${work}.` },
    { block: 'line', line: text`${names}.` },
  ];
};

/** Where several events are short, each by name; the cures that follow are the first one's. */
const shortOnes = (events: readonly EventPlan[], { titleOf }: Answer): readonly Block[] => {
  const short = events.filter((event) => !event.fits);
  if (short.length < 2) return [];
  const items = short.slice(0, 3).map((event) => text`${ownWords(titleOf(event.key))} ${duration(event.minutesShort)}`);
  return [{ block: 'line', line: text`${joined(items, ', ')}${short.length > 3 ? `, and ${short.length - 3} more` : ''}. The first:` }];
};

const nextEvent = (bench: BenchPlan, after: Day, answer: Answer): readonly Block[] => {
  const next = bench.events.find((event) => event.handOver > after);
  if (!next) return [];
  const state = next.fits ? 'fits the bench' : `is ${duration(next.minutesShort)} short at the bench`;
  return [
    {
      block: 'line',
      line: text`Next: ${ownWords(answer.titleOf(next.key))}, handed over ${dateSpan(shortDate(next.handOver, answer.manner))}, ${state}.`,
    },
  ];
};

/** "Another 30" in a thread of one kind is 30 more of that kind and material; what was taken from the thread is said. */
const morePieces = (question: Question, count: number, date: Day, answer: Answer): readonly Block[] => {
  const { event, manner, today } = answer;
  const { events, rules } = answer.benchParts();
  const [line, another] = event.lines;
  const piece = question.piece ?? (another ? undefined : line?.piece);
  const material = question.material ?? (another ? undefined : (line?.material ?? event.material));
  const time = date === event.date ? event.time : undefined;
  const tried = withMorePieces(events, rules, today, {
    pieces: count,
    date,
    ...(piece ? { piece } : {}),
    ...(material ? { material } : {}),
    ...(time === undefined ? {} : { time }),
  });
  const made = material ? `${material}${question.material ? '' : ', like these'}` : 'material not said: room kept for fresh';
  const name = counted(count, piece ?? 'unspecified', manner.says);
  return whatIf(tried, text`${strong(name)} more for ${dateSpan(fullDate(date, manner))} (${made})`, name, answer);
};

export const away: Respond = (question, answer) => {
  const { events, rules } = answer.benchParts();
  const date = dayNamed(question, answer) ?? answer.today;
  const people = peopleAsked(question, rules.people);
  const who = people === 1 ? 'one of you' : `${people} of you`;
  return whatIf(
    withPeopleAway(events, rules, answer.today, { date, people }),
    text`with ${who} away on ${dateSpan(fullDate(date, answer.manner))}`,
    '',
    answer,
  );
};

/** "What if it's just me?" With nothing to make there is nothing to try. */
export const withHands: Respond = (question, answer) => {
  const { events, rules } = answer.benchParts();
  const date = dayNamed(question, answer);
  const people = question.people ?? 1;
  if (events.length === 0) return noPlan(answer);
  const when = date === undefined ? '' : text` on ${dateSpan(fullDate(date, answer.manner))}`;
  return whatIf(
    withOnly(events, rules, answer.today, { people, ...(date === undefined ? {} : { date }) }),
    text`with ${people === 1 ? 'one person' : `${people} people`} at the bench${when}`,
    '',
    answer,
  );
};

/** "Both of us" and "all of us" are no number to the reader. */
const peopleAsked = ({ people, number, words }: Question, all: number): number => {
  if (/\bboth\b/i.test(words)) return 2;
  return /\b(all of us|everyone|everybody|nobody)\b/i.test(words) ? all : (people ?? number ?? 1);
};

const whatIf = (tried: WhatIf, asked: Line, extra: string, answer: Answer): readonly Block[] => {
  const { before, after } = tried;
  const named = { manner: answer.manner, titleOf: (key: string) => (key === extraKey ? `the ${extra}` : answer.titleOf(key)) };
  if (after.fits) {
    return [{ block: 'answer', line: text`${strong('Yes')}, it fits: ${asked}.` }, ...moved(before, after, named), onlyWorkedOut];
  }
  const already = before.fits ? '' : `; it is ${duration(before.minutesShort)} short without that`;
  return [
    { block: 'answer', line: text`${strong('No')}: ${asked}, the bench is ${strong(duration(after.minutesShort))} short${already}.` },
    ...overloadBlocks(after, named, tried.nowShort[0] ?? after.events.find((event) => !event.fits)?.key),
    onlyWorkedOut,
  ];
};

/** The events whose start moves: what the change costs though it fits. */
const moved = (before: BenchPlan, after: BenchPlan, { manner, titleOf }: Pick<Answer, 'manner' | 'titleOf'>): readonly Block[] => {
  const lines = after.events.flatMap((event): Line[] => {
    const start = event.days[0]?.date;
    const was = before.events.find((one) => one.key === event.key)?.days[0]?.date;
    if (start === undefined || start === was) return [];
    const name = ownWords(titleOf(event.key));
    const from = was === undefined ? [] : text` instead of ${dateSpan(shortDate(was, manner))}`;
    return [text`${name}: start on ${strong(shortDate(start, manner))}${from}`];
  });
  return lines.length === 0 ? [] : [{ block: 'line', line: text`${joined(lines.slice(0, 3), '; ')}.` }];
};
