// The same sheets as plain text, for a thread, a terminal or a message to the person who will pin them on. Made from the same data as the PDF.

import { benchCard, cautionWords } from './bench-card.ts';
import { layOutBoards } from './boards.ts';
import { packingList } from './packing-list.ts';
import { oneLine } from './plain-text.ts';
import type { SheetPiece, SheetsInput } from './sheet-input.ts';
import { sheetSources } from './sheet-sources.ts';
import { boardName, eventLine, withoutPieceLine } from './sheet-words.ts';
import type { SheetsAsLaid } from './sheets-pdf.ts';

const joined = (lines: readonly string[]): string => lines.filter((line) => line !== '').join('\n');

const careLines = (input: SheetsInput, on: 'pin-on sheet' | 'packing list'): readonly string[] =>
  input.cautions.filter((caution) => caution.shownOn.includes(on)).map((caution) => `Take care: ${cautionWords(caution)}`);

/** One bench card. */
export const benchCardText = (piece: SheetPiece, input: SheetsInput): string => {
  const card = benchCard(piece, input);
  return joined([
    `${card.title}: ${card.counts}`,
    eventLine(input),
    card.time,
    `Worn: ${card.worn}`,
    'Recipe, for one:',
    ...(card.recipe.length === 0
      ? ['  no recipe yet']
      : card.recipe.map((line) => `  ${oneLine(line.amount)} ${oneLine(line.ingredient)}`)),
    'Steps:',
    ...card.steps.map(({ step, note }, index) => `  ${index + 1}. ${step}.${note === '' ? '' : ` ${note}`}`),
    ...card.cautions.map((caution) => `Take care: ${caution}`),
  ]);
};

/** One line for each piece, grouped by board, "[ ]" to tick. */
export const pinOnText = (input: SheetsInput, laid = layOutBoards(input)): string =>
  joined([
    'Pin-on sheet',
    eventLine(input),
    withoutPieceLine(laid),
    ...careLines(input, 'pin-on sheet'),
    ...laid.boards.flatMap((board) => [
      `${boardName(board)}: ${board.pieces}`,
      ...board.places.map((place) =>
        [
          '  [ ] ',
          oneLine(place.wearer),
          ` · ${place.piece}`,
          ` · ${place.side}`,
          place.note === '' ? '' : ` · ${oneLine(place.note)}`,
        ].join(''),
      ),
    ]),
  ]);

export const boardLabelsText = (input: SheetsInput, { boards } = layOutBoards(input)): string =>
  boards
    .map((board) =>
      joined([
        `${boardName(board)} of ${boards.length}: ${board.pieces}`,
        eventLine(input),
        ...board.places.map((place) => `  ${oneLine(place.wearer)}`),
      ]),
    )
    .join('\n\n');

export const packingText = (input: SheetsInput, list = packingList(input, layOutBoards(input).boards)): string => {
  const ticked = (lines: readonly string[]) => lines.map((line) => `  [ ] ${oneLine(line)}`);
  return joined([
    'Packing list',
    eventLine(input),
    input.handOver === undefined ? '' : `Hand over: ${oneLine(input.handOver)}`,
    'Pieces:',
    ...ticked(list.pieces),
    'Boards and boxes:',
    ...ticked(list.boards.map((board) => `${board.label} (${board.holds})`)),
    'Take:',
    ...ticked(list.take),
    ...(list.keep.length > 0 ? ['Keep:'] : []),
    ...list.keep.map((keep) => `  ${keep.words} [${keep.source}]`),
    ...careLines(input, 'packing list'),
  ]);
};

/** All the sheets, in the order of the PDF. */
export const sheetsText = (input: SheetsInput, given: SheetsAsLaid = {}): string => {
  const laid = given.laid ?? layOutBoards(input);
  return [
    ...input.pieces.map((piece) => benchCardText(piece, input)),
    pinOnText(input, laid),
    boardLabelsText(input, laid),
    packingText(input, given.packing ?? packingList(input, laid.boards)),
    joined(['Where this was read', ...sheetSources(input).flatMap(({ about, lines }) => [about, ...lines.map((line) => `  ${line}`)])]),
  ].join('\n\n');
};
