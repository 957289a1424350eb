// What a number said before was of: "the 25 was the price each, not how many", "16.50 is per piece btw, not the lot".

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';

const lead = '(sorry|soz|oops|no|ok|actually|oh|so|just|also|btw|fyi|,|-|:|to be clear){0,4}';
const number =
  "(the|that|those|my|our)? <n:amount> (for|on) (the|our)? <p:piece> (is|was|'s|are|were|meant|means)|(the|that|those|my|our)? <n:amount> ((i|we) (put|said|gave you|typed|quoted|wrote|sent))? (is|was|'s|are|were|meant|means)";
const aside = '(btw|fyi|sorry|soz|,|-|;|\\(|as in){0,3}';
const not = '(not|and not|rather than|instead of|never)';
const each =
  '((the|a|my|our)? (price|cost|rate|unit price|charge) (<each>|of each|of one|for one|per piece|for each)?|<each>|for one|what (each|one) costs)';
const many =
  '((the|a)? (how many|count|number|quantity|qty|headcount|amount|nos|number of|quantity of|pieces)|how many) (of them|of those|we need|they want|there are|needed|<piece>|pieces)?';
const whole = '(for|of)? (the|a|my|our)? (<all>|total|lot|whole lot|whole order|sum|all|order|whole thing)';
const ends = '(\\)|btw|sorry|soz|thanks|ta|please|pls|,){0,2}';
const asPrice = [`${lead} (${number}) ${each} ${aside} ${not} (${many}|${whole}) ${ends}`].map((source) => pattern(source));
const asCount = [
  `${lead} (${number}) ${many} ${aside} ${not} (${each}|(the)? (prices|costs)|what (they|it|one|each) (cost|costs)) ${ends}`,
].map((source) => pattern(source));

const factOf = ({ kept }: Match, counts: boolean): Unworded | undefined => {
  const said = kept['n']?.number;
  if (!isSingle(said)) return undefined;
  const piece = kept['p']?.means['piece'] as PieceKind | undefined;
  const kind = ofKind(piece);
  if (!counts) return { fact: 'change', what: 'price', to: said.amount, per: 'each', ...currencyFields(said), ...kind };
  const isWhole = said.form === 'plain' && Number.isInteger(Number(said.amount));
  return isWhole ? { fact: 'change', what: 'count', to: Number(said.amount), ...kind } : undefined;
};

const readPart = (reader: Reader, { start, end, asked }: Part): Finding[] => {
  if (asked) return [];
  for (const [forms, counts] of [[asPrice, false] as const, [asCount, true] as const]) {
    const match = firstAt(forms, reader.tokens, start, end);
    const fact = match?.end === end ? factOf(match, counts) : undefined;
    if (fact !== undefined) return [found(reader, start, end, [fact])];
  }
  return [];
};

/** Before questions: "not how many" asks nothing. */
export const numberExplained: Phrase = {
  name: 'what a number is of',
  examples: [],
  find: (reader) =>
    reader
      .untouched()
      .slice(0, 20)
      .flatMap((part) => readPart(reader, part)),
};
