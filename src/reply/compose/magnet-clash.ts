// Magnets chosen while a wearer has an implant: the clash is named with the wearer, every time it is said, and nothing is chosen for them.

import { wearersList } from '../../handover/wearers.ts';
import { workAtHand } from '../../handover/work-at-hand.ts';
import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { joined, ownWords, strong, text } from '../span.ts';

/** Nothing where there is no magnet, no implant, or this message is about neither. */
export const magnetClash = (answer: Answer): readonly Block[] => {
  const { event, studio, stated, hazards = [] } = answer;
  if (answer.how === 'withdrawn' || answer.how === 'undone') return [];
  const about =
    hazards.includes('magnet') || hazards.includes('implant') || stated.some(({ fact }) => fact === 'recipe' || fact === 'wearers');
  if (
    !about ||
    !(workAtHand(event, studio).fixings.includes('magnet') || event.care?.heard.includes('magnet') || hazards.includes('magnet'))
  )
    return [];
  const wearers = wearersList(event).wearers.filter(({ cares }) => cares.some(({ value }) => value === 'implant'));
  if (wearers.length === 0) return [];
  const who = joined(
    wearers.map(({ role, note }) => text`${strong(ownWords(role).text)}${note === '' ? '' : text` (${ownWords(note)})`}`),
    ', ',
  );
  return [
    {
      block: 'problem',
      line: text`Magnets clash with an implant: ${who}. No magnet there; use a pin or a wrist piece, and keep the others' magnets well away.`,
    },
  ];
};
