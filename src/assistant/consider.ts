// Works out what an event comes to: its price now, and, when somebody looks, the bench over all open events of the workspace.

import { buyForEvents, type EventWithRecipe, studioPrices } from '../buying/buy-for-events.ts';
import { fitEvent } from '../buying/fit-event.ts';
import { quotedPrices } from '../buying/quoted-prices.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { BenchPlan, EventPlan } from '../planning/bench-plan.ts';
import { type BenchRules, benchRules } from '../planning/bench-rules.ts';
import { type EventToPlan, eventToPlan } from '../planning/event-to-plan.ts';
import { planBench } from '../planning/plan-bench.ts';
import { priceEvent } from '../pricing/price-event.ts';
import { type Answer, mannerOf, type NamedEvent } from '../reply/answer.ts';
import { eventTitle } from '../reply/words/title.ts';
import type { StudioState } from '../studio/studio.ts';
import { standing } from '../thread/effective.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import type { OpenEvent, Store, ThreadKey } from './ports.ts';

/** How the bench names an event: its place within the workspace. */
export const benchKey = (key: ThreadKey): string => `${key.channel}/${key.thread}`;

export type Considered = Pick<
  Answer,
  | 'price'
  | 'bench'
  | 'plan'
  | 'benchParts'
  | 'prices'
  | 'quotedPrices'
  | 'fitting'
  | 'buying'
  | 'openEvents'
  | 'pastEvents'
  | 'titleOf'
  | 'standing'
  | 'manner'
  | 'event'
  | 'studio'
  | 'today'
>;

export const consider = (store: Store, key: ThreadKey, event: EventState, studio: StudioState, today: Day): Considered => {
  const manner = mannerOf(studio);
  const own = benchKey(key);
  const rules = benchRules(studio);
  const open = once(() => withOwn(store.openEvents(key.workspace, today), key, event));
  // Of two events on one day the newer gives way: it takes earlier bench days, and what the older one was told still holds.
  const events = once(() => toPlan(open().toReversed(), studio, rules));
  const bench = once((): BenchPlan => planBench(events(), rules, today));
  const naming = (one: OpenEvent): NamedEvent => ({
    key: benchKey(one.key),
    title: eventTitle(one.state, manner),
    state: one.state,
    in: one.key,
  });
  const named = once(() => open().map(naming));
  const prices = once(() => studioPrices(studio));
  const price = priceEvent(studio.settings, event, today);
  const toBuy = (one: OpenEvent): EventWithRecipe => {
    const steps = bench().of(benchKey(one.key))?.calendar ?? [];
    return { id: benchKey(one.key), state: one.state, orderBy: steps.find((step) => step.step === 'order by')?.date };
  };
  return {
    event,
    studio,
    today,
    manner,
    price,
    bench,
    plan: (): EventPlan | undefined => (event.date && event.lines.length > 0 ? bench().of(own) : undefined),
    benchParts: () => ({ events: events(), rules }),
    prices,
    quotedPrices: once(() => quotedPrices(event, studio, prices())),
    fitting: perPiece((piece) => fitEvent(event, price, prices().items, piece)),
    buying: {
      all: once(() => buyForEvents(open().map(toBuy), prices())),
      own: once(() => buyForEvents([toBuy({ key, state: event })], prices())),
    },
    openEvents: named,
    pastEvents: once(() => withOwn(store.openEvents(key.workspace, firstDay), key, event).map(naming)),
    titleOf: (wanted) => named().find((one) => one.key === wanted)?.title ?? 'this event',
    standing: () => standing(store.entries(key)),
  };
};

const firstDay = '0001-01-01' as Day; // before any event

/** The open events with this one as it is about to be, in its own place: who looks must not change the plan. */
const withOwn = (stored: readonly OpenEvent[], key: ThreadKey, event: EventState): readonly OpenEvent[] => {
  const own = benchKey(key);
  const isOwn = (one: OpenEvent): boolean => benchKey(one.key) === own;
  const worthListing = (event.lines.length > 0 || event.date !== undefined) && !event.cancelled;
  if (!worthListing) return stored.filter((one) => !isOwn(one));
  return stored.some(isOwn) ? stored.map((one) => (isOwn(one) ? { key, state: event } : one)) : [...stored, { key, state: event }];
};

/** Worked out once for a snapshot and a studio: the store hands out the same object while nothing changed. */
const readied = new WeakMap<StudioState, WeakMap<EventState, EventToPlan | undefined>>();

const toPlan = (open: readonly OpenEvent[], studio: StudioState, rules: BenchRules): readonly EventToPlan[] => {
  const known = readied.get(studio) ?? new WeakMap<EventState, EventToPlan | undefined>();
  readied.set(studio, known);
  return open.flatMap(({ key, state }) => {
    const name = benchKey(key);
    const before = known.get(state);
    if (before?.key === name) return before;
    const ready = eventToPlan(name, state, studio, rules);
    known.set(state, ready);
    return ready ?? [];
  });
};

const once = <T>(work: () => T): (() => T) => {
  let done: { readonly value: T } | undefined;
  return () => {
    done ??= { value: work() };
    return done.value;
  };
};

/** Worked out once for each kind asked about. */
const perPiece = <T>(work: (piece: PieceKind | undefined) => T): ((piece?: PieceKind) => T) => {
  const done = new Map<PieceKind | undefined, T>();
  return (piece) => {
    if (!done.has(piece)) done.set(piece, work(piece));
    return done.get(piece) as T;
  };
};
