// Some of what is ordered in another material: of which kind, how many half of them are, and whether there are so many.

import type { PieceKind } from '../handbook/pieces.ts';
import type { FactOf } from '../reading/fact.ts';
import type { Ask, Choice } from '../reading/reading.ts';
import { soMany } from '../reading/words/kind-words.ts';
import { problem } from '../values/result.ts';
import { kindsMeant } from './apply-progress.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';

type Change = FactOf<'change'>;

const orderedOf = ({ lines }: Pick<EventState, 'lines'>, piece: PieceKind): number =>
  lines.reduce((count, line) => (line.piece === piece ? count + line.count : count), 0);

const moved = /\b(move|moving|switch|switching|change|changing|swap|swapping|turn|convert|shift)\b/i;
/** "Move 5 to dried" of an order with 10 dried already: five more of the others. */
const beside = ({ lines, material }: EventState, { some, to, words }: Change, piece: PieceKind): number => {
  const inIt = lines.reduce((sum, line) => (line.piece === piece && (line.material ?? material) === to ? sum + line.count : sum), 0);
  const others = orderedOf({ lines }, piece) - inIt;
  return typeof some === 'number' && moved.test(words) && some <= others ? inIt : 0;
};

/** How many it is of so many ordered; of an odd number half is either of two. */
const numbersOf = ({ some }: Change, ordered: number): readonly number[] => {
  if (some !== 'half') return some === undefined ? [] : [some];
  return [...new Set([Math.floor(ordered / 2), Math.ceil(ordered / 2)])];
};

const asked = (about: Ask['about'], why: Ask['why'], { words }: Change, choices: readonly Choice[]): Settled => ({
  kind: 'ask',
  ask: { about, why, words, choices },
});

export const settleSomeMaterial = (state: EventState, change: Change): Settled => {
  const [kind, another] = kindsMeant(state, change.piece);
  if (kind === undefined || state.lines.length === 0) return { kind: 'problem', problem: problem('nothing-ordered', {}) };
  const of = (piece: PieceKind) =>
    numbersOf(change, orderedOf(state, piece)).map(
      (some): Choice => ({
        words: soMany(some, piece),
        facts: [{ ...change, piece, some: some + beside(state, change, piece) }],
      }),
    );
  const fits = (piece: PieceKind): boolean => numbersOf(change, orderedOf(state, piece)).every((some) => some <= orderedOf(state, piece));
  if (another !== undefined) return asked('piece', 'which piece', change, kindsMeant(state, undefined).filter(fits).flatMap(of));
  const ordered = orderedOf(state, kind);
  const [some = 0, other] = numbersOf(change, ordered);
  if (!fits(kind)) return { kind: 'problem', problem: problem('only-so-many', { count: some, piece: kind, ordered }) };
  if (other !== undefined) return asked('count', 'which number', change, of(kind));
  return settled({ ...change, piece: kind, some: some + beside(state, change, kind) });
};
