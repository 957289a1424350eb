// "wedding 14 feb from 12 to 4": the hours of a day, and no day that was changed to another.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const hours = pattern('from <a:plain> (to|till|til|until|-) <b:plain>');
const isHour = (amount: string | undefined): boolean => /^([1-9]|1[0-2])$/.test(amount ?? '');

export const hoursBehindDay = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = hours.in(tokens, start, end);
  if (match === undefined || !isHour(match.kept['a']?.number?.amount) || !isHour(match.kept['b']?.number?.amount)) return false;
  const [before, after] = [tokens[match.start - 1], tokens[match.end]];
  const day = tokens[match.start - 1]?.text === ',' ? tokens[match.start - 2] : before;
  // "moved the do from 6 to 13 march"
  if (after?.means['month'] !== undefined || after?.text === 'of' || after?.means['piece'] !== undefined) return false;
  return day?.means['month'] !== undefined || day?.means['weekday'] !== undefined || /^(ordinal|slashed)$/.test(day?.number?.form ?? '');
};
