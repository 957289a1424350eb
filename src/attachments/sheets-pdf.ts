// The sheets for the wall and the day as one PDF: a bench card for each kind of piece, the pin-on sheet, board labels, the packing list, the sources.

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

/** The PDF's bytes, the same for the same input. `compress` is false only where a test reads the text back. */
export const sheetsPdf = (input: SheetsInput, { compress = true }: { readonly compress?: boolean } = {}): Uint8Array => {
  const writer = sheetWriter({ paper: input.paper, title: input.event, author: input.studio, stamp: input.stamp, compress });
  for (const card of input.cards) drawBenchCard(writer, card, eventLine(input));
  drawPinOn(writer, input);
  drawLabels(writer, input);
  drawPacking(writer, input);
  drawSources(writer, input);
  return writer.bytes();
};
