// "20 bouts at 2 sat 13 feb": a small number straight before its day may be the hour as well as what each costs. It is no price by that alone.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { dateAt } from './date-forms.ts';

const atNumber = pattern('(at|@) <n:plain>');
const joins = /^(on|this|the|next|coming)$/;
const last = 12;

const isSmall = (text: string | undefined): boolean => /^\d{1,2}$/.test(text ?? '') && Number(text) >= 1 && Number(text) <= last;

// "20 bouts at 8 4 corsages at 12 sat 13 feb": every kind has its price.
const pricesList = ({ tokens }: Reader, index: number): boolean => {
  for (let at = atNumber.next(tokens, 0, tokens.length); at < tokens.length; at = atNumber.next(tokens, at + 1, tokens.length))
    if (at !== index - 1 && tokens[at - 1]?.means['piece'] !== undefined && atNumber.at(tokens, at, tokens.length) !== undefined)
      return true;
  return false;
};

/** Whether the number here stands behind "at" and straight before a day, with nothing that makes it a price. */
export const isBeforeDay = (reader: Reader, index: number): boolean => {
  const { tokens, context } = reader;
  const number = tokens[index]?.number;
  if (number?.form !== 'plain' || number.max !== undefined || !isSmall(number.amount)) return false;
  if (!/^(at|@)$/.test(tokens[index - 1]?.text ?? '')) return false;
  let next = index + 1;
  while (next < index + 3 && joins.test(tokens[next]?.text ?? '')) next += 1;
  const token = tokens[next];
  if (token === undefined || token.kind === 'line' || token.kind === 'sign') return false;
  const read = dateAt(tokens, next, context) ?? (next > index + 1 ? dateAt(tokens, index + 1, context) : undefined);
  return read !== undefined && !pricesList(reader, index);
};

/** The hour, where nothing of ours would be so cheap. */
export const hourBeforeDay = (reader: Reader, index: number): string | undefined => {
  const hour = Number(reader.tokens[index]?.number?.amount);
  return hour <= 4 && isBeforeDay(reader, index) ? `${hour + last}:00` : undefined;
};
