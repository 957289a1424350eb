// Which words gave which fact, what was asked and what was left unread, for whoever adds a phrase.

import type { Fact } from '../../../src/reading/fact.ts';
import { readPhrases } from '../../../src/reading/read-message.ts';
import type { Ask, ReadingContext } from '../../../src/reading/reading.ts';

export interface Explained {
  readonly words: string; // the person's own
  readonly phrase: string; // the phrase that took them
  readonly facts: readonly Fact[];
  readonly asks: readonly Ask[];
}

export interface Explanation {
  readonly read: readonly Explained[];
  readonly unread: readonly string[];
}

/** How a message was read. Phrases that only set words aside (other people's numbers) are left out. */
export const explain = (text: string, context: ReadingContext): Explanation => {
  const { trace, unread } = readPhrases(text, context);
  const read = trace.filter((each) => each.facts.length > 0 || each.asks.length > 0);
  return { read, unread };
};
