// What the printed sheets are made from: the order already counted, laid on boards and named, so that paper and thread cannot disagree.

import type { SheetRows } from '../handover/sheets.ts';
import type { SheetsAsLaid } from '../handover/sheets-as-laid.ts';

export interface SheetsInput extends SheetRows, SheetsAsLaid {
  readonly studio: string;
  readonly event: string;
  readonly handOver?: string; // "Sat 13 March, 16:00, at the yard"
  readonly dayFirst: boolean;
  readonly paper: 'A4' | 'Letter';
  readonly stamp: number; // epoch milliseconds, kept in the file as its date
}
