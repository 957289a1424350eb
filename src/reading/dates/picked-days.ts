// A day picked from the week-end, the week or the month said elsewhere in the message: "labor day weekend, the sunday", "on the 14th … in march".

import type { Day } from '../../values/day.ts';
import { dayOfMonth, monthOf, yearOf } from '../../values/day.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { firstWhere } from '../text/token.ts';
import { weekdayNumber } from './calendar-sums.ts';
import type { DateRead } from './date-read.ts';
import { vetoes } from './date-words.ts';
import { monthOfToken } from './day-parts.ts';
import { monthFrom } from './weekends.ts';

const notTheDay =
  /^(by|before|until|till|til|from|after|since|due|collect|collecting|collection|pickup|pick|deliver|delivery|drop|handover|setup|call|meet|deposit|order|ordering|buy|not)$/;
const oneDay = /^(the|on|this|it's|its|is|for|to|by|be|a|probably|,|\(|-|being|which)$/;

interface Picker {
  readonly weekday: number | undefined;
  readonly number: number | undefined;
}

// Only a weekday, only a day of the month, or both: nothing that names the day by itself.
const pickerOf = (reader: Reader, read: DateRead): Picker | undefined => {
  if (read.relative !== true || read.within !== undefined) return undefined;
  let weekday: number | undefined;
  let number: number | undefined;
  for (let index = read.start; index < read.end; index++) {
    const token = reader.tokens[index];
    if (token?.means['weekday'] !== undefined) weekday = Number(token.means['weekday']);
    else if (token?.number?.form === 'ordinal') number = Number(token.number.amount);
    else if (!oneDay.test(token?.text ?? '')) return undefined;
  }
  const before = reader.tokens.slice(Math.max(0, read.start - 2), read.start);
  if (weekday === undefined && number === undefined) return undefined;
  return before.some((token) => notTheDay.test(token.text)) ? undefined : { weekday, number };
};

const picked = (within: readonly Day[], { weekday, number }: Picker): Day[] =>
  within.filter((day) => (weekday === undefined || weekdayNumber(day) === weekday) && (number === undefined || dayOfMonth(day) === number));

// "the 14th is grand with them, march": a month that stands alone, in the same message as a day without one.
const loneMonth = (reader: Reader, read: DateRead): DateRead | undefined => {
  const { tokens, context } = reader;
  const isMonth = (index: number): boolean => {
    const token = tokens[index];
    if (token?.means['month'] === undefined || (index >= read.start && index < read.end) || !reader.free(index)) return false;
    // "it may be", "they march in"
    const next = tokens[index + 1];
    if (/^(may|march)$/.test(token.text) && /^(for|wedding|event|party)$/.test(next?.text ?? '')) return true;
    return !/^(may|march|sun|sat|mar|wed)$/.test(token.text) || next?.kind !== 'word';
  };
  const at = firstWhere(tokens, 0, tokens.length, (_, index) => isMonth(index));
  if (at < 0 || firstWhere(tokens, at + 1, tokens.length, (token) => token.means['month'] !== undefined) >= 0) return undefined;
  if (tokens[at + 1]?.number !== undefined || tokens[at - 1]?.number !== undefined) return undefined;
  const month = monthOfToken(tokens[at]);
  const year = yearOf(context.today) + (month < monthOf(context.today) ? 1 : 0);
  return { start: at, end: at + 1, days: [], within: monthFrom(context, month, year) };
};

// "wedding april, the 10th or 17th": neither is picked.
const orAnother = pattern('(,)? or (the)? <d:ordinal>');
const secondOf = ({ tokens }: Reader, { read, picker }: { readonly read: DateRead; readonly picker: Picker }): Match | undefined =>
  picker.number === undefined ? undefined : orAnother.at(tokens, read.end, tokens.length);

const alone = pattern('(the|on the|of the)? <d:ordinal>');
// "march for this one, the 14th": beside a month a day of the month need not be led in.
const loneDay = (reader: Reader, month: DateRead): DateRead | undefined => {
  const { tokens } = reader;
  for (let index = 0; index < tokens.length; index++) {
    if (!reader.free(index) || (index >= month.start && index < month.end)) continue;
    const match = alone.at(tokens, index, tokens.length);
    const next = tokens[match?.end ?? 0];
    if (match === undefined) continue;
    if (
      next !== undefined &&
      next.kind === 'word' &&
      !/^(i|probably|maybe|then|for|if|is|it|at|we|they|pls|please|they're)$/.test(next.text)
    )
      return undefined;
    if (next?.means['weekday'] !== undefined || next?.number !== undefined) return undefined;
    return { start: index, end: match.end, days: [], relative: true };
  }
  return undefined;
};

/** The reads, with a day picked where one read narrows another, and the words that did the picking. */
export const withPickedDay = (
  reader: Reader,
  reads: readonly DateRead[],
): { readonly reads: readonly DateRead[]; readonly also: readonly DateRead[] } => {
  const others = (index: number): boolean => !reads.some((read) => read.start <= index && index < read.end);
  if (reader.tokens.some((token, index) => token.kind === 'word' && vetoes.has(token.text) && others(index))) return { reads, also: [] };
  const only = reads.length === 0 ? loneMonth(reader, { start: 0, end: 0, days: [] }) : reads[0];
  const day = only?.within !== undefined && reads.length <= 1 ? loneDay(reader, only) : undefined;
  const all = reads.length === 0 && only !== undefined ? [only] : reads;
  const pickers = (day === undefined ? all : [...all, day]).flatMap((read) => {
    const picker = pickerOf(reader, read);
    return picker === undefined ? [] : [{ read, picker }];
  });
  const [first, another] = pickers;
  if (first === undefined || another !== undefined) return { reads, also: [] };
  const said = all.filter((read) => read.within !== undefined);
  const whole = said.length === 0 && reads.length === 1 && first.picker.number !== undefined ? loneMonth(reader, first.read) : said[0];
  if (whole?.within === undefined || said.length > 1 || reads.length > 2) return { reads, also: [] };
  const second = secondOf(reader, first);
  const both = second === undefined ? [] : picked(whole.within, { weekday: undefined, number: Number(second.kept['d']?.number?.amount) });
  const days = [...picked(whole.within, first.picker), ...both].sort();
  if (days.length === 0) return { reads, also: [] };
  const picking = second === undefined ? first.read : { ...first.read, end: second.end };
  const [start, end] = whole.start < first.read.start ? [whole, picking] : [picking, whole];
  const { why: _, within: __, dayOnly: ___, ...rest } = start;
  const read: DateRead = {
    ...rest,
    ...(reads.length === 0 ? { relative: true as const } : {}),
    days,
    ...(days.length === 1 ? {} : { why: 'which day' as const }),
    yearAssumed: true,
  };
  return { reads: [read], also: [end] };
};
