// "2 wrist 2 pin on" behind "4 corsages": those are they, and no four more. Where the numbers do not agree it is asked.

import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import { soMany } from '../reading/words/kind-words.ts';
import { ordered } from './apply-progress.ts';
import type { EventState } from './event.ts';

type Pieces = FactOf<'pieces'>;

const isSort = (fact: Fact): fact is Pieces =>
  fact.fact === 'pieces' &&
  (fact.piece === 'wrist corsage' || fact.piece === 'pin corsage') &&
  fact.price === undefined &&
  fact.countMax === undefined &&
  fact.material === undefined &&
  fact.adds === undefined;

const asSort = ({ piece, count, words }: Pieces): Fact => ({
  fact: 'change',
  what: 'piece',
  from: 'corsage',
  to: piece,
  piece: 'corsage',
  some: count,
  words,
});

/** Of an order that holds corsages of no told sort. With a price said it may be either, however the numbers agree. */
export const sortsInOrder = (state: EventState, facts: readonly Fact[]): { readonly facts: readonly Fact[]; readonly ask?: Ask } => {
  const sorts = facts.filter(isSort);
  const all = ordered(state, 'corsage');
  const told = sorts.reduce((sum, { count }) => sum + count, 0);
  if (all === 0 || sorts.length === 0 || told > all) return { facts };
  if (facts.some((fact) => fact.fact === 'pieces' && !isSort(fact))) return { facts };
  if (sorts.some(({ piece }) => state.lines.some((line) => line.piece === piece))) return { facts };
  const prices = facts.filter((fact) => fact.fact === 'price');
  const others = facts.filter((fact) => !isSort(fact) && fact.fact !== 'price');
  if (
    prices.length > 1 ||
    prices.some(({ per, piece, amounts, amountMax }) => per === 'all' || (piece ?? amounts ?? amountMax) !== undefined)
  )
    return { facts };
  // Prices go in before corrections: the sorts told are there only after them.
  const repriced = sorts.flatMap(({ piece }) =>
    prices.map(({ amount, words }): Fact => ({ fact: 'change', what: 'price', to: amount, per: 'each', piece, words })),
  );
  const [price] = prices;
  const own = price === undefined ? {} : { price: { amount: price.amount, per: 'each' as const } };
  if (told === all && prices.length === 0) return { facts: [...others, ...sorts.map(asSort)] };
  const [first] = sorts;
  const names = sorts.map(({ count, piece }) => soMany(count, piece)).join(' and ');
  return {
    facts: others,
    ask: {
      about: 'count',
      why: 'which number',
      words: first?.words ?? '',
      choices: [
        { words: `${told} of the ${soMany(all, 'corsage')}`, facts: [...sorts.map(asSort), ...repriced] },
        { words: `${names} more`, facts: sorts.map((fact) => ({ ...fact, ...own, adds: true as const })) },
      ],
    },
  };
};
