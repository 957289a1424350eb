// What the printed sheets are made from: plain data, already counted and named, so that paper and thread cannot disagree.

import type { Caution } from '../handbook/cautions.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { Day } from '../values/day.ts';

export interface SheetPiece {
  readonly kind: PieceKind;
  readonly one: string; // the studio's word: "buttonhole"
  readonly many: string;
  readonly count: number; // ordered, without spares
  readonly spares: number; // finished pieces beyond the order
  readonly material?: Material;
  readonly minutes?: number; // bench minutes for one
  readonly recipe: readonly { readonly ingredient: string; readonly amount: string }[]; // for one piece: "2 stems", "30 cm"
}

export interface SheetWearer {
  readonly wearer: string; // as written: "groom", "mother of the bride"
  readonly count: number;
  readonly kind: PieceKind; // which of the pieces they wear
  readonly note?: string;
}

export interface SheetsInput {
  readonly studio: string;
  readonly event: string;
  readonly eventDay?: Day;
  readonly time?: string; // 24 h
  readonly handOver?: string; // "Sat 13 March, 16:00, at the yard"
  readonly dayFirst: boolean;
  readonly paper: 'A4' | 'Letter';
  readonly pieces: readonly SheetPiece[]; // one row for each kind
  readonly wearers: readonly SheetWearer[];
  readonly cautions: readonly Caution[];
  readonly stamp: number; // epoch milliseconds, kept in the file as its date
}
