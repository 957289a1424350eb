// "hens 20 feb, wedding a week later": counted from another day that was just said; nothing is moved.

import type { Reader } from '../phrase.ts';
import { besideOccasions } from '../words/occasion-words.ts';

const beside = new Set([...besideOccasions, 'rehearsal', 'fitting', 'tasting', 'meeting']);

export const isCountedFromAnother = ({ tokens }: Reader, start: number, index: number): boolean => {
  const before = tokens.slice(start, index);
  return (
    before.some(({ text }) => beside.has(text)) &&
    before.some(({ means, number }) => means['month'] !== undefined || means['weekday'] !== undefined || number?.form === 'ordinal')
  );
};
