// Everything a reply is composed from: what was said and what it changed, the figures, and how this studio likes things shown.

import type { BuyingList } from '../buying/buying-list.ts';
import type { FitForEvent } from '../buying/fit-event.ts';
import type { PriceList } from '../buying/price-list.ts';
import type { Hazard } from '../handbook/hazard-words.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { BenchPlan, EventPlan } from '../planning/bench-plan.ts';
import type { BenchRules } from '../planning/bench-rules.ts';
import type { EventToPlan } from '../planning/event-to-plan.ts';
import type { PricedEvent } from '../pricing/price-event.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import { dayFirst, says } from '../studio/defaults.ts';
import type { StudioState } from '../studio/studio.ts';
import type { Standing } from '../thread/effective.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { type Decimal, decimal } from '../values/decimal.ts';
import { printMoney } from '../values/money.ts';
import type { Result } from '../values/result.ts';
import type { Place } from './reply.ts';
import type { DateStyle } from './words/dates.ts';
import type { Says } from './words/names.ts';

export interface Answer {
  readonly how: 'stated' | 'edited' | 'withdrawn' | 'undone';
  readonly message?: string; // id of the message answered, for a button that takes it back
  readonly before: EventState;
  readonly event: EventState;
  readonly studio: StudioState;
  readonly stated: readonly Fact[]; // stored now, for the event or the studio
  readonly takenBack: readonly Fact[]; // by an undo
  readonly shared: boolean; // people of another organisation read along: the client's form only
  readonly questions: readonly FactOf<'question'>[];
  readonly unread: readonly string[];
  readonly hazards?: readonly Hazard[]; // the words of this message tell of
  readonly ask: Ask | undefined;
  readonly waiting?: Ask; // a question of ours that this message left unanswered
  readonly today: Day;
  readonly price: Result<PricedEvent> | undefined;
  readonly bench: () => BenchPlan;
  readonly plan: () => EventPlan | undefined; // this event's part of the bench plan
  readonly planBefore?: () => EventPlan | undefined; // as it was before this message
  readonly benchParts: () => { readonly events: readonly EventToPlan[]; readonly rules: BenchRules };
  readonly prices: () => PriceList; // today's
  readonly quotedPrices: () => PriceList; // today's, with the prices this event was quoted at
  readonly pricesBefore: () => PriceList; // today's before this message
  readonly listRead?: number; // rows of a price list this message brought, changed or not
  readonly fitting: (piece?: PieceKind) => FitForEvent | undefined; // recipes from the price list for what this event leaves; undefined before a price
  readonly buying: { readonly all: () => BuyingList; readonly own: () => BuyingList }; // all open events pooled, and this one alone
  readonly openEvents: () => readonly NamedEvent[]; // of this workspace, this one included, by date
  readonly pastEvents: () => readonly NamedEvent[]; // all of this workspace, whenever they are
  readonly titleOf: (key: string) => string; // the name of an event on the bench
  readonly standing: () => readonly Standing[]; // what each message of this thread stands for, oldest first
  readonly manner: Manner;
  readonly summaryAt?: () => Place | undefined; // the thread's summary message, once posted
}

/** Another thread of the workspace as lists name it. */
export interface NamedEvent {
  readonly key: string;
  readonly title: string;
  readonly state: EventState;
  readonly in?: Place; // its thread
}

/** How this studio's figures, dates and pieces are shown. */
export interface Manner extends DateStyle {
  readonly says: Says;
  readonly money: (amount: Decimal | string) => string;
}

export const mannerOf = (studio: StudioState): Manner => ({
  dayFirst: dayFirst(studio.settings),
  says: says(studio.settings),
  money: (amount) => printMoney(decimal(amount), studio.settings.currency),
});
