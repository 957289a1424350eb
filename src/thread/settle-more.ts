// "3 more fresh": more of the only kind, of one that is asked, or made since where some are begun.

import type { Fact } from '../reading/fact.ts';
import type { Choice } from '../reading/reading.ts';
import { kindWords } from '../reading/words/kind-words.ts';
import { kindsMeant, madeOf } from './apply-progress.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';

export const settleMoreInMaterial = (state: EventState, fact: Fact): Settled | undefined => {
  if (fact.fact !== 'pieces' || !fact.adds || fact.piece !== 'unspecified' || fact.material === undefined || fact.price !== undefined)
    return undefined;
  const kinds = kindsMeant(state, undefined);
  const [only, second] = kinds;
  if (only === undefined) return undefined;
  const { count, material, words } = fact;
  if (second === undefined && madeOf(state, only) === 0) return settled({ ...fact, piece: only });
  const choices = kinds.flatMap((piece): Choice[] => [
    { words: `${count} more ${material} ${kindWords(piece, count)} ordered`, facts: [{ ...fact, piece }] },
    ...(madeOf(state, piece) > 0
      ? [{ words: `${count} more ${kindWords(piece, count)} made`, facts: [{ fact: 'made' as const, count, piece, words }] }]
      : []),
  ]);
  return { kind: 'ask', ask: { about: 'count', why: 'which number', words, choices } };
};
