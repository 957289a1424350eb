// The lines of a run sheet: each begins with an hour of the day and tells what happens then. Their other numbers are mostly nobody's.

import { askedOnce } from './asked-once.ts';
import type { Token } from './token.ts';

const few = 2; // one line with its hour in front makes no run sheet
const towards = /^(-|to|til|till|until|\/)$/;

// "9am - 1pm me" tells a shift.
const opensLine = (tokens: readonly Token[], index: number): boolean => {
  const number = tokens[index]?.number;
  if (number?.form !== 'time' || number.max !== undefined) return false;
  return !(
    towards.test(tokens[index + 1]?.text ?? '') &&
    tokens[index + 2]?.number !== undefined &&
    tokens[index + 2]?.number?.form === 'time'
  );
};

/** Where the lines begin that have their hour in front, where there are several. */
export const clockLines = askedOnce((tokens): readonly number[] => {
  const starts: number[] = [];
  for (let index = 0; index < tokens.length; index++)
    if ((index === 0 || tokens[index - 1]?.kind === 'line') && opensLine(tokens, index)) starts.push(index);
  return starts.length < few ? [] : starts;
});

/** Whether the token stands on such a line. */
export const onClockLine = (tokens: readonly Token[], index: number): boolean => {
  const start = clockLines(tokens).findLast((each) => each <= index);
  if (start === undefined) return false;
  for (let at = start; at < index; at++) if (tokens[at]?.kind === 'line') return false;
  return true;
};
