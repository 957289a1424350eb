// Prices that hold for many alone: "1.90 each over 50", "8 for 5 or more", "£5 if you take 10", "buy 10 get 1 free". No pack holds it, so nobody reads it;
// the price before it holds for those who buy less.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const packs = '(<pack>|stems|stem|of them|bunches)?';
const steps = pattern(
  `((for|from|on|at|over|above|when buying|if) <count> ${packs} (or more|or over|or above|and over|and up|and above|up|upwards)|(over|above|more than) <count> ${packs}|(if|when|once) (i|we|you|u|they|ya) (take|takes|buy|order|get|do|go) (over|above|more than|at least)? <count>|(buy|get) <count> ${packs} (,|and|&)? get <count> (<ingredient>|free|half)|<count> ${packs} (or more|and over|and up|or over)|free <ingredient> (with|if|when|for)|<count> for (the price of)? <count> (on|deal|offer))`,
);
// "R220 for 10 bunches": the price of ten, and no bunch of ten.
const ofSeveral = pattern('<amount> for <count> <p:pack>');
// "£7 each or 3 for £18", "90p each or £16 for 20"
const orFew = pattern('(or|,|\\(|-) (<count> (<pack>)? for <money>|<money> (for|per) <count> (stems|stem)?)');
const opens = /^(,|\(|or|but|and|then|;)$/;
// "10+ rolls 7": at least so many.
const atLeast = (token: Token | undefined): boolean =>
  token?.number?.form === 'plain' && token.number.approx === true && token.end - token.start === token.text.length + 1;

/** Where the words about another price begin; `start` itself when none stands before them. */
export const priceSteps = (tokens: readonly Token[], start: number, end: number): number | undefined => {
  const several = ofSeveral.in(tokens, start, end)?.kept['p'];
  if (several !== undefined && /[^s]s$/.test(several.text) && several.means['pack'] !== 'stem') return start;
  let at = steps.in(tokens, start, end)?.start;
  const few = orFew.in(tokens, start + 1, end);
  if (
    few !== undefined &&
    (at === undefined || few.start < at) &&
    tokens.slice(start, few.start).some(({ number }) => number !== undefined)
  )
    at = few.start;
  for (let index = start; index < (at ?? end); index++) if (atLeast(tokens[index])) at = index;
  if (at === undefined) return undefined;
  for (let index = at; index > start; index--) if (opens.test(tokens[index]?.text ?? '')) return index;
  return start;
};
