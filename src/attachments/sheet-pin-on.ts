// The pin-on sheet on paper: one row for each piece, grouped by board, with a box to tick when it is on.

import { cautionWords } from '../handbook/cautions.ts';
import { boardName } from '../handover/boards.ts';
import type { SheetsInput } from './sheet-input.ts';
import { eventLine, withoutPieceLine } from './sheet-words.ts';
import type { SheetWriter } from './sheet-writer.ts';

export const drawPinOn = (writer: SheetWriter, input: SheetsInput): void => {
  const noteX = 372;
  const heads = () => {
    const y = writer.y();
    for (const [head, x] of [
      ['on', 0],
      ['wearer', 26],
      ['piece', 180],
      ['side', 268],
      ['note', noteX],
    ] as const)
      writer.put(head, x, y, { size: 9, face: 'bold' });
    writer.down(15);
    writer.rule();
    writer.down(5);
  };
  writer.sheet('Pin-on sheet', eventLine(input), heads);
  const trouble = withoutPieceLine(input.laid);
  if (trouble !== '') {
    writer.text(trouble, { size: 11, face: 'bold' });
    writer.down(4);
  }
  for (const caution of input.cautions.filter((one) => one.shownOn.includes('pin-on sheet'))) {
    const words = `Take care: ${cautionWords(caution)}`;
    writer.ensure(writer.heightOf(words, { size: 9.5 }));
    writer.text(words, { size: 9.5 });
    writer.down(3);
  }
  for (const board of input.laid.boards) {
    writer.ensure(60); // a board's name never stands alone at the foot of a page
    writer.down(4);
    writer.text(`${boardName(board)}: ${board.pieces}`, { size: 12, face: 'bold' });
    writer.down(3);
    for (const place of board.places) {
      const note = { size: 10, x: noteX, width: writer.width - noteX };
      const wearer = { size: 11, x: 26, width: 148 };
      const side = { size: 10, x: 268, width: 98 };
      const height =
        Math.max(17, writer.heightOf(place.wearer, wearer), writer.heightOf(place.note, note), writer.heightOf(place.side, side)) + 3;
      if (writer.ensure(height + 3)) {
        writer.text(`${boardName(board)}, continued`, { size: 12, face: 'bold' });
        writer.down(3);
      }
      const y = writer.y();
      writer.box(0, y + 1, 12, 12);
      writer.put(place.piece, 180, y, { size: 10, width: 84 });
      for (const [words, style] of [
        [place.wearer, wearer],
        [place.side, side],
        [place.note, note],
      ] as const) {
        writer.text(words, style);
        writer.down(y - writer.y());
      }
      writer.down(height);
      writer.rule(0.3);
      writer.down(3);
    }
  }
};
