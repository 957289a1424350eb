// From what a message says and what the thread holds to what may be stored. Pure: it stores nothing itself.
// Anything that could mean two things in this thread becomes a question; one impossible thing refuses the whole message.

import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask, Reading } from '../reading/reading.ts';
import { decimal } from '../values/decimal.ts';
import type { Problem } from '../values/problem.ts';
import { isStudioFact } from './apply-studio-facts.ts';
import type { EventState } from './event.ts';
import { askFewerPieces } from './fewer-worn.ts';
import { oneQuestion } from './one-question.ts';
import { againInOrder } from './settle-again.ts';
import { askCurrency } from './settle-currency.ts';
import { givenAtPrice } from './settle-given.ts';
import { settleInThread } from './settle-in-thread.ts';
import { sortsInOrder } from './settle-sorts.ts';
import { wornInOrder } from './settle-worn.ts';
import { answeredByOrder } from './up-or-down.ts';

export type Decision =
  | { readonly kind: 'nothing' } // small talk
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | {
      readonly kind: 'settled';
      readonly event: readonly Fact[]; // to be stored for this event
      readonly studio: readonly Fact[]; // to be stored for the whole studio
      readonly questions: readonly FactOf<'question'>[];
      readonly undo: boolean;
      readonly ask: Ask | undefined; // one at a time
      readonly unasked: readonly string[]; // what further questions would have been about
    };

/** `currency`: the studio's own, ISO 4217. */
export const decide = (state: EventState, reading: Reading, currency: string): Decision => {
  if (reading.problems.length > 0) return { kind: 'refused', problems: reading.problems };
  const answered = reading.asks.map((each) => answeredByOrder(state, each));
  const asks: Ask[] = reading.asks.filter((_, at) => answered[at] === undefined);
  const facts: Fact[] = [];
  const { kept, ask } = askCurrency([...reading.facts, ...answered.flatMap((fact) => fact ?? [])], currency);
  const worn = wornInOrder(state, kept);
  const sorts = sortsInOrder(state, worn.facts);
  const again = againInOrder(state, sorts.facts);
  asks.unshift(...[ask, worn.ask, sorts.ask, again.ask].filter((each) => each !== undefined));
  const said = givenAtPrice(state, again.facts);
  for (const fact of said) {
    const settled = settleInThread(state, fact, said);
    if (settled.kind === 'problem') return { kind: 'refused', problems: [settled.problem] };
    if (settled.kind === 'ask') asks.push(settled.ask);
    else facts.push(settled.fact);
  }
  const fewer = askFewerPieces(state, facts);
  if (fewer !== undefined) asks.push(fewer);
  if (facts.length === 0 && asks.length === 0) return { kind: 'nothing' };
  const questions = facts.filter((fact): fact is FactOf<'question'> => fact.fact === 'question');
  const stated = facts.filter((fact) => fact.fact !== 'question' && fact.fact !== 'undo' && !isAlternatives(fact));
  return {
    kind: 'settled',
    event: stated.filter((fact) => !isStudioFact(fact)),
    studio: stated.filter(isStudioFact),
    questions: [...questions, ...facts.filter(isAlternatives).map(asLadder)],
    undo: facts.some((fact) => fact.fact === 'undo'),
    ...oneQuestion(asks),
  };
};

/** "18 or 22 each" names no price yet: both are worked out and neither is stored. */
const isAlternatives = (fact: Fact): fact is FactOf<'price'> => fact.fact === 'price' && (fact.amounts?.length ?? 0) > 1;

const asLadder = (fact: FactOf<'price'>): FactOf<'question'> => {
  const sorted = [...(fact.amounts ?? [fact.amount])].map(decimal).toSorted((a, b) => a.comparedTo(b));
  const [low = decimal(fact.amount), high = low] = [sorted[0], sorted.at(-1)];
  // Two prices are two rows: nobody spoke of those between them.
  const step = sorted.length === 2 && high.gt(low) ? { step: high.minus(low).toFixed() } : {};
  return { fact: 'question', asks: 'ladder', amount: low.toFixed(), amountMax: high.toFixed(), ...step, words: fact.words };
};
