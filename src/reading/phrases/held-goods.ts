// What goods cost or took another time, and offers for them: no price of the list.

import { likeness } from '../held/signs.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';

// "statice 4.80 last year": what goods cost or took another time is in no list.
const goodsThen = pattern(
  '((last|previous) (year|time|season|month|wedding|job|summer|winter)|used to (be|cost|use|do|take)|other (wholesaler|supplier|market)|quoted (at|us|me)|not <number>)',
);
// "statice 12.50 for a bunch of 10, used to be 11": what they cost, and what they did.
const wasThen = pattern('<ingredient> <any>{0,6} <amount> <any>{0,6} used to (be|cost) <amount>');
const wasOnly = pattern(
  '(was|were|cost) (about|only|around|just)? <amount> ((a|per|/)? <pack>|<each>)? ((last|previous) (year|time|season|month|week|summer|winter|spring|autumn)|back then|in the old days)',
);
// "gyp is £6 not £5": put right, and both are prices.
const putRight = pattern('<ingredient> (is|are)? (now)? <money> ((a|per|/) <pack>)? (,)? not <money>');
// "ranunculus are two for one til friday": an offer, and no price.
const offer = pattern(
  '(two for one|2 for 1|three for two|3 for 2|(two|2|three|3) for the price of (one|two|1|2)|buy (one|1|two|2) get (one|1) (free)?)',
);
const findGoods = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, 40)
    .filter((part) => {
      const words = reader.tokens.slice(part.start, part.end);
      if (!words.some((token) => token.means['ingredient'] !== undefined) || !words.some((token) => token.number !== undefined))
        return false;
      if (offer.in(reader.tokens, part.start, part.end) !== undefined) return true;
      // "statice was 4.80 last year": no word of what they are now.
      const amounts = words.filter(({ number }) => number?.form === 'plain' || number?.form === 'money');
      if (amounts.length === 1 && wasOnly.in(reader.tokens, part.start, part.end)?.end === part.end) return true;
      if (words.some((token) => /^(from|was|now|instead|up|make)$/.test(token.text))) return false;
      if (putRight.in(reader.tokens, part.start, part.end) !== undefined) return false;
      const then = goodsThen.in(reader.tokens, part.start, part.end);
      if (wasThen.in(reader.tokens, part.start, part.end) !== undefined) return false;
      return then !== undefined && !likeness.test(reader.tokens[then.start - 1]?.text ?? '');
    })
    .map(({ start, end }) => ({ start, end, held: true }));

export const heldGoods: Phrase = { name: 'held goods', examples: [], find: findGoods };
