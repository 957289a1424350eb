// The sheets for the wall and the day as one PDF: a bench card for each kind of piece, the pin-on sheet, board labels, the packing list, the sources.

import { benchCard } from './bench-card.ts';
import { type BoardsLaidOut, layOutBoards } from './boards.ts';
import { type PackingList, packingList } from './packing-list.ts';
import { drawBenchCard } from './sheet-bench-card.ts';
import { drawLabels } from './sheet-board-labels.ts';
import type { SheetsInput } from './sheet-input.ts';
import { drawPacking } from './sheet-packing.ts';
import { drawPinOn } from './sheet-pin-on.ts';
import { sheetSources } from './sheet-sources.ts';
import { eventLine } from './sheet-words.ts';
import { type SheetWriter, sheetWriter } from './sheet-writer.ts';

const drawSources = (writer: SheetWriter, input: SheetsInput): void => {
  writer.sheet('Where this was read', 'Usual practice and usual care. Local rules and qualified people come first.');
  for (const { about, lines } of sheetSources(input)) {
    writer.ensure(30);
    writer.text(about, { size: 10, face: 'bold' });
    for (const line of lines) writer.text(line, { size: 9, x: 8 });
    writer.down(5);
  }
};

export interface SheetsAsLaid {
  readonly laid?: BoardsLaidOut; // where the caller has laid the boards; otherwise they are laid from the rows
  readonly packing?: PackingList; // likewise
}

/** The PDF's bytes, the same for the same input. `compress` is false only where a test reads the text back. */
export const sheetsPdf = (input: SheetsInput, given: SheetsAsLaid & { readonly compress?: boolean } = {}): Uint8Array => {
  const { compress = true, laid = layOutBoards(input) } = given;
  const writer = sheetWriter({ paper: input.paper, title: input.event, author: input.studio, stamp: input.stamp, compress });
  for (const piece of input.pieces) drawBenchCard(writer, benchCard(piece, input), eventLine(input));
  drawPinOn(writer, input, laid);
  drawLabels(writer, input, laid.boards);
  drawPacking(writer, input, given.packing ?? packingList(input, laid.boards));
  drawSources(writer, input);
  return writer.bytes();
};
