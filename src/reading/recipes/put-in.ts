// What joins a recipe: "add a fern", "add hypericum, 1 per bout", "put 2 wheat in the bouts".

import { linesIn } from '../goods/recipe-lines.ts';
import { useBehind } from '../goods/use-beside-price.ts';
import { pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { goodsNamed } from './goods-named.ts';

type Change = Extract<Unworded, { fact: 'recipe' }>;

const addVerb = pattern('(add in|add|an extra|extra|pop in|put in|throw in|include|plus|and|adding) ');

// "add hypericum, 1 per bout"
export const addedSoMany = (reader: Reader, { start, end }: Stretch): Unworded | undefined => {
  const verb = addVerb.at(reader.tokens, start, end);
  const use = verb === undefined ? undefined : useBehind(reader.tokens, { start, end });
  const item = verb === undefined || use === undefined ? undefined : goodsNamed(reader, verb.end, use.start);
  return item === undefined ? undefined : use?.of(item);
};

export const added = (reader: Reader, { start, end }: Stretch): Change | undefined => {
  const verb = addVerb.at(reader.tokens, start, end);
  // "and a fern" adds only where it opens the message.
  if (verb === undefined || (/^(and|plus)$/.test(reader.tokens[verb.start]?.text ?? '') && verb.start > 0)) return undefined;
  const to = reader.tokens[end - 1]?.means['each'] === undefined ? end : end - 1;
  const lines = linesIn(reader, verb.end, to);
  const whole =
    lines !== undefined &&
    lines.length > 0 &&
    lines.every(({ known, line }) => known && (line.stems ?? 99) <= 30 !== (line.length !== undefined));
  return whole && goodsOnly(reader, verb.end, to) ? { fact: 'recipe', lines: lines.map(({ line }) => line), adds: true } : undefined;
};

// "put 2 wheat in the bouts": where it goes has been cut off; "put 2 roses in the fridge" goes into nothing that is made.
const putVerb = pattern('(put|pop|stick|tuck|slip|chuck|throw|bung) (in)? (another|an extra|extra)?');
export const putIn = (reader: Reader, { start, end }: Stretch): Change | undefined => {
  const verb = putVerb.at(reader.tokens, start, end);
  const lines = verb === undefined ? undefined : linesIn(reader, verb.end, end);
  const whole = lines !== undefined && lines.length > 0 && lines.every(({ known, line }) => known && (line.stems ?? 1) <= 12);
  return whole && verb !== undefined && goodsOnly(reader, verb.end, end)
    ? { fact: 'recipe', lines: lines.map(({ line }) => line), adds: true }
    : undefined;
};

export const goodsOnly = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens
    .slice(start, end)
    .every((token) => token.means['piece'] === undefined && token.means['role'] === undefined && token.means['other'] === undefined);
