// Prices given as a row behind the pieces, or ahead of them: "6 bouts 2 corsages 3 crowns: 13/38/52 + tax". The same shape can be a date, so the row must have as many
// numbers as there are kinds, and be no day of the calendar or stand beside words that only a price has.

import { dayOf } from '../../values/day.ts';
import type { Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';

const priceWords = ['included', 'onTop', 'taxName', 'taxWord', 'each', 'all'];

const noSuchDay = ([a = 0, b = 0, c]: readonly number[]): boolean => {
  if (c !== undefined && c > 45 && c < 100) return true; // "11/28/60": nobody books that far ahead
  const year = c === undefined ? 2028 : c < 100 ? 2000 + c : c;
  return [dayOf(year, b, a), dayOf(year, a, b), dayOf(a, b, c ?? 0)].every((day) => day === undefined);
};

// "5 corsages (wrist)": a word in brackets right behind a kind says which of it, and is no kind more.
const isAside = ({ tokens }: Reader, at: number): boolean =>
  tokens[at - 1]?.text === '(' && tokens[at + 1]?.text === ')' && tokens[at - 2]?.means['piece'] !== undefined;

/** Whether the slashed numbers at this token are prices of the kinds named before them. */
export const isPriceSeries = (reader: Reader, index: number): boolean => {
  const token = reader.tokens[index];
  const parts = token?.number?.form === 'slashed' ? token.number.parts : undefined;
  if (token === undefined || parts === undefined || /[.-]/.test(token.text) || parts.some((part) => part < 4)) return false;
  const kinds = reader.tokens.slice(0, index).filter((each, at) => each.means['piece'] !== undefined && !isAside(reader, at)).length;
  if (kinds !== parts.length) return false;
  const next = reader.tokens[index + (/^[,)]$/.test(reader.tokens[index + 1]?.text ?? '') ? 2 : 1)];
  const after =
    next?.text === '+' || next?.text === 'plus' || next?.text === 'resp' || priceWords.some((tag) => next?.means[tag] !== undefined);
  const before = /^([@:$£€]|at|rs)$/.test(reader.tokens[index - 1]?.text ?? '');
  return after || before || noSuchDay(parts);
};

// "14/32/85 for 12 bouts 6 corsages 2 crowns": the row ahead of the pieces, as long as there are kinds, and no day.
const aheadOf = ({ tokens }: Reader, lines: readonly Mention[]): number => {
  const first = (lines[0]?.start ?? 0) - 1;
  const index = /^(for|:|-|=|each)$/.test(tokens[first]?.text ?? '') ? first - 1 : first;
  const parts = tokens[index]?.number?.form === 'slashed' ? tokens[index]?.number?.parts : undefined;
  if (parts === undefined || parts.length !== lines.length || parts.some((part) => part < 4)) return -1;
  const marked = /^[@$£€]$/.test(tokens[index - 1]?.text ?? '');
  return !/[.-]/.test(tokens[index]?.text ?? '.') && (marked || noSuchDay(parts)) ? index : -1;
};

/** The prices of such a row, one for each counted kind. */
export const seriesPrices = (reader: Reader, mentions: readonly Mention[]): Price[] => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined);
  const last = lines.at(-1);
  const behind = reader.tokens.findIndex((_, at) => at >= (last?.end ?? 0) && reader.free(at) && isPriceSeries(reader, at));
  const ahead = behind < 0 && lines.length > 1 ? aheadOf(reader, lines) : -1;
  const index = ahead >= 0 && reader.free(ahead) ? ahead : behind;
  const parts = reader.tokens[index]?.number?.parts ?? [];
  if (index < 0 || parts.length !== lines.length) return [];
  // "6 bouts 12/14 each, 2 corsages 28/32": a row behind each kind is no row of their prices.
  if (reader.tokens.some((token, at) => at < index && at >= (lines[0]?.end ?? 0) && token.number?.form === 'slashed')) return [];
  return lines.map((mention, at) => ({
    index,
    start: index,
    end: index + 1,
    number: { form: 'money', amount: String(parts[at] ?? 0) },
    per: 'each',
    at: false,
    piece: mention.kind,
    pieceIndex: mention.index,
  }));
};
