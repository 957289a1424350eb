// The number of a kind that stands apart from its name: "bouts from $18, need 10", "60 of them", "she reckons about fifteen".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import type { Price } from './price-at.ts';

// "bouts from $18, need 10": the number stands apart from the only kind that is named.
const needs = pattern(
  '(need|want|needs|wants|needing|wanting|requires|requiring|looking for|after|x|qty|quantity|order|ordering|do|doing|about|around|,|for|say|just|theres|there is|there are) (about|around|:)? <n:count> (of them|of those|pls|please|no|nos|pcs|pieces|in all|thanks)?',
);
// "bouts start from $18, she reckons about fifteen": beside a floor a rough number is how many; beside a price it may be one offered.
const guessed = pattern(
  "(reckons|reckon|thinks|think|thinking|guesses|guessing|figures|expects|expecting|probably|likely|said|says|hoping for|looking at) (it's|its|it'll be|she'll want|they'll want|she'll need|they'll need|she wants|on)? <n:count> (of them|or so|pls|please)?",
);
// "he reckons 30 guests" counts no pieces.
const guesses = /^(reckons|reckon|thinks|think|expects|expecting|inviting|having|guesses|said|says|has|have|got)$/;
const invited = /^(guests|people|persons|pax)$/;
const ofThem = pattern(
  '<n:count> (of them|of those|of these|of em|needed|required|reqd|wanted|in all|off|no|nos|pax|guests|people|persons|of ,)',
);
/** Where it stands, between `from` and `to`; `several`: other kinds are named too. */
export const neededNumber = (
  reader: Reader,
  from: number,
  to: number,
  open: (index: number) => boolean,
  prices: readonly Price[],
  several: boolean,
): number | undefined => {
  const floor = prices.length === 1 && prices[0]?.kind === 'from';
  for (let index = from; index < to; index++) {
    // "corsages on please / 3 pm, 22 of them": another line tells of something else.
    if (several && reader.tokens[index]?.kind === 'line') return undefined;
    const told = ofThem.at(reader.tokens, index, to);
    const guests = told !== undefined && invited.test(reader.tokens[told.end - 1]?.text ?? '');
    if (guests && (several || guesses.test(reader.tokens[index - 1]?.text ?? ''))) continue;
    const rough = floor ? guessed.at(reader.tokens, index, to) : undefined;
    const match = told ?? needs.at(reader.tokens, index, to) ?? (rough?.kept['n']?.number?.approx === true ? rough : undefined);
    const number = match?.kept['n'];
    const at = number === undefined ? -1 : reader.tokens.indexOf(number, index);
    const next = reader.tokens[match?.end ?? 0];
    const plainNoun =
      next !== undefined &&
      next.kind === 'word' &&
      next.means['material'] === undefined &&
      !tellsOfTax(next) &&
      next.means['piece'] === undefined &&
      !/^(by|on|before|asap|but|if)$/.test(next.text); // "needing 22 by friday"
    if (match === undefined || number === undefined || !open(at) || !reader.free(at) || (plainNoun && told === undefined)) continue;
    if (reader.tokens[index]?.text === ',' && !prices.some((price) => price.index > at)) continue;
    return at;
  }
  return undefined;
};
