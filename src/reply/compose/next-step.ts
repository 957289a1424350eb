// At most one next step: the one thing this event lacks most. What is asked here also opens the question for a bare answer ("45").

import type { PieceKind } from '../../handbook/pieces.ts';
import type { OpenQuestion } from '../../reading/reading.ts';
import { onlyTold } from '../../thread/apply-order.ts';
import type { Answer } from '../answer.ts';
import { listed, plural, type Says } from '../words/names.ts';
import { kindWithoutOrder, uncountedKind } from './uncounted-kind.ts';

export interface NextStep {
  readonly words: string;
  readonly open: OpenQuestion;
}

const missing = (about: Extract<OpenQuestion, { kind: 'missing' }>['about'], words: string, piece?: PieceKind): NextStep => ({
  words,
  open: { kind: 'missing', about, ...(piece === undefined ? {} : { piece }) },
});

/** "Need some bouts": the kind is known, and nothing else. */
export const howManyOf = (piece: PieceKind, says: Says): NextStep =>
  missing('count', `How many ${plural(piece, says)}, and at what price each?`, piece);

export const nextStep = (answer: Answer): NextStep | undefined => {
  const { event, price, manner } = answer;
  const [first] = event.lines;
  const uncounted = uncountedKind(answer);
  if (uncounted) return missing('count', `How many ${plural(uncounted, manner.says)}?`, uncounted);
  const told = onlyTold(event);
  if (!first && told) return missing('count', `How many ${plural(told, manner.says)}?`);
  if (!first && (event.price || event.told)) return missing('count', 'How many pieces?');
  const named = kindWithoutOrder(answer);
  if (named) return howManyOf(named, manner.says);
  if (!first) return event.date ? missing('count', 'How many pieces, and at what price each?') : undefined;
  if (!price) return missing('price', 'At what price each, tax included or not?');
  if (price.ok && price.value.unpriced.length > 0) {
    const names = listed([...new Set(price.value.unpriced)].map((piece) => plural(piece, manner.says)));
    return missing('price', `No price yet for the ${names}. What are they each?`);
  }
  if (!event.date) return missing('date', event.material ? 'When is the event?' : 'When is the event, and are they dried or fresh?');
  const unknown = event.lines.some((line) => !line.material) && !event.material;
  return unknown ? missing('material', 'Are they dried, fresh or mixed?') : undefined;
};
