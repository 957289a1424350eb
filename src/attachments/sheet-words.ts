// The few lines that several of the printed sheets share.

import type { SheetsAsLaid } from '../handover/sheets-as-laid.ts';
import { fullDate } from '../reply/words/dates.ts';
import { oneLine } from './plain-text.ts';
import type { SheetsInput } from './sheet-input.ts';

/** "Harbour dance · Sun 14 March 2027, 14:00 · Tarry Lane Flowers". */
export const eventLine = (input: SheetsInput): string => {
  const day = input.eventDay === undefined ? 'date to be settled' : fullDate(input.eventDay, { dayFirst: input.dayFirst });
  return [oneLine(input.event), input.time === undefined ? day : `${day}, ${input.time}`, oneLine(input.studio)].join(' · ');
};

export const withoutPieceLine = (laid: SheetsAsLaid['laid']): string =>
  laid.withoutPiece.length === 0
    ? ''
    : `More wearers than pieces. Without one: ${laid.withoutPiece.map((one) => `${one.wearer} × ${one.missing}`).join(', ')}.`;
