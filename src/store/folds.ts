// How a log becomes a state, with a number that tells an old snapshot from a new one.

import type { StudioSettings } from '../studio/settings.ts';
import type { StudioState } from '../studio/studio.ts';
import type { Entry } from '../thread/entry.ts';
import type { EventState } from '../thread/event.ts';
import { foldEvent, foldStudio } from '../thread/fold.ts';

export interface Folds {
  /** Raise it whenever a fold gives another state for an old log: snapshots with a lower number are made again at the next start. */
  readonly version: number;
  readonly event: (entries: readonly Entry[]) => EventState;
  readonly studio: (settings: StudioSettings, entries: readonly Entry[]) => StudioState;
}

export const currentFolds: Folds = { version: 7, event: foldEvent, studio: foldStudio };
