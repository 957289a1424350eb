// "2 wrist 2 pin on" behind "4 corsages": those are they, and no four more. Where the numbers do not agree it is asked.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import { ordered } from './apply-progress.ts';
import type { EventState } from './event.ts';
import { kindWords } from './kind-words.ts';

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

const many = (count: number, piece: PieceKind): string => `${count} ${kindWords(piece, count)}`;

/** Of an order that holds corsages of no told sort. A message that says a price orders. */
export const sortsInOrder = (state: EventState, facts: readonly Fact[]): { readonly facts: readonly Fact[]; readonly ask?: Ask } => {
  const sorts = facts.filter(isSort);
  const all = ordered(state, 'corsage');
  const told = sorts.reduce((sum, { count }) => sum + count, 0);
  if (all === 0 || sorts.length === 0 || told > all) return { facts };
  if (facts.some((fact) => fact.fact === 'price' || (fact.fact === 'pieces' && fact.piece === 'corsage'))) return { facts };
  if (sorts.some(({ piece }) => state.lines.some((line) => line.piece === piece))) return { facts };
  const others = facts.filter((fact) => !isSort(fact));
  if (told === all) return { facts: [...others, ...sorts.map(asSort)] };
  const [first] = sorts;
  const names = sorts.map(({ count, piece }) => many(count, piece)).join(' and ');
  return {
    facts: others,
    ask: {
      about: 'count',
      why: 'which number',
      words: first?.words ?? '',
      choices: [
        { words: `${told} of the ${many(all, 'corsage')}`, facts: sorts.map(asSort) },
        { words: `${names} more`, facts: sorts.map((fact) => ({ ...fact, adds: true as const })) },
      ],
    },
  };
};
