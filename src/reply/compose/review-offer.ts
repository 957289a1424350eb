// What a look-back taught, offered as choices. Nothing of it is stored until somebody takes one.

import type { Fact } from '../../reading/fact.ts';
import type { Ask, Choice } from '../../reading/reading.ts';
import type { Answer } from '../answer.ts';
import { paceWords } from '../words/dates.ts';
import { pieceName } from '../words/names.ts';
import { reviewOf } from './review.ts';

/** The question that follows a look-back; undefined where the event taught nothing new. */
export const reviewOffer = (answer: Answer): Ask | undefined => {
  if (!answer.questions.some(({ asks }) => asks === 'review')) return undefined;
  const review = reviewOf(answer);
  if (!review.ok || answer.event.lines.length === 0) return undefined;
  const minutes = review.value.minutesLearned.flatMap(({ piece, minutes: each, offer }): readonly Choice[] =>
    offer ? [{ words: `${paceWords(each.toNumber())} a ${pieceName(piece, answer.manner.says)}`, facts: [offer] }] : [],
  );
  const spares = review.value.sparesLearned.flatMap(({ item, percent, offer }): readonly Choice[] =>
    offer ? [{ words: `${percent.toString()} % spare ${item}`, facts: [offer] }] : [],
  );
  const choices = [...minutes, ...spares];
  if (choices.length === 0) return undefined;
  const all: readonly Choice[] =
    choices.length > 1 ? [{ words: 'all of these', facts: choices.flatMap((choice): readonly Fact[] => choice.facts) }] : [];
  return { about: 'item', why: 'plan with this', words: '', choices: [...choices, ...all] };
};
