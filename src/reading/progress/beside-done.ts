// Words beside what is done that say how it counts: "30 done now" is the whole so far, and "17 good ones made" are seventeen made.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import type { Event } from './event.ts';

const goesOn = ({ told, more, of }: Event): boolean => told === 'count' && more !== true && of === undefined;

// "thirty done now", "12 bouts now done"; "6 done just now" are new.
const saysNow = (tokens: readonly Token[], done: Event): boolean => {
  for (let index = done.start; index <= done.end; index++)
    if (tokens[index]?.text === 'now' && tokens[index - 1]?.text !== 'just') return true;
  return false;
};

// "20 good bouts done": the good ones are the kind that stands behind them.
const withoutGood = (events: readonly Event[]): readonly Event[] => {
  const kept: Event[] = [];
  for (let at = 0; at < events.length; at++) {
    const [count, good, next, last] = [events[at] as Event, events[at + 1], events[at + 2], events[at + 3]];
    const behind = next?.told === 'kind' ? last : next;
    if (count.told !== 'count' || count.kind !== undefined || good?.told !== 'good' || behind?.told !== 'done') {
      kept.push(count);
      continue;
    }
    kept.push({ ...count, end: next?.told === 'kind' ? next.end : good.end, ...(next?.kind === undefined ? {} : { kind: next.kind }) });
    at += next?.told === 'kind' ? 2 : 1;
  }
  return kept;
};

// "up to 42 bouts at smoko" says what is made; "up to 42 bouts" may be what is wanted.
const atBreak = pattern(
  '(,|now|already|done|made)? (at|by|before|since|as of) (the|my|our|this|morning|afternoon){0,2} (smoko|lunch|lunchtime|break|breaktime|tea|tea break|teatime|morning tea|noon|midday|now|knock off|close|coffee|elevenses)',
);

// "today total 14 finished", "total today 14": what one day made, and not the whole.
const today = /^(today|today's|todays|tonight)$/;
const ofToday = (tokens: readonly Token[], event: Event, first: boolean): boolean =>
  /^(whole|reach)$/.test(event.told) &&
  tokens.slice(event.start, event.end).some(({ text }) => text === 'total') &&
  ((first && today.test(tokens[event.start - 1]?.text ?? '')) || today.test(tokens[event.end]?.text ?? ''));

/** The events, each count with what the words beside its "done" say of it. */
export const besideDone = (tokens: readonly Token[], events: readonly Event[]): readonly Event[] => {
  const told = (events.some((event) => event.told === 'good') ? withoutGood(events) : events).filter(
    (event, at) => !ofToday(tokens, event, at === 0),
  );
  for (let at = 1; at < told.length; at++) {
    const done = told[at] as Event;
    const reach = told[at - 1] as Event;
    const most = reach.told === 'reach' && reach.doubtful === true && /^(up to|upto|at|on)$/.test(tokens[reach.end - 1]?.text ?? '');
    if (most && done.told === 'count' && atBreak.at(tokens, done.end, tokens.length) !== undefined) {
      const { doubtful: _, ...sure } = reach;
      told[at - 1] = sure;
    }
    if (done.told !== 'done' || told[at - 1]?.told !== 'count' || !saysNow(tokens, done)) continue;
    for (let before = at - 1; before >= 0 && /^(count|join)$/.test(told[before]?.told ?? ''); before--) {
      const count = told[before] as Event;
      if (goesOn(count)) told[before] = { ...count, soFar: true };
    }
  }
  return told;
};
