// What would make a full bench fit, in words a bench would use. Each cure is enough by itself.

import { keepingDaysAhead } from '../../handbook/make-ahead.ts';
import type { BenchPlan } from '../../planning/bench-plan.ts';
import type { Cure, PiecesOf } from '../../planning/cures.ts';
import type { Day } from '../../values/day.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { countSpan, dateSpan, joined, ownWords, strong, text } from '../span.ts';
import { duration, shortDate } from './dates.ts';
import { counted } from './names.ts';

type Told = Pick<Answer, 'manner' | 'titleOf'> & { readonly about?: string }; // the event asked about needs no name

/** Nobody adds more than this to one day for each person there is: a longer day is no cure, even if the sum comes right. */
const mostAdded = 12 * 60; // minutes

/** A cure that touches more lines than these is a list to work through, not an answer; making none at all is no cure either. */
const mostLines = 4;

export const isOffered = (cure: Cure, bench: BenchPlan): boolean => {
  if (cure.cure === 'add hours') return cure.on.every(({ minutes }) => minutes <= mostAdded * Math.max(1, bench.rules.people));
  if (cure.cure === 'move to dried') return cure.moves.length <= mostLines;
  return cure.cure !== 'fewer pieces' || (cure.drops.length <= mostLines && cure.drops.some(({ keeps }) => keeps > 0));
};

export const cureWords = (cure: Cure, bench: BenchPlan, told: Told): Line => {
  switch (cure.cure) {
    case 'add hours':
      return text`${strong(duration(cure.minutes))} more at the bench${hoursOn(cure.on, told.manner)}`;
    case 'board later':
      return boardLater(cure.workingDaysBefore, bench);
    case 'make fresh earlier':
      return text`make the fresh ones ${cure.days === 1 ? 'a day' : `${cure.days} days`} earlier and keep them cool, up to ${cure.hoursAhead} h ahead${of(cure.keys, bench, told)}`;
    case 'move to dried':
      return pieces('buy', cure.moves, 'ready dried', 'stay fresh', bench, told);
    case 'fewer pieces':
      return pieces('make', cure.drops, 'fewer', 'fit', bench, told);
  }
};

const hoursOn = (on: readonly { readonly date: Day; readonly minutes: number }[], style: Manner): Line => {
  const [first] = on;
  const last = on.at(-1);
  if (!first || !last) return [];
  if (on.length === 1) return text` on ${dateSpan(shortDate(first.date, style))}`;
  if (on.length > 3)
    return text`, spread over ${on.length} days from ${dateSpan(shortDate(first.date, style))} to ${dateSpan(shortDate(last.date, style))}`;
  const days = on.map(({ date, minutes }) => text`${dateSpan(shortDate(date, style))} ${duration(minutes)}`);
  return text`: ${joined(days, ', ')}`;
};

const boardLater = (before: number, bench: BenchPlan): Line => {
  const usual = bench.rules.boardedDaysBefore ?? keepingDaysAhead.dried.boarded;
  const when = before === 0 ? 'on the day they are handed over' : `${before} working ${before === 1 ? 'day' : 'days'} before`;
  return text`board the dried ones ${when} instead of ${usual} working days before`;
};

const pieces = (verb: string, all: readonly PiecesOf[], how: string, rest: string, bench: BenchPlan, told: Told): Line =>
  joined(
    all.map((one) => {
      const name = countSpan(counted(one.pieces, one.piece, told.manner.says));
      return text`${verb} ${name} ${how}${one.keeps > 0 ? ` (${one.keeps} ${rest})` : ''}${of([one.key], bench, told)}`;
    }),
    ', ',
  );

/** An event is named only where the bench holds several, and not the one that was asked about. */
const of = (keys: readonly string[], bench: BenchPlan, { titleOf, about }: Told): Line => {
  const others = keys.filter((key) => key !== about);
  if (bench.events.length < 2 || others.length === 0) return [];
  return text`: ${joined(
    others.slice(0, 3).map((key) => [ownWords(titleOf(key))]),
    ', ',
  )}`;
};
