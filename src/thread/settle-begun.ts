// A number of an ordered kind right behind a word of progress: "15 bouts too" behind "finished 12 corsages", "no 14 bouts" behind "15 bouts
// done". It may be made or ordered, and an order cut down in silence is the worst of it: it is asked.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact } from '../reading/fact.ts';
import type { Choice } from '../reading/reading.ts';
import { soMany } from '../reading/words/kind-words.ts';
import { madeOf, ordered } from './apply-progress.ts';
import type { EventState } from './event.ts';
import { kindInOrder } from './kind-in-order.ts';
import type { Settled } from './settled.ts';

const joins = /\b(and|also|plus|too|as well|aswell)\b|^[+&]/i;
const ordering =
  /\b(order|orders|ordered|ordering|more|another|extra|add|added|adding|need|needs|needed|want|wants|wanted|make|change|changed|update|should|now|wedding|client|bride|groom|quote|each|total|only)\b/i;

const counted = (fact: Fact): { piece: PieceKind; count: number; added: boolean } | undefined => {
  if (fact.fact === 'pieces')
    return fact.countMax === undefined && fact.wearer === undefined && fact.price === undefined && fact.material === undefined
      ? { piece: fact.piece, count: fact.count, added: false }
      : undefined;
  if (fact.fact !== 'change' || fact.what !== 'count' || fact.piece === undefined || fact.from !== undefined) return undefined;
  const by = Number(fact.by ?? 0);
  if (by > 0) return joins.test(fact.words) ? { piece: fact.piece, count: by, added: true } : undefined;
  return typeof fact.to === 'number' ? { piece: fact.piece, count: fact.to, added: false } : undefined;
};

export const askedOnceBegun = (state: EventState, fact: Fact, beside: readonly Fact[]): Settled | undefined => {
  const { lately } = state;
  if (lately === undefined || beside.length !== 1 || ordering.test('words' in fact ? fact.words : '')) return undefined;
  const said = counted(fact);
  const piece = said === undefined ? undefined : kindInOrder(state.lines, said.piece);
  if (said === undefined || piece === undefined || said.count < 1 || said.count >= ordered(state, piece)) return undefined;
  const { count, added } = said;
  const { words } = fact;
  const many = (each: number): string => soMany(each, piece);
  const right = lately.piece === piece && !added && lately.added !== count;
  const choices: Choice[] = [
    ...(right
      ? [
          {
            words: `${count} made, not ${lately.added}`,
            facts: [{ fact: 'change' as const, what: 'made' as const, to: madeOf(state, piece) - lately.added + count, piece, words }],
          },
        ]
      : []),
    { words: `${many(count)}${madeOf(state, piece) > 0 ? ' more' : ''} made`, facts: [{ fact: 'made', count, piece, words }] },
    added
      ? { words: `${count} more ordered`, facts: [{ fact: 'change', what: 'count', by: count, piece, words }] }
      : { words: `${count} ordered, not ${ordered(state, piece)}`, facts: [{ fact: 'change', what: 'count', to: count, piece, words }] },
  ];
  return { kind: 'ask', ask: { about: 'count', why: 'which number', words, choices } };
};
