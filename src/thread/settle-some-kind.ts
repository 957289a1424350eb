// "Half wrist half pin on", "2 of those pin on": so many of a kind become another. How many half of them are, and whether there are so many.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Choice } from '../reading/reading.ts';
import { soMany } from '../reading/words/kind-words.ts';
import { problem } from '../values/result.ts';
import { ordered } from './apply-progress.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';

type Change = FactOf<'change'>;

const halvesOther = (fact: Fact, { piece, to }: Change): fact is Change =>
  fact.fact === 'change' && fact.what === 'piece' && fact.some === 'half' && fact.piece === piece && fact.to !== to;

/** Of an odd number either half may be the larger: both ways to share them are offered. */
export const settleSomeKind = (state: EventState, change: Change, beside: readonly Fact[]): Settled => {
  const piece = change.piece ?? 'unspecified';
  const all = ordered(state, piece);
  const { some = 'half', ...whole } = change;
  if (typeof some === 'number' && some > all)
    return { kind: 'problem', problem: problem('only-so-many', { count: some, piece, ordered: all }) };
  if (some === all) return settled(whole);
  if (typeof some === 'number') return settled(change);
  if (all % 2 === 0) return settled({ ...change, some: all / 2 });
  const to = change.to as PieceKind;
  const second = beside.find((fact) => halvesOther(fact, change)) as Change | undefined;
  const share = (first: number): Choice => ({
    words: `${soMany(first, to)} and ${soMany(all - first, (second?.to as PieceKind | undefined) ?? piece)}`,
    facts: [{ ...change, some: first }, ...(second === undefined ? [] : [{ ...second, some: all - first }])],
  });
  const less = Math.floor(all / 2);
  return {
    kind: 'ask',
    ask: {
      about: 'count',
      why: 'which number',
      words: change.words,
      choices: [share(all - less), ...(less > 0 ? [share(less)] : [])],
    },
  };
};
