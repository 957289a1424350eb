// An order by who wears what, a line for each with its number, kind and price, as a client's mail has it.

import type { Fact } from '../fact.ts';
import { priceEach } from '../order/price-each.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import { linesOf } from '../text/lines.ts';
import { placesIn } from '../text/places-in.ts';
import { type PricedRow, pricedRow } from '../wearers/priced-row.ts';

const fewest = 2; // lines: one alone is read as a sentence
const longest = 16; // tokens in a line

const factOf = ({ piece, count, number, wearer }: PricedRow): Unworded => ({
  fact: 'pieces',
  piece,
  count,
  price: priceEach(number),
  wearer,
});

// What the number of a line is of holds for all lines: 'open' where no line of several tells, or they contradict one another.
const mannerOf = (rows: readonly PricedRow[]): 'each' | 'line' | 'open' => {
  const told = new Set(rows.filter(({ count, per }) => count > 1 && per !== 'open').map(({ per }) => per));
  const [only, another] = told;
  if (rows.every(({ count }) => count === 1)) return 'each';
  return another === undefined ? (only ?? 'open') : 'open';
};

const cents = 100;
/** With what one of them costs, where the line's price is shared out evenly. */
const shared = (row: PricedRow): PricedRow | undefined => {
  const amount = Number(row.number.amount);
  const one = amount / row.count;
  return Number.isInteger(Math.round(amount * cents) / row.count) ? { ...row, number: { ...row.number, amount: String(one) } } : undefined;
};

const ask = (reader: Reader, rows: readonly PricedRow[]): Finding => {
  const [first] = rows as [PricedRow];
  const open = rows.find(({ count }) => count > 1) ?? first;
  const amount = open.number.amount;
  const choice = (words: string, all: readonly PricedRow[]): Choice => ({
    words,
    facts: all.map((row) => ({ ...factOf(row), words: reader.words(row.start, row.end) }) as Fact),
  });
  const lines = rows.flatMap((row) => shared(row) ?? []);
  const choices = [choice(`${amount} each`, rows), ...(lines.length === rows.length ? [choice(`${amount} for the line`, lines)] : [])];
  const takes = rows.flatMap(placesIn);
  return {
    start: first.start,
    end: rows.at(-1)?.end ?? first.end,
    takes,
    asks: [{ about: 'price', why: 'each or all', words: amount, choices }],
  };
};

// "groom 1 buttonhole 18" in lines is an order as it is typed.
const partsRow = /^[-:,=|–(]$/;
const isParted = ({ tokens }: Reader, { start, end }: PricedRow): boolean =>
  tokens.slice(start + 1, end).some(({ text }) => partsRow.test(text));

const find = (reader: Reader): Finding[] => {
  const lines = linesOf(reader.tokens);
  if (lines.length < fewest) return [];
  const rows = lines.flatMap((line) => (line.end - line.start > longest ? [] : (pricedRow(reader, line) ?? [])));
  if (rows.length < fewest || !rows.some((row) => isParted(reader, row))) return [];
  if (mannerOf(rows) !== 'each') return [ask(reader, rows)];
  return rows.map((row) => found(reader, row.start, row.end, [factOf(row)]));
};

export const pricedRows: Phrase = { name: 'priced rows', examples: [], find };
