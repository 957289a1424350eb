// The sheets of an event as the printed file takes them: counts, people and boards as they were laid, in the studio's words, on its region's paper.

import type { SheetsInput } from '../attachments/sheet-input.ts';
import { sheetsPdf } from '../attachments/sheets-pdf.ts';
import { sheetRows } from '../handover/sheets.ts';
import { sheetsAsLaid } from '../handover/sheets-as-laid.ts';
import { namesOf } from '../reply/compose/packing.ts';
import { fullDate } from '../reply/words/dates.ts';
import { eventTitle } from '../reply/words/title.ts';
import { paperOf } from '../studio/paper.ts';
import type { Considered } from './consider.ts';

type Shown = Pick<Considered, 'event' | 'studio' | 'manner'>;

/** `stamp`: epoch milliseconds, kept in the file as its date. */
export const sheetsInput = ({ event, studio, manner }: Shown, stamp: number): SheetsInput => {
  const { handOver } = event;
  const day = handOver?.date ?? event.date;
  const when = handOver && day ? [fullDate(day, manner), ...(handOver.time ? [handOver.time] : [])].join(', ') : undefined;
  return {
    studio: studio.settings.name,
    event: eventTitle(event, manner),
    dayFirst: manner.dayFirst,
    paper: paperOf(studio.settings),
    stamp,
    ...(when === undefined ? {} : { handOver: when }),
    ...sheetRows(event, studio, namesOf(manner)),
    ...sheetsAsLaid(event, studio, namesOf(manner)),
  };
};

/** Throws where the thread has no pieces any more. */
export const sheetsFile = (shown: Shown, stamp: number): Uint8Array => {
  const input = sheetsInput(shown, stamp);
  if (input.cards.length === 0) throw new Error('there are no pieces to print sheets for');
  return sheetsPdf(input);
};
