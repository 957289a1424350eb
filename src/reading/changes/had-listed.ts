// What stood on the list before: "only want 5 corsages now, had them down for 7", "had 7 corsages down, they want 5".

import { pattern } from '../pattern.ts';
import { didWord, doneWord, stageWord } from '../progress/done-words.ts';
import type { Token } from '../text/token.ts';
import type { Zones } from './two-zones.ts';

const down = '(down|listed|noted|booked|noted down|written down|marked|marked down|pencilled in|on the (list|order|sheet))';
const what = '(it|them|those|these|that|you|her|him|(the)? (<material>)? <piece>)';
const link = '(,|-|but|;|and){1,2}';
const had = `(i|we|i'd|id|we'd|you)? (had|got) (${what}? ${down} (for|as|at|with|to have|to get)? (about)? <n:count> (<material>)? (<piece>)?|<n:count> (of)? (<material>)? (<piece>|those|them)? ${down})`;
const behind = pattern(`${link} ${had}`);
const ahead = pattern(`${had} ${link} <any>{0,4} <count>`);
const linkAlone = /^(,|-|but|;|and)$/;
// "5 corsages done, had 7 down": work, of so many ordered.
const work = pattern(`(${doneWord}|${didWord}|${stageWord}|broke|broken|snapped|dropped|died|left|to go|so far)`);

/** The two sides of a correction that tells what was noted down, whichever comes first. */
export const hadListed = (tokens: readonly Token[], start: number, end: number): Zones | undefined => {
  const last = behind.in(tokens, start + 1, end);
  const first = last === undefined ? ahead.in(tokens, start, end) : undefined;
  if ((last === undefined && first === undefined) || work.in(tokens, start, end) !== undefined) return undefined;
  const numbers = (from: number, to: number): number => tokens.slice(from, to).filter(({ number }) => number !== undefined).length;
  if (last !== undefined)
    return numbers(start, last.start) === 1 && last.end === end
      ? {
          fresh: [[start, last.start]],
          old: [[last.start, end]],
        }
      : undefined;
  const from = first?.start ?? start;
  let turn = tokens.indexOf(first?.kept['n'] as Token, from) + 1;
  while (turn < end && !linkAlone.test(tokens[turn]?.text ?? '')) turn += 1;
  return numbers(turn, end) === 1 && numbers(start, from) === 0 ? { fresh: [[turn, end]], old: [[start, turn]] } : undefined;
};
