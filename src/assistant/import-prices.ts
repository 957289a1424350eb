// A whole price list at once: a dropped file, a file named in the terminal, or pasted lines. All of its rows become facts, or none.

import { packFact } from '../buying/price-list.ts';
import { type ImportedPrices, namesPrices, readPriceList } from '../buying/read-price-list.ts';
import type { Reading } from '../reading/reading.ts';
import type { Result } from '../values/result.ts';
import type { IncomingMessage } from './ports.ts';

/** A file is always a list; a message is one when it begins with a list's headings and has rows below. */
export const isPriceList = (message: IncomingMessage): boolean =>
  message.kind === 'file' || ((message.kind === 'new' || message.kind === 'edit') && namesPrices(message.text));

/** Whether a line typed or pasted alone is the first of a list still to come. */
export const headsPriceList = (line: string): boolean => namesPrices(`${line}\nrows`);

export const priceListReading = (text: string, currency: string): Reading => {
  const read: Result<ImportedPrices> = readPriceList(text, { currency });
  if (!read.ok) return { facts: [], unread: [], asks: [], problems: [read.problem] };
  return { facts: read.value.items.map(packFact), unread: read.value.unread, asks: [], problems: [] };
};
