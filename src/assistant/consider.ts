// Works out what an event comes to: its price now, and, when somebody looks, the bench over all open events of the workspace.

import { buyForEvents, type EventWithRecipe, studioPrices } from '../buying/buy-for-events.ts';
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
  | 'buying'
  | 'openEvents'
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
  const events = once(() => toPlan(open(), studio, rules));
  const bench = once((): BenchPlan => planBench(events(), rules, today));
  const named = once(() =>
    open().map((one): NamedEvent => ({ key: benchKey(one.key), title: eventTitle(one.state, manner), state: one.state })),
  );
  const prices = once(() => studioPrices(studio));
  const toBuy = (one: OpenEvent): EventWithRecipe => {
    const steps = bench().events.find((event) => event.key === benchKey(one.key))?.calendar ?? [];
    return { id: benchKey(one.key), state: one.state, orderBy: steps.find((step) => step.step === 'order by')?.date };
  };
  return {
    event,
    studio,
    today,
    manner,
    price: priceEvent(studio.settings, event, today),
    bench,
    plan: (): EventPlan | undefined => (event.date && event.lines.length > 0 ? bench().events.find((one) => one.key === own) : undefined),
    benchParts: () => ({ events: events(), rules }),
    prices,
    buying: {
      all: once(() => buyForEvents(open().map(toBuy), prices())),
      own: once(() => buyForEvents([toBuy({ key, state: event })], prices())),
    },
    openEvents: named,
    titleOf: (wanted) => named().find((one) => one.key === wanted)?.title ?? 'this event',
    standing: () => standing(store.entries(key)),
  };
};

/** The open events with this one as it is about to be, wherever the store still has it as it was. */
const withOwn = (stored: readonly OpenEvent[], key: ThreadKey, event: EventState): readonly OpenEvent[] => {
  const own = benchKey(key);
  const others = stored.filter((one) => benchKey(one.key) !== own);
  const worthListing = event.lines.length > 0 || event.date !== undefined;
  return worthListing && !event.cancelled ? [...others, { key, state: event }] : others;
};

const toPlan = (open: readonly OpenEvent[], studio: StudioState, rules: BenchRules): readonly EventToPlan[] =>
  open.flatMap((one) => eventToPlan(benchKey(one.key), one.state, studio, rules) ?? []);

const once = <T>(work: () => T): (() => T) => {
  let done: { readonly value: T } | undefined;
  return () => {
    done ??= { value: work() };
    return done.value;
  };
};
