// The state of an event or a studio from its whole log. Handling one new message extends the snapshot instead; both must agree, and check-store proves it.

import type { StudioSettings } from '../studio/settings.ts';
import { newStudio, type StudioState } from '../studio/studio.ts';
import { isSaid } from './apply-care.ts';
import { applyFacts } from './apply-facts.ts';
import { applyStudioFacts } from './apply-studio-facts.ts';
import { standing } from './effective.ts';
import type { Entry } from './entry.ts';
import { type EventState, newEvent } from './event.ts';

export const foldEvent = (entries: readonly Entry[]): EventState => {
  const own = entries.filter((entry) => entry.scope === 'event');
  const stated = standing(own).reduce((state, message) => applyFacts(state, message.facts), newEvent);
  return withOpenQuestion(stated, own);
};

export const foldStudio = (settings: StudioSettings, entries: readonly Entry[]): StudioState =>
  standing(entries.filter((entry) => entry.scope === 'studio')).reduce(
    (state, message) => applyStudioFacts(state, message.facts),
    newStudio(settings),
  );

/** The question still waiting for an answer: the last one asked, unless anything was stated, edited or lapsed since. */
const withOpenQuestion = (state: EventState, entries: readonly Entry[]): EventState => {
  const { open: _, ...rest } = state;
  const last = entries.findLast((entry) => entry.kind !== 'stated' || entry.facts.some(isSaid));
  return last?.kind === 'asked' && last.open ? { ...rest, open: { ...last.open, askedAt: last.at } } : rest;
};
