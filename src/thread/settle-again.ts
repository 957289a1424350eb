// "Same again for the second flower girl": one more of what such a wearer has, or of the only kind there is; else which kind is asked.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import { roleOf } from './apply-wearers.ts';
import type { EventState } from './event.ts';

type Change = FactOf<'change'>;
type Wearers = FactOf<'wearers'>;

const isOneMore = (fact: Fact): fact is Change =>
  fact.fact === 'change' && fact.what === 'count' && fact.by === 1 && fact.piece === undefined;
const isFor = (fact: Fact): fact is Wearers =>
  fact.fact === 'wearers' && fact.by === 'more' && fact.wearers.length === 1 && fact.wearers[0]?.piece === undefined;

const kindsOf = ({ lines, wearers }: EventState, role: string): ReadonlySet<PieceKind> =>
  new Set([
    ...wearers.flatMap(({ wearer, piece }) => (piece !== undefined && roleOf(wearer) === role ? [piece] : [])),
    ...lines.flatMap(({ wearer, piece }) => (wearer !== undefined && roleOf(wearer) === role ? [piece] : [])),
  ]);

export const againInOrder = (state: EventState, facts: readonly Fact[]): { readonly facts: readonly Fact[]; readonly ask?: Ask } => {
  const [change, wearers] = [facts.find(isOneMore), facts.find(isFor)];
  const said = wearers?.wearers[0];
  if (change === undefined || wearers === undefined || said === undefined) return { facts };
  const role = roleOf(said.wearer);
  // A line that is all theirs tells by its count how many they are.
  const byLine = state.lines.some(({ wearer }) => wearer !== undefined && roleOf(wearer) === role);
  const listed = state.wearers.some(({ wearer }) => roleOf(wearer) === role);
  const own = (piece: PieceKind): Fact[] => [
    ...(byLine && !listed ? [] : [{ ...wearers, wearers: [{ ...said, piece }] }]),
    { ...change, piece },
  ];
  const others = facts.filter((fact) => fact !== change && fact !== wearers);
  const theirs = [...kindsOf(state, role)];
  const kinds = [...new Set(state.lines.map(({ piece }) => piece))];
  const [piece, second] = theirs.length > 0 ? theirs : kinds;
  if (piece === undefined) return { facts: others };
  if (second === undefined) return { facts: [...others, ...own(piece)] };
  const choices = (theirs.length > 0 ? theirs : kinds).map((kind) => ({ words: kind, facts: own(kind) }));
  return { facts: others, ask: { about: 'piece', why: 'which piece', words: change.words, choices } };
};
