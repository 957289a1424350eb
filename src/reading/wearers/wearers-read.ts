// What one sentence says of who wears what.

import type { Entry } from './read-wearers.ts';

export interface WearersRead {
  entries: Entry[];
  total?: number;
  clean: boolean; // nothing else is said
  pieceless: boolean;
  unknown: boolean; // of some nobody said how many
  unsaid: boolean; // how many men are behind him
  kindWaits: boolean; // of some nobody said what they wear
  heads: number;
  loose: boolean; // a number stands alone
}
