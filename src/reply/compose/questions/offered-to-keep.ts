// "What if 40?", worked out: the facts that a plain "yes" behind it would state. Nothing of them is kept before.

import type { Fact, FactOf } from '../../../reading/fact.ts';
import { linesMeant } from '../../../thread/apply-change.ts';
import type { EventState } from '../../../thread/event.ts';
import type { Answer } from '../../answer.ts';
import { questionTried } from './tried.ts';
import { tryOut } from './what-if-price.ts';

/** In a thread without an order it is the order; a difference is told as the number it comes to, so that it can't be taken twice. */
const asStated = (fact: Fact, event: EventState, asked: FactOf<'question'>): Fact => {
  if (fact.fact !== 'change') return fact;
  const { words, piece } = fact;
  if (event.lines.length === 0)
    return fact.what === 'count'
      ? { fact: 'pieces', piece: piece ?? 'unspecified', count: Number(fact.to), words }
      : {
          fact: 'price',
          amount: String(fact.to),
          per: fact.per ?? 'each',
          ...(piece && asked.number === undefined ? { piece } : {}),
          words,
        };
  const [line, another] = linesMeant(event, piece);
  if (fact.by === undefined || line === undefined || another !== undefined) return fact;
  const { by, ...rest } = fact;
  return { ...rest, to: line.count + Number(by) };
};

/** Of one question alone: of two nobody could say which the yes is for. */
export const offeredToKeep = (answer: Answer): readonly Fact[] | undefined => {
  const [only, second] = answer.questions;
  if (only === undefined || second !== undefined) return undefined;
  const asked = only.asks === 'whatIf' ? only : questionTried(only, answer);
  if (asked === undefined) return undefined;
  const facts = tryOut(asked, answer).facts.map((fact) => asStated(fact, answer.event, asked));
  return facts.length === 0 ? undefined : facts;
};
