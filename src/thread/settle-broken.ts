// How many broke, put right: "no only 1 broke" of the two just told; where none broke yet it is the first word of it. "Only 1 broke" behind others may be either.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Choice } from '../reading/reading.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';

const brokeOf = ({ progress }: EventState, piece: PieceKind): number => progress[piece]?.broke ?? 0;

const lastOf = ({ latelyBroke }: EventState, piece: PieceKind): number | undefined =>
  latelyBroke?.piece === piece ? latelyBroke.count : undefined;

/** So many of the last handful broke, and those told before stay broken. */
const rightedTo = (state: EventState, piece: PieceKind, to: number): number => brokeOf(state, piece) - (lastOf(state, piece) ?? 0) + to;

/** `kinds`: those of the order that the words can mean. */
export const settleBrokenRight = (state: EventState, change: FactOf<'change'>, kinds: readonly PieceKind[]): Settled | undefined => {
  const [only, another] = kinds.filter((kind) => brokeOf(state, kind) > 0);
  const piece = state.latelyBroke !== undefined && kinds.includes(state.latelyBroke.piece) ? state.latelyBroke.piece : only;
  const { to, from, words } = change;
  if (typeof to !== 'number') return undefined;
  if (piece === undefined) {
    const [kind, second] = kinds;
    if (from !== undefined || kind === undefined || second !== undefined || to < 1) return undefined;
    return settled({ fact: 'broke', count: to, piece: kind, words });
  }
  if (state.latelyBroke === undefined && another !== undefined) return undefined;
  const [last, all] = [lastOf(state, piece), brokeOf(state, piece)];
  // The handful told last, or all that broke: where these differ, what it was tells which.
  if (last === undefined || last === all || from === all) return settled({ ...change, piece });
  if (from === last) return settled({ ...change, to: rightedTo(state, piece, to), from: all, piece });
  if (from !== undefined) return settled({ ...change, piece });
  return askWhich(words, [
    { words: `${to} broken, not ${last}`, facts: [{ ...change, to: rightedTo(state, piece, to), from: all, piece }] },
    { words: `${to} broken in all`, facts: [{ ...change, from: all, piece }] },
  ]);
};
const askWhich = (words: string, choices: readonly Choice[]): Settled => ({
  kind: 'ask',
  ask: { about: 'made', why: 'which number', words, choices },
});

const only = /\b(only|just)\b/i;

/** "Only 1 broke" right behind "2 broke": of those, or one more. */
export const settleOnlyBroke = (state: EventState, fact: Fact): Settled | undefined => {
  if (fact.fact !== 'broke') return undefined;
  const piece = state.latelyBroke?.piece;
  if (piece === undefined || (fact.piece ?? piece) !== piece) return undefined;
  const last = lastOf(state, piece);
  if (last === undefined || last <= fact.count || !only.test(fact.words) || /\b(more|another|else)\b/i.test(fact.words)) return undefined;
  const { count, words } = fact;
  return askWhich(words, [
    {
      words: `${count} broken, not ${last}`,
      facts: [{ fact: 'change', what: 'broke', to: rightedTo(state, piece, count), from: brokeOf(state, piece), piece, words }],
    },
    { words: `${count} more broken`, facts: [{ ...fact, piece, words: `${count} more broken` }] },
  ]);
};
