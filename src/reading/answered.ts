// A number that answers our question, where it may answer another just as well: "ok 400 it is" to “how many?”, "make it 40" to “at what price each?”.

import type { Fact, FactOf } from './fact.ts';
import type { Choice, Reading } from './reading.ts';
import { soMany } from './words/kind-words.ts';

const stating = (facts: readonly Fact[]): Reading => ({ facts, unread: [], asks: [], problems: [] });

// "45", then "make it 40" to "at what price each?": forty of them, or forty each.
const makes = /\b(make|call) (it|that|them|those)\b/i;
const countOrPrice = (fact: FactOf<'price'>): Reading => {
  const { amount, words, per } = fact;
  const marked = fact.currency ?? fact.symbol ?? fact.amountMax;
  if (!makes.test(words) || !/^\d+$/.test(amount) || per === 'all' || marked !== undefined || /\b(each|ea|apiece|per)\b/i.test(words))
    return stating([fact]);
  const choices: Choice[] = [
    { words: soMany(amount), facts: [{ fact: 'change', what: 'count', to: Number(amount), words }] },
    { words: `${amount} each`, facts: [fact] },
  ];
  return { ...stating([]), asks: [{ about: 'count', why: 'which number', words, choices }] };
};

// "ok 400 it is": so many pieces are rare, and it may be what all of them come to. Common practice, no source.
const rareCount = 200;
/** What an answer of one number states, or the question which of two it means. */
export const answered = (fact: Fact): Reading => {
  if (fact.fact === 'price') return countOrPrice(fact);
  if (fact.fact !== 'pieces' || fact.count < rareCount || fact.countMax !== undefined) return stating([fact]);
  const { count, words } = fact;
  const choices: Choice[] = [
    { words: soMany(count), facts: [fact] },
    { words: `${count} in all`, facts: [{ fact: 'price', amount: String(count), per: 'all', words }] },
  ];
  return { ...stating([]), asks: [{ about: 'count', why: 'which number', words, choices }] };
};
