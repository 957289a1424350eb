// Board labels on paper: one to cut out for each board, with the names of its wearers.

import { boardName } from '../handover/boards.ts';
import type { SheetsInput } from './sheet-input.ts';
import { eventLine } from './sheet-words.ts';
import type { SheetWriter } from './sheet-writer.ts';

export const drawLabels = (writer: SheetWriter, input: SheetsInput): void => {
  const { boards } = input.laid;
  const height = 158;
  writer.sheet('Board labels', 'Cut along the dashes.');
  for (const board of boards) {
    writer.ensure(height);
    const top = writer.y();
    writer.box(0, top, writer.width, height - 8, 'dashed');
    writer.put(`${boardName(board)} of ${boards.length}`, 12, top + 10, { size: 24, face: 'bold', width: 240 });
    writer.put(board.pieces, 262, top + 14, { size: 18, width: writer.width - 274 });
    writer.put(eventLine(input), 12, top + 44, { size: 11, width: writer.width - 24 });
    const column = (writer.width - 24) / 3;
    board.places.forEach((place, index) => {
      writer.put(place.label, 12 + column * Math.floor(index / 4), top + 68 + 18 * (index % 4), { size: 11, width: column - 8 });
    });
    writer.down(height);
  }
};
