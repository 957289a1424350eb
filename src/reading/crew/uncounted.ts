// A number beside hands and hours that goes into nothing that is stored: "£12 an hour for jo and mia, 9 til 1". The sentence is held, for the
// number may change what the others mean.

import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';

/** Whether such a number stands behind the hours or the wage; those before them count hands. `clocked`: hours of the clock count its numbers. */
export const uncounted = (
  { tokens }: Reader,
  { start, end }: Part,
  told: readonly (number | string | undefined)[],
  dates: readonly Stretch[],
  clocked: boolean,
): boolean => {
  if (clocked) return false;
  const known = new Set(told.flatMap((each) => (each === undefined ? [] : [Number(each)])));
  let behind = false;
  for (let index = start; index < end; index++) {
    const number = tokens[index]?.number;
    if (number === undefined) continue;
    const other = /^(plain|money)$/.test(number.form) && !known.has(Number(number.amount));
    if (behind && other && !dates.some((date) => index >= date.start && index < date.end)) return true;
    behind ||= number.form === 'duration' || number.form === 'money';
  }
  return false;
};
