// The few lines that the printed sheets and their plain text share.

import { fullDate } from '../reply/words/dates.ts';
import type { Board, BoardsLaidOut } from './boards.ts';
import { oneLine } from './plain-text.ts';
import type { SheetsInput } from './sheet-input.ts';

/** "Harbour dance · Sun 14 March 2027, 14:00 · Tarry Lane Flowers". */
export const eventLine = (input: SheetsInput): string => {
  const day = input.eventDay === undefined ? 'date to be settled' : fullDate(input.eventDay, { dayFirst: input.dayFirst });
  return [oneLine(input.event), input.time === undefined ? day : `${day}, ${input.time}`, oneLine(input.studio)].join(' · ');
};

export const withoutPieceLine = (laid: BoardsLaidOut): string =>
  laid.withoutPiece.length === 0
    ? ''
    : `More wearers than pieces. Without one: ${laid.withoutPiece.map((one) => `${one.wearer} × ${one.missing}`).join(', ')}.`;

export const boardName = (board: Board): string => `${board.on === 'board' ? 'Board' : 'Box'} ${board.number}`;
