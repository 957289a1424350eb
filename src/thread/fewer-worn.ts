// "Only 2 groomsmen now" of three whose buttonholes made the order: whether one is made less, or kept as a spare, is asked.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import { roleOf } from './apply-wearers.ts';
import type { EventState, OrderLine } from './event.ts';
import { kindInOrder } from './kind-in-order.ts';
import { asFacts, countedUp } from './lines-as-facts.ts';
import { wearersKnown } from './wearers-known.ts';

type Wearers = FactOf<'wearers'>;

/** So many fewer of a kind, and the line that is all theirs where there is one. */
interface Fewer {
  readonly piece: PieceKind;
  readonly off: number;
  readonly line?: OrderLine;
}

const onlyKind = (lines: readonly OrderLine[]): PieceKind | undefined => {
  const [kind, second] = [...new Set(lines.map(({ piece }) => piece))];
  return second === undefined ? kind : undefined;
};

/** What they wear less of; nothing where the order never was what the wearers need. */
const fewerOf = (state: EventState, said: Wearers['wearers'][number]): Fewer | undefined => {
  const { lines } = state;
  const wearers = wearersKnown(state);
  const before = wearers.filter(({ wearer }) => roleOf(wearer) === roleOf(said.wearer));
  const off = countedUp(before) - said.count;
  const own = lines.filter(({ wearer }) => wearer !== undefined && roleOf(wearer) === roleOf(said.wearer));
  const [line, anotherLine] = own;
  if (off <= 0 || anotherLine !== undefined) return undefined;
  // With none of them left nobody wears what is in their line, spares and all.
  if (line !== undefined) return line.count < off ? undefined : { piece: line.piece, off: said.count === 0 ? line.count : off, line };
  const worn = said.piece ?? before.find(({ piece }) => piece !== undefined)?.piece;
  const piece = worn === undefined ? onlyKind(lines) : kindInOrder(lines, worn);
  if (piece === undefined || lines.filter((each) => each.piece === piece).length !== 1) return undefined;
  const named = wearers.filter((each) => (each.piece === undefined ? onlyKind(lines) : kindInOrder(lines, each.piece)) === piece);
  const all = countedUp(lines.filter((each) => each.piece === piece));
  return countedUp(named) >= all && all >= off ? { piece, off } : undefined;
};

/** The lines of the kind with so many fewer; one of which none is left is said too, or its wearers would keep it. */
const withFewer = (lines: readonly OrderLine[], { piece, off, line }: Fewer, words: string): Fact[] => {
  const left = lines.map((each) => (line === undefined || each === line ? { ...each, count: each.count - off } : each));
  return left.some(({ count }) => count > 0) ? asFacts(left, words) : [{ fact: 'change', what: 'count', to: 0, piece, words }];
};

const saysPieces = (fact: Fact): boolean =>
  fact.fact === 'pieces' || (fact.fact === 'change' && (fact.what === 'count' || fact.what === 'number'));

/** The question, where a message leaves fewer wearers than the order has pieces for; none where it says the pieces itself. */
export const askFewerPieces = (state: EventState, facts: readonly Fact[]): Ask | undefined => {
  if (facts.some(saysPieces)) return undefined;
  const fact = facts.find((each): each is Wearers => each.fact === 'wearers' && each.notes === undefined);
  const fewer = fact?.wearers.flatMap((said) => fewerOf(state, said) ?? []) ?? [];
  const [only, another] = fewer;
  // Two kinds of wearers fewer at once: the list names what is over, and nothing is taken off.
  if (fact === undefined || only === undefined || another !== undefined) return undefined;
  const lines = state.lines.filter(({ piece }) => piece === only.piece);
  return {
    about: 'count',
    why: 'fewer pieces',
    words: fact.words,
    choices: [
      { words: `${only.off} fewer`, facts: withFewer(lines, only, fact.words) },
      { words: `keep ${countedUp(lines)}`, facts: [fact] },
    ],
  };
};
