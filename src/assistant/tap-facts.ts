// What a tapped button means, as the facts a person would have typed. The value is only an id or a position: the facts come from what is stored.

import type { Asked, Fact } from '../reading/fact.ts';
import type { OpenQuestion } from '../reading/reading.ts';
import type { IncomingMessage } from './ports.ts';

const questions: Readonly<Record<string, Asked>> = {
  'show working': 'working',
  'for the client': 'client',
  'calendar file': 'calendar',
  'calendar picture': 'picture',
  'buying list': 'buying',
};

export const tapFacts = (tap: IncomingMessage['tap'], open: OpenQuestion | undefined): readonly Fact[] => {
  if (!tap) return [];
  const asks = questions[tap.action];
  if (asks) return [{ fact: 'question', asks, words: tap.action }];
  switch (tap.action) {
    case 'choose':
      return open?.kind === 'choice' ? (open.ask.choices[Number(tap.value)]?.facts ?? []) : [];
    case 'undo':
      return [{ fact: 'undo', words: 'undo' }];
    case 'made all':
      return [{ fact: 'made', all: true, words: 'made all' }];
    default:
      return [];
  }
};
