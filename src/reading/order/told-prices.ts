// Prices told of a kind before or behind the list that counts it: "crowns are 45, they need 6 crowns", "we charge 9.50 for bouts, she wants 12 bouts".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { forSeveral } from './for-kinds.ts';
import { related } from './match-prices.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';

const behindName = pattern('(is|are|at|@|=|:|cost|come to|go for|sell at|go at|will be)? (only|just)? <n:amount> (<each>)?');
const beforeName = pattern('<n:amount> (<e:each>)? (for|on) (the|our|a|each)? <p:piece>');

// "15 ea the bouts 28 ea the corsages"
const isNumberAhead = (tokens: readonly Token[], start: number): boolean => {
  let at = start - 1;
  while (at > start - 5 && (tokens[at]?.means['each'] !== undefined || /^(a|an|per|\/|each|for|on|the|our)$/.test(tokens[at]?.text ?? '')))
    at -= 1;
  return tokens[at]?.number !== undefined;
};

/** A price for each kind that is named once with its price and once with its count. */
export const toldPrices = (reader: Reader, mentions: readonly Mention[], known: readonly Price[]): Price[] => {
  const { tokens } = reader;
  const counted = [...new Set(mentions.flatMap(({ kind, countIndex }) => (countIndex === undefined ? [] : [kind])))];
  return mentions.flatMap((mention): Price[] => {
    if (mention.countIndex !== undefined || !counted.some((kind) => related(kind, mention.kind))) return [];
    if (known.some((price) => price.pieceIndex === mention.index)) return [];
    const own = { per: 'each' as const, at: false, piece: mention.kind, pieceIndex: mention.index };
    const after = behindName.at(tokens, mention.last + 1, tokens.length);
    const number = after?.kept['n'];
    // "$12 bouts $28 corsages": the price of the name stands before it.
    const bare = after !== undefined && tokens[mention.last + 1] === number;
    const ahead = bare && isNumberAhead(tokens, mention.start);
    if (after !== undefined && number?.number !== undefined && !ahead)
      return [{ ...own, index: tokens.indexOf(number, mention.last), start: mention.start, end: after.end, number: number.number }];
    for (let start = Math.max(0, mention.index - 5); start < mention.index; start++) {
      const before = beforeName.at(tokens, start, mention.index + 1);
      const told = before?.kept['n']?.number;
      // "£900 for the corsages and the bouts" is of both.
      if (before?.kept['e'] === undefined && forSeveral(tokens, start + 1) !== undefined) continue;
      if (before?.end === mention.index + 1 && told !== undefined && reader.free(start))
        // "$112 for the corsages" may be what they come to.
        return [
          {
            ...own,
            per: before.kept['e'] === undefined ? 'unsaid' : 'each',
            index: start,
            start,
            end: before.end,
            number: told,
            // "9 lapels, 16 for the lapels max"
            ...(tokens[before.end]?.means['upTo'] === undefined ? {} : { kind: 'up to' }),
          },
        ];
    }
    return [];
  });
};
