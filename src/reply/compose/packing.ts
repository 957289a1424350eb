// What goes in the van, and what is written on each board. The words are those of the printed sheets, so that paper and thread cannot disagree.

import { type SheetsAsLaid, sheetsAsLaid } from '../../handover/sheets-as-laid.ts';
import { cautionsOnSheet } from '../../handover/work-at-hand.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block } from '../reply.ts';
import { dateSpan, ownWords, plainLine, strong, text } from '../span.ts';
import { fullDate } from '../words/dates.ts';
import { pieceName, plural } from '../words/names.ts';
import { cautionBlocks } from './cautions.ts';

export const namesOf =
  ({ says }: Manner) =>
  (piece: Parameters<typeof pieceName>[0]) => ({ one: pieceName(piece, says), many: plural(piece, says) });

const laidOut = ({ event, studio, manner }: Answer): SheetsAsLaid | undefined => {
  const sheets = sheetsAsLaid(event, studio, namesOf(manner));
  return sheets.laid.boards.length > 0 ? sheets : undefined;
};

const noPieces: readonly Block[] = [{ block: 'answer', line: text`There are no pieces in this thread yet. How many?` }];

/** "2 boards and 1 box". */
export const boardsWords = (boards: SheetsAsLaid['laid']['boards']): string => {
  const flat = boards.filter(({ on }) => on === 'board').length;
  const boxes = boards.length - flat;
  const some = (count: number, one: string, many: string): readonly string[] =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
  return [...some(flat, 'board', 'boards'), ...some(boxes, 'box', 'boxes')].join(' and ');
};

export const packingBlocks = (answer: Answer): readonly Block[] => {
  const sheets = laidOut(answer);
  if (!sheets) return noPieces;
  const { event, studio, manner } = answer;
  const { packing, laid } = sheets;
  const over = event.handOver?.date ?? event.date;
  const time = event.handOver?.time ?? (event.handOver?.date === undefined ? undefined : event.time);
  const when = over ? text`, ${event.handOver ? 'hand over' : 'for'} ${dateSpan(fullDate(over, manner))}${time ? ` at ${time}` : ''}` : [];
  const sources = [...new Set(packing.keep.map(({ source }) => source))].filter((source) => source !== '');
  return [
    { block: 'answer', line: text`To pack: ${strong(packing.pieces.join(', '))} on ${boardsWords(laid.boards)}${when}.` },
    { block: 'list', title: text`Boards and boxes:`, items: packing.boards.map(({ label, holds }) => text`☐ ${label} (${holds})`) },
    { block: 'list', title: text`Take:`, items: packing.take.map((item) => plainLine(`☐ ${item}`)) },
    ...(packing.keep.length > 0
      ? [{ block: 'list' as const, title: text`Keep:`, items: packing.keep.map(({ words }) => plainLine(words)) }]
      : []),
    ...cautionBlocks(cautionsOnSheet('packing list', event, studio)),
    ...(sources.length > 0
      ? [{ block: 'assumed' as const, line: text`Keeping: ${sources.join('; ')}. The rest is common practice.` }]
      : []),
    { block: 'next', line: text`For paper, say “print the sheets”.` },
  ];
};

/** One list a board, ready to copy onto it. */
export const labelsBlocks = (answer: Answer): readonly Block[] => {
  const sheets = laidOut(answer);
  if (!sheets) return noPieces;
  const { boards } = sheets.laid;
  return [
    { block: 'answer', line: text`Labels for ${strong(boardsWords(boards))}.` },
    ...sheets.packing.boards.map(
      ({ label, holds }): Block => ({
        block: 'list',
        title: text`${strong(label)}`,
        items: holds.split(', ').map((one) => [ownWords(one)]),
      }),
    ),
    { block: 'next', line: text`To cut out, say “print the sheets”.` },
  ];
};
