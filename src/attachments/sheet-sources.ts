// Where what the sheets say was read, gathered on the last page so that the cards on the wall stay clear.

import { sourceLine } from '../handbook/sources.ts';
import { benchCard } from './bench-card.ts';
import type { SheetsInput } from './sheet-input.ts';

/** "Making a buttonhole", "Caution: magnet" and the like, each with the lines of its sources. */
export const sheetSources = (input: SheetsInput): readonly { readonly about: string; readonly lines: readonly string[] }[] => [
  ...input.pieces.map((piece) => ({
    about: `Making and wearing: ${piece.one}`,
    lines: benchCard(piece, input).sources.map(sourceLine),
  })),
  ...input.cautions.map((caution) => ({
    about: `Take care: ${caution.id.replace('-', ' ')}`,
    lines: caution.sources.map(sourceLine),
  })),
];
