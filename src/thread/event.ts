// One event (a wedding or party) as its thread tells it: the fold of the entries. Plain JSON, so a store can keep it as a snapshot.

import type { Hazard } from '../handbook/hazard-words.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { FactOf, RecipeLineFact } from '../reading/fact.ts';
import type { OpenQuestion } from '../reading/reading.ts';
import type { Day } from '../values/day.ts';

/** One line of the order: "8 buttonholes at 18". Amounts are decimal text. */
export interface OrderLine {
  readonly piece: PieceKind;
  readonly count: number;
  readonly countMax?: number;
  readonly approx?: true;
  readonly price?: {
    readonly amount: string;
    readonly amountMax?: string;
    readonly per: 'each' | 'line';
    readonly kind?: 'from' | 'up to' | 'budget';
  };
  readonly material?: Material;
  readonly wearer?: string;
}

/** The price for all lines that have none of their own. */
export interface OrderPrice {
  readonly amount: string;
  readonly amountMax?: string;
  readonly per: 'each' | 'all';
  readonly kind?: 'from' | 'up to' | 'budget';
}

export interface Progress {
  readonly made: number; // whole pieces finished and good
  readonly broke: number; // of those ever made; already taken off `made`
  readonly bases?: number; // of mixed pieces: dried bases made and good, those finished since included
  readonly resumes?: Day; // no work on them before this day
}

/** A step of the calendar as a file held it. */
export interface HeldStep {
  readonly id: string; // lasting within the event
  readonly title: string;
  readonly date: Day;
}

/** What of the calendar was given out of this thread. */
export interface CalendarGiven {
  readonly last: readonly HeldStep[]; // what the newest file or picture showed
  readonly held: readonly HeldStep[]; // every step that any calendar file held, with its newest date
  readonly toldStale?: true; // it has been said that the newest one no longer holds
}

/** Hazards the messages told of and cautions already shown here, each once and in alphabetical order, so that every fold gives the same. */
export interface Care {
  readonly heard: readonly Hazard[];
  readonly shown: readonly string[];
}

export interface EventState {
  readonly title?: string;
  readonly lines: readonly OrderLine[];
  readonly price?: OrderPrice;
  readonly told?: { readonly [piece in PieceKind]?: { readonly amount: string; readonly amountMax?: string } }; // prices each of kinds nobody has counted yet
  readonly tax: { readonly basis?: 'included' | 'on top' | 'none'; readonly rate?: string; readonly name?: string };
  readonly material?: Material;
  readonly date?: Day;
  readonly time?: string;
  readonly handOver?: { readonly date?: Day; readonly time?: string };
  readonly progress: { readonly [piece in PieceKind]?: Progress };
  readonly lately?: { readonly piece: PieceKind; readonly added: number }; // the handful that the last word of progress added: "did another 9"
  readonly latelyBroke?: { readonly piece: PieceKind; readonly count: number }; // what the last word of progress told broken
  readonly recipes: { readonly [piece in PieceKind | 'any']?: readonly RecipeLineFact[] };
  readonly quoted?: FactOf<'quoted'>['packs']; // prices its recipes were costed at; one an item
  readonly rules: readonly FactOf<'rule'>[];
  readonly steps: readonly FactOf<'step'>[];
  readonly wearers: readonly {
    readonly wearer: string;
    readonly count: number;
    readonly approx?: true;
    readonly piece?: PieceKind;
    readonly note?: string;
    readonly names?: readonly string[]; // of the people; may be fewer than there are, or more
  }[];
  readonly wearersSaid?: number; // "so 9": people in all, as somebody said it
  readonly wearersRoughly?: true; // "about 14 wearing"
  readonly actuals: readonly FactOf<'actual'>[];
  readonly care?: Care;
  readonly calendarGiven?: CalendarGiven;
  readonly cancelled?: true;
  readonly open?: OpenQuestion & { readonly askedAt: number }; // epoch milliseconds
}

export const newEvent: EventState = {
  lines: [],
  tax: {},
  progress: {},
  recipes: {},
  rules: [],
  steps: [],
  wearers: [],
  actuals: [],
};
