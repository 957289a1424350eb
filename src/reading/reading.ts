// What reading one message gives, and what it may lean on.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Day } from '../values/day.ts';
import type { Problem } from '../values/problem.ts';
import type { Fact } from './fact.ts';

/** Why we ask instead of storing. */
export type AskReason =
  | 'each or all' // "12 bouts 12 bucks"
  | 'sum or total' // "10 bouts at 14 and 4 corsages at 30, total 300"
  | 'which month' // "on the 27th"
  | 'which day' // "bank holiday monday in may", "wed" on a Wednesday, a weekday that disagrees
  | 'which date' // two dates
  | 'day or month first'
  | 'which piece'
  | 'which number' // one number, two readings
  | 'low or high' // "10-12 bouts done, lost count"
  | 'this or that' // "1 protea or 2 blushing brides in each lapel"
  | 'finished or begun' // "two dozen wired, none taped yet"
  | 'other currency'
  | 'which material'
  | 'which rate' // of tax, for a mixed piece
  | 'which recipe' // of those proposed
  | 'which recipe lines' // one more in it, or all of it
  | 'instead of which' // "use spray roses instead" where several could go
  | 'spent on what' // "spent 182.40": the stems, or everything
  | 'plan with this' // minutes and spares a look-back taught
  | 'really forget' // everything kept of the event
  | 'ordered or not' // "they might want 4 crowns"
  | 'fewer pieces' // "only 2 groomsmen now": of three with a piece each
  | 'part left' // "13 bouts at 9.75, plus the groom's at £14", with the last unread
  | 'did you mean';

/** One answer a person may choose. `words` is what they can type instead of tapping; choosing it states `facts`. */
export interface Choice {
  readonly words: string;
  readonly facts: readonly Fact[];
}

export interface Ask {
  readonly about: 'price' | 'date' | 'count' | 'piece' | 'material' | 'made' | 'tax' | 'item' | 'event';
  readonly why: AskReason;
  readonly words: string; // the words in question
  readonly choices: readonly Choice[];
}

export interface Reading {
  readonly facts: readonly Fact[];
  /** Words with digits or trade meaning that no fact used. */
  readonly unread: readonly string[];
  readonly asks: readonly Ask[];
  /** What was said but cannot be: 31 February, −5 pieces. The facts beside it were read too, but nothing of such a message is stored. */
  readonly problems: readonly Problem[];
  /** It answers the question that was open. */
  readonly answersOpen?: true;
  /** Some of its words were taken for talk, or for what is another's. */
  readonly setAside?: true;
}

/** What the reader may lean on; nothing else. Pure: the day comes in, the clock does not. */
export interface ReadingContext {
  readonly today: Day;
  readonly dayFirst: boolean;
  readonly currency: string; // the studio's, ISO 4217
  readonly region: string; // ISO 3166-1 alpha-2, for public-holiday names and tax words
  readonly open: OpenQuestion | undefined;
  readonly pieces: readonly PieceKind[]; // the kinds the thread already holds
  readonly wearers?: readonly string[]; // who is on the thread's list of wearers
  readonly eventDate: Day | undefined; // the thread's, for "moved to the 19th"
  readonly items: readonly string[]; // names on the studio's price list
  readonly inRecipe?: readonly string[]; // what the thread's recipes take
  readonly unpriced?: readonly string[]; // of those, what has no price yet
}

/** What the bot last asked in this thread and is still waiting for. `topic`: what its last answer was about, for "is that everything".
 * `tried`: what its last answer only worked out, for "yes do that". */
export type OpenQuestion = { readonly topic?: 'buying'; readonly tried?: readonly Fact[] } & (
  | { readonly kind: 'choice'; readonly ask: Ask }
  // `piece`: how many of it. `count`: what so many of it cost was asked, in a thread without an order
  | {
      readonly kind: 'missing';
      readonly about: 'count' | 'price' | 'date' | 'material' | 'piece';
      readonly piece?: PieceKind;
      readonly count?: number;
    }
  | { readonly kind: 'pack'; readonly item: string; readonly per?: string } // how many are in one
  | { readonly kind: 'topic' } // nothing was asked
);
