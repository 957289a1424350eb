// "we wont need the 3 extra corsages", "the 2 extra bouts are cancelled": what was added is taken off again. "We don't need 2 more" adds none.

import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const off =
  /^(cancel|cancelled|scrap|scrapped|forget|ignore|scratch|scrub|undo|ditch|skip|delete|longer|wont|won't|don't|dont|doesn't|doesnt|didnt|didn't)$/;
const breaks = /^(but|so|and|also|plus|then|just|actually|sorry|wait)$/;
const behind = pattern(
  "(please|pls|now)? (are|is|aren't|arent|isn't|isnt|were|been|have been|has been|not|no longer|all|now|have|has|can|don't|dont|won't|wont){0,3} (cancelled|canceled|scrapped|off|not needed|needed|required|wanted|not required|gone|go|come off|happening|dropped out)",
);
const negative = /^(cancel.*|scrapped|off|gone|go|out|\S+n't|arent|isnt|dont|wont|not|no)$/;
const reminder = /^(don't|dont|not|never|didn't|didnt|nearly|almost)$/;

/** "don't forget the 2 extra bouts" */
export const reminds = (tokens: readonly Token[], index: number): boolean =>
  /^(forget|forgot)$/.test(tokens[index]?.text ?? '') && reminder.test(tokens[index - 1]?.text ?? '');

const offBefore = (tokens: readonly Token[], start: number): boolean => {
  for (let at = start - 1; at >= 0 && start - at < 6; at--) {
    const token = tokens[at];
    const text = token?.text ?? '';
    if (token?.kind !== 'word' || breaks.test(text) || token.means['piece'] !== undefined || reminds(tokens, at)) return false;
    if (off.test(text) || (text === 'no' && tokens[at + 1]?.text === 'need')) return true;
  }
  return false;
};

/** Whether more is said of what is not wanted: then so many are taken off, or how many is not said. */
export const takenBack = (tokens: readonly Token[], { start, end, kept }: Match, stop: number): 'back' | 'unsure' | undefined => {
  const told = behind.at(tokens, end, stop);
  const negated = told !== undefined && tokens.slice(end, told.end).some(({ text }) => negative.test(text));
  if (tokens[start - 1]?.text === 'not') return 'unsure'; // "not 2 more bouts, 3 more"
  if (!offBefore(tokens, start) && !negated) return undefined;
  const known = kept['n'] !== undefined && [start, start - 1].some((at) => /^(the|those|that|my)$/.test(tokens[at]?.text ?? ''));
  return known ? 'back' : 'unsure';
};
