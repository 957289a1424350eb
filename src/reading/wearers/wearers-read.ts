// What one sentence says of who wears what.

import type { PieceKind } from '../../handbook/pieces.ts';

export interface Entry {
  at: number;
  wearer: string;
  count: number;
  most?: number; // "4-5 ushers"
  approx?: true; // "about 7 groomsmen"
  piece?: PieceKind;
  note?: string;
  names?: string[]; // of those who are named, at most as many as there are
}

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
