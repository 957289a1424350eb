// "Price for 20 bouts?", asked back "at what price each?", then "14": the price is that of the 20 that were asked about.

import type { Fact } from './fact.ts';
import type { OpenQuestion, Reading } from './reading.ts';

const tells = /^(price|tax)$/; // nothing else of the message may speak of other pieces

/** The reading with the pieces our question was about, where it answers with a price or with the tax alone. */
export const withPiecesAsked = (read: Reading, open: OpenQuestion | undefined): Reading => {
  if (open?.kind !== 'missing' || open.count === undefined || read.asks.length + read.problems.length + read.unread.length > 0) return read;
  const [first] = read.facts;
  const { piece = 'unspecified', count } = open;
  const isAnswer = (fact: Fact): boolean =>
    tells.test(fact.fact) && !(fact.fact === 'price' && ((fact.piece ?? piece) !== piece || (fact.amounts?.length ?? 0) > 1));
  if (first === undefined || !read.facts.every(isAnswer)) return read;
  return { ...read, facts: [{ fact: 'pieces', piece, count, words: first.words }, ...read.facts], answersOpen: true };
};
