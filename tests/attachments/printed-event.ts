// An invented event as its printed sheets take it, and what can be read back from the pages.

import type { SheetsInput } from '../../src/attachments/sheet-input.ts';
import { sheetsPdf } from '../../src/attachments/sheets-pdf.ts';
import type { PieceKind } from '../../src/handbook/pieces.ts';
import { sheetRows } from '../../src/handover/sheets.ts';
import { sheetsAsLaid } from '../../src/handover/sheets-as-laid.ts';
import type { EventState } from '../../src/thread/event.ts';
import { anEvent, eventDay, line, wears, yard } from '../handover/an-event.ts';
import { type PlacedWords, readPdf } from './read-pdf.ts';

export const harbourDance = anEvent({
  date: eventDay,
  time: '14:00',
  lines: [line(9, 'buttonhole', { material: 'dried' }), line(2, 'wrist corsage', { material: 'fresh' })],
  wearers: [
    wears('groom'),
    wears('groomsmen', 5),
    wears('page boy', 1, { note: 'aged 4' }),
    wears('grandfather', 1, { note: 'pacemaker, heavy coat' }),
    wears('mothers', 2),
  ],
  recipes: {
    buttonhole: [
      { ingredient: 'bunny tail', stems: 2 },
      { ingredient: 'ribbon, oat', length: 30, unit: 'cm' },
    ],
    'wrist corsage': [{ ingredient: 'white ranunculus', stems: 3 }],
  },
});

const names = (piece: PieceKind) => ({ one: piece, many: `${piece}s` });

export const printed = (event: EventState, more: Partial<SheetsInput> = {}): SheetsInput => ({
  studio: 'Tarry Lane Flowers',
  event: 'Harbour dance',
  handOver: 'Sat 13 March, 16:00, at the yard',
  dayFirst: true,
  paper: 'A4',
  stamp: Date.UTC(2027, 0, 20, 9),
  ...sheetRows(event, yard, names),
  ...sheetsAsLaid(event, yard, names),
  ...more,
});

export const readBack = (input: SheetsInput) => readPdf(sheetsPdf(input, { compress: false }));

/** The words of all pages of one sheet, by the start of its title. */
export const sheetOf = (input: SheetsInput, title: string): readonly PlacedWords[] => {
  const { words } = readBack(input);
  const pages = new Set(words.filter((one) => one.size === 20 && one.words.startsWith(title)).map((one) => one.page));
  return words.filter((one) => pages.has(one.page));
};

export const said = (input: SheetsInput, title: string): string =>
  sheetOf(input, title)
    .map((one) => one.words)
    .join(' ');
