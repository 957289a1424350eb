// What something was, and then what it is: "was 18 bouts, now 20", "was £12 each, call it £13-14".

import { pattern } from '../pattern.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { comparable, type Zones } from './two-zones.ts';

export const wasSupposed = pattern('(was|were) (supposed|meant|to be|already)');

const callIt = pattern('((call|make) (it|that|them)|say) (about|around)? <amount>');
/** What it was ends where "now" begins, or what to call it now. */
export const wasAndNow = (tokens: readonly Token[], start: number, end: number): Zones | undefined => {
  const was = firstWhere(tokens, start, end, (token) => /^(was|were)$/.test(token.text));
  const now =
    was < 0
      ? -1
      : firstWhere(
          tokens,
          was + 1,
          end,
          ({ text }, index) =>
            /^(now|moved|brought|pushed|bumped|shifted|haggled|bargained|negotiated|beaten|talked|knocked)$/.test(text) ||
            callIt.at(tokens, index, end) !== undefined,
        );
  if (now < 0 || wasSupposed.at(tokens, was, end) !== undefined) return undefined;
  if (!tokens.slice(was, now).some(comparable) || !tokens.slice(now, end).some(comparable)) return undefined;
  return {
    old: [[was + 1, now]],
    fresh: [
      [start, was],
      [now, end],
    ],
  };
};
