// "make it 45 bouts, wedding moved to 15 may": the day in one clause and the pieces in the other, each read by itself, so that neither is lost in the other.

import { handsAt } from '../dates/hand-over-hour.ts';
import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { bareNumber } from './bare-number.ts';
import { markers } from './change-words.ts';
import { dateChange } from './date-change.ts';

const breaks = /^(,|;|-|and|n|&|plus|also|but|so)$/;
const dayNames = /^(today|tomorrow|tmrw|tmr|tomoz|noon|midday)$/;
const dayForms = new Set<string | undefined>(['ordinal', 'slashed', 'time']);
const ofPieces = ['piece', 'each', 'material', 'ingredient', 'taxName', 'taxWord'];
const events = /^(date|day|do|service|vows|mass)$/;

const isDay = ({ means, number, text }: Token): boolean =>
  means['weekday'] !== undefined || means['month'] !== undefined || dayForms.has(number?.form) || dayNames.test(text);
const isOfPieces = ({ means, number }: Token): boolean => number?.form === 'money' || ofPieces.some((tag) => means[tag] !== undefined);
const ofEvent = (reader: Reader, { start, end }: Part): boolean =>
  firstWhere(reader.tokens, start, end, ({ text }, at) => isOccasion(text) || events.test(text) || handsAt(reader, at)) >= 0;

// "make it 45, wedding moved to 21 march": a number alone. Where it could be a day of the month ("moved to the 20th, sorry 21") it is no side of its own.
const lastOfMonth = 31;
const makes = pattern('(ok|so|now|please|pls|actually|,){0,2} make (it|that|them)');
const putsRight = (reader: Reader, side: Part, ahead: boolean): boolean => {
  const { tokens } = reader;
  const numbers = tokens.slice(side.start, side.end).flatMap(({ number }) => number ?? []);
  const [number] = numbers;
  if (number === undefined) return false;
  const priced = tokens.slice(side.start, side.end).some(isOfPieces) && anyIn(markers, tokens, side.start, side.end);
  const sure =
    numbers.every(({ amount }) => Number(amount) > lastOfMonth) || (ahead && makes.at(tokens, side.start, side.end) !== undefined);
  return priced || (sure && bareNumber(reader, side)?.facts !== undefined);
};

/** The two sides of such a sentence, in the order they stand. */
export const dayApart = (reader: Reader, part: Part): readonly [Part, Part] | undefined => {
  const { tokens } = reader;
  const stretch = tokens.slice(part.start, part.end);
  if (!stretch.some(isDay) || !stretch.some(({ means, number }) => means['piece'] !== undefined || number !== undefined)) return undefined;
  for (let at = part.start + 1; at < part.end - 1; at++) {
    if (!breaks.test(tokens[at]?.text ?? '')) continue;
    let start = at;
    while (start < part.end && breaks.test(tokens[start]?.text ?? '')) start += 1;
    const sides = [
      { ...part, end: at },
      { ...part, start },
    ] as const;
    const words = sides.map((side) => tokens.slice(side.start, side.end));
    const day = words.findIndex((each) => each.some(isDay) && !each.some(isOfPieces));
    const pieces = words.findIndex((each) => !each.some(isDay) && each.some(({ means }) => means['piece'] !== undefined));
    const ofDay = sides[day];
    if (ofDay === undefined) continue;
    const other = sides[1 - day] as Part;
    if (pieces < 0 && (tokens.slice(other.start, other.end).some(isDay) || !putsRight(reader, other, day === 1))) continue;
    if (ofEvent(reader, ofDay) || dateChange(reader, ofDay) !== undefined) return sides;
  }
  return undefined;
};
