// How long a shift is, by the hours of the clock it begins and ends: "9 til 3", "half eight to half twelve", "thurs arvo 1 til 5".

import { decimal } from '../../values/decimal.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const till = '(-|to|til|till|until|thru|through)';
const one = (hour: string, time: string): string => `(half|quarter)? (past|to)? (<${hour}:count>|<${time}:time>|noon|midday)`;
const clock = pattern(`(from)? ${one('c', 'a')} ${till} ${one('e', 'b')}`);
/** "thurs arvo 1 til 5": two hours of the clock, read as a range. */
const clockRange = pattern('(from|arvo|afternoon|morning|<weekday>|tomorrow|,|at) <r:range>');

// The hour a stretch names, in minutes: "half eight" is half past eight, as it is said in English.
const minutesAt = (tokens: readonly Token[], bare: Token | undefined, time: Token | undefined): number | undefined => {
  const texts = tokens.map((token) => token.text);
  if (texts.some((text) => /^(noon|midday)$/.test(text))) return texts.length === 1 ? 12 * 60 : undefined;
  const parts = time?.number?.parts;
  const hour = parts === undefined ? Number(bare?.number?.amount) : (parts[0] ?? 0);
  const minute = parts?.[1] ?? 0;
  if (!(hour <= 24) || !Number.isInteger(hour) || bare?.number?.max !== undefined) return undefined;
  const [share, way] = texts;
  if (share !== 'half' && share !== 'quarter') return hour * 60 + minute;
  if (minute !== 0 || hour > 12) return undefined;
  if (share === 'half') return way === 'to' ? undefined : hour * 60 + 30;
  return way === 'past' ? hour * 60 + 15 : way === 'to' ? hour * 60 - 15 : undefined;
};

export const shiftHours = (reader: Reader, part: Part): number | undefined => {
  const { tokens } = reader;
  const match = clock.in(tokens, part.start, part.end);
  if (match === undefined) {
    const range = clockRange.in(tokens, part.start, part.end)?.kept['r']?.number;
    const [first, last] = [Number(range?.amount), Number(range?.max)];
    return range?.form === 'plain' && range.or === undefined && last <= 12 && first >= 1 ? last - first : undefined;
  }
  const { a, b, c, e } = match.kept;
  const opening = match.start + (tokens[match.start]?.text === 'from' ? 1 : 0);
  const begins = a ?? c;
  const split = begins === undefined ? opening + 1 : tokens.indexOf(begins, opening) + 1;
  const from = minutesAt(tokens.slice(opening, split), c, a);
  const to = minutesAt(tokens.slice(split + 1, match.end), e, b);
  if (from === undefined || to === undefined) return undefined;
  const minutes = to > from ? to - from : to + 12 * 60 - from;
  return minutes > 0 && minutes <= 14 * 60 ? minutes / 60 : undefined;
};

/** 15 hours between 3 are 5 each; what does not come out in quarters is left as the total. */
export const evenly = (total: number, people: number): number | undefined => {
  const each = decimal(total).dividedBy(people);
  return each.times(4).isInteger() ? each.toNumber() : undefined;
};
