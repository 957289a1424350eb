// Counted pieces with the word that says what became of them, and what may still follow: "… on the crowns", "… to replace the broken ones".

import type { Unworded } from '../phrase.ts';
import type { Event } from './work-events.ts';
import { factOf } from './work-items.ts';

export interface Group {
  readonly start: number;
  readonly end: number;
  readonly facts: readonly Unworded[];
  readonly reach?: true; // the whole so far: it takes the place of the handful before it
}
/** What the sentence says beside: the step of a word, whether a break is a line, whether "so far" or "now" stands in it. */
export interface Beside {
  stageOf(event: Event): string;
  line(event: Event): boolean;
  colon(event: Event): boolean;
  readonly soFar: boolean;
  readonly countFirst: boolean; // a number opens it
}

export interface Taken {
  readonly group: Group;
  readonly next: number;
}

export const endOf = (events: readonly Event[], next: number): number => (events[next - 1] as Event).end;

export const together = (
  events: readonly Event[],
  items: readonly Event[],
  word: Event,
  next: number,
  start: number,
  beside: Beside,
): Taken => {
  let last = next;
  let told = word.told === 'down' ? 'done' : word.told;
  let own = items;
  const [only] = items;
  const named = events[last]?.kind;
  if (events[last]?.told === 'kind' && items.length === 1 && only !== undefined && only.kind === undefined && named !== undefined) {
    own = [{ ...only, kind: named }];
    last += 1;
  }
  if ((told === 'done' || told === 'did') && events[last]?.told === 'instead') {
    told = 'again';
    last += 1;
  }
  // "fixed the 3 that came apart"
  if (told === 'again' && word.start < (only?.start ?? 0) && events[last]?.told === 'lost') last += 1;
  // "two snapped, made two new ones"
  if (
    (told === 'did' || told === 'done') &&
    only?.fresh === true &&
    word.start < only.start &&
    events.some((event) => event.told === 'lost')
  )
    told = 'again';
  // "12 down, 4 to go on the combs"
  const later = events.slice(next).find((event) => event.told === 'kind')?.kind;
  if (word.told === 'down' && only?.kind === undefined && only !== undefined && later !== undefined) own = [{ ...only, kind: later }];
  // "that's another dozen done" is no whole.
  if (told === 'reach' && own.some((item) => item.more)) told = 'did';
  const facts = own.map((item) => factOf(told, item, beside.stageOf(word)));
  // "all 14 corsages done", "that's all 4 crowns done", and "all 5 crowns and 20 of the bouts done"
  const finished = told === 'done' || (told === 'reach' && events[last - 1]?.told === 'done' && !beside.soFar);
  for (const [at, fact] of facts.entries())
    if (finished && fact.fact === 'made' && own[at]?.told === 'count' && own[at]?.all === true) facts[at] = { ...fact, all: true };
  return {
    group: { start, end: endOf(events, last), facts, ...(told === 'reach' || told === 'whole' ? { reach: true } : {}) },
    next: last,
  };
};
