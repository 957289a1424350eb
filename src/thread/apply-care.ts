// Cautions shown in the thread, and the hazards its messages told of. Kept in the message's own entry, so that an edit or a deletion takes them back with it.

import type { FactName, FactOf } from '../reading/fact.ts';
import type { EventState } from './event.ts';

const together = <T extends string>(before: readonly T[] = [], more: readonly T[] = []): readonly T[] =>
  [...new Set([...before, ...more])].sort();

export const applyCare = (state: EventState, { heard, denied = [], shown }: FactOf<'care'>): EventState => ({
  ...state,
  care: {
    heard: together(state.care?.heard, heard).filter((hazard) => !denied.includes(hazard)),
    shown: together(state.care?.shown, shown),
  },
});

const beside: ReadonlySet<string> = new Set<FactName>(['care', 'calendar', 'quoted', 'unread']);

/** What a person said, and not what the bot keeps beside it for itself. */
export const isSaid = ({ fact }: { readonly fact: string }): boolean => !beside.has(fact);
