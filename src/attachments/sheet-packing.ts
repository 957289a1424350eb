// The packing list on paper, with a box to tick for each thing.

import { cautionWords } from '../handbook/cautions.ts';
import type { SheetsInput } from './sheet-input.ts';
import { eventLine } from './sheet-words.ts';
import type { SheetWriter } from './sheet-writer.ts';

export const drawPacking = (writer: SheetWriter, input: SheetsInput): void => {
  const list = input.packing;
  const heading = (words: string): void => {
    writer.ensure(44);
    writer.down(8);
    writer.text(words, { size: 13, face: 'bold' });
    writer.down(3);
  };
  const tick = (words: string): void => {
    const style = { size: 11, x: 22 };
    writer.ensure(writer.heightOf(words, style) + 4);
    writer.box(0, writer.y() + 1, 11, 11);
    writer.text(words, style);
    writer.down(4);
  };
  writer.sheet('Packing list', eventLine(input));
  if (input.handOver !== undefined) writer.text(`Hand over: ${input.handOver}`, { size: 12, face: 'bold' });
  heading('Pieces');
  for (const piece of list.pieces) tick(piece);
  heading('Boards and boxes');
  for (const board of list.boards) tick(`${board.label} (${board.holds})`);
  heading('Take');
  for (const item of list.take) tick(item);
  if (list.keep.length > 0) heading('Keep');
  for (const keep of list.keep) {
    writer.ensure(writer.heightOf(keep.words, { size: 11 }) + writer.heightOf(keep.source, { size: 8 }));
    writer.text(keep.words, { size: 11 });
    writer.text(keep.source, { size: 8 });
    writer.down(4);
  }
  for (const caution of input.cautions.filter((one) => one.shownOn.includes('packing list'))) {
    writer.down(4);
    writer.ensure(writer.heightOf(`Take care: ${cautionWords(caution)}`, { size: 10 }));
    writer.text(`Take care: ${cautionWords(caution)}`, { size: 10 });
  }
};
