// "8 table garlands, 2m each, all dried", "2 bouquets preserved 120 plus tax": where nothing worn is named, what they are made of and cost is not this order's.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { tellsOfTax } from '../text/of-tax.ts';

const eventNamed =
  /^(event|wedding|weddings|party|gala|ceremony|function|formal|reception|nuptials|marrying|married|prom|ball|date|date's|event's|wedding's)$/;
// "the bouquets are fresh, the rest is dried"
const ours = /^(rest|others|remaining|other)$/;
const priced = pattern('(<money>|<plain> (<each>|<all>)|(at|@|total|budget) (of|is)? <plain>|<all> <plain>)');

// "12 buckets, 25 each": nobody wears them.
const packs = pattern(
  '(need|order|ordered|got|bought|get)? <count> (more|new|extra)? (boxes|buckets|crates|trays|bags|rolls|reels|spools|packets|cartons|sleeves)',
);

/** Tokens that are kept from every later phrase; none where anything worn is spoken of. */
export const otherWorkAlone = (reader: Reader): readonly number[] => {
  const { tokens } = reader;
  const packed = packs.at(tokens, 0, tokens.length) !== undefined && !tokens.some((token) => token.means['ingredient'] !== undefined);
  if (!packed && !tokens.some((token) => token.means['other'] !== undefined)) return [];
  if (tokens.some((token) => token.means['piece'] !== undefined || token.means['role'] !== undefined || ours.test(token.text))) return [];
  if (reader.facts.some((fact) => fact.fact !== 'title')) return [];
  const kept = new Set<number>();
  for (let index = 0; index < tokens.length; index++) {
    const match = priced.at(tokens, index, tokens.length);
    for (let at = index; at < (match?.end ?? index); at++) kept.add(at);
  }
  const event = tokens.some((token, index) => eventNamed.test(token.text) && tokens[index + 1]?.means['other'] === undefined); // "ceremony arch"
  for (const [index, token] of tokens.entries()) {
    if (tellsOfTax(token) || (!event && (token.number !== undefined || token.means['material'] !== undefined))) kept.add(index);
  }
  return [...kept].filter((index) => reader.free(index)).sort((a, b) => a - b);
};

/** "3 bouquets wrapped, 2 to go": work that is none of the order's. */
export const onOtherWork = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const words = tokens.slice(start, end);
  return (
    words.some((token) => token.means['other'] !== undefined && !/^petals?$/.test(token.text)) &&
    !words.some((token) => token.means['piece'] !== undefined)
  );
};
