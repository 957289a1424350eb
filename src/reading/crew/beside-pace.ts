// Hands and their hours beside how fast they are: "3 of us, 4 hrs each, 15 bouts an hour", "me for 4 hrs, 6 mins a bout".

import type { Reader, Unworded } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { paceIn, rateForms } from './crew-forms.ts';
import { clockSpan } from './shift-hours.ts';

/** Whether hours are told apart from the pace: "does 20 lapels in 2 hours" has none of its own. */
export const besidePace = (reader: Reader, part: Part, speed: Unworded | undefined): boolean => {
  const { tokens } = reader;
  if (speed?.fact !== 'crew') return false;
  const hours = tokens.slice(part.start, part.end).filter(({ number }) => number?.form === 'duration' && number.unit === 'hour');
  if (speed.minutesPerPiece !== undefined)
    return hours.length === 1 && Number(hours[0]?.number?.amount) * 60 !== speed.minutesPerPiece && saysMinutes(reader, part);
  if (rateForms.every((form) => form.in(tokens, part.start, part.end) === undefined)) return false;
  if (paceIn.in(tokens, part.start, part.end)?.kept['d'] !== undefined) return false;
  if (hours.length > 0) return true;
  for (let index = part.start; index < part.end; index++) if (clockSpan(tokens, index, part.end) !== undefined) return true;
  return false;
};

const saysMinutes = ({ tokens }: Reader, { start, end }: Part): boolean =>
  tokens.slice(start, end).some(({ number }) => number?.unit === 'min');

/** Whether a number is left that goes into neither: "2 of us sat 9-1, 6 corsages an hour, 40 to do", "6 mins a bout, 12 a corsage". */
export const leavesNumber = (
  { tokens }: Reader,
  { start, end }: Part,
  told: readonly (number | string | undefined)[],
  dates: readonly Stretch[],
): boolean => {
  const known = new Set(told.flatMap((each) => (each === undefined ? [] : [Number(each)])));
  let minutes = 0;
  for (let index = start; index < end; index++) {
    const span = clockSpan(tokens, index, end)?.end ?? dates.find((date) => index >= date.start && index < date.end)?.end;
    if (span !== undefined && span > index) {
      index = span - 1;
      continue;
    }
    const number = tokens[index]?.number;
    if (number?.form === 'duration' && number.unit === 'min') minutes += 1;
    if (
      number?.form === 'plain' &&
      !known.has(Number(number.amount)) &&
      !(number.amount === '1' && tokens[index + 1]?.means['piece'] !== undefined)
    )
      return true;
  }
  return minutes > 1;
};
