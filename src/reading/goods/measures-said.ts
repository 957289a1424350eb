// Amounts said in words and no number: "a metre of ribbon", "metre and a half of wire", "a yard of lace", "an inch or two of tape", "a few bits of gyp".

import type { Token } from '../text/token.ts';
import { lengths } from '../words/measure-words.ts';
import { portionWords } from '../words/trade-words.ts';

export interface MeasureSaid {
  readonly length?: number; // none where the words give no number
  readonly unit?: string;
  readonly next: number;
}

const text = (tokens: readonly Token[], index: number): string => tokens[index]?.text ?? '';
const article = /^(a|an|one)$/;
// "in" and "m" are too short to stand alone for a length.
const unitOf = (word: string): string | undefined =>
  word.length > 1 && word !== 'in' && Object.hasOwn(lengths, word) ? lengths[word] : undefined;
const ofNext = (tokens: readonly Token[], index: number): number => (text(tokens, index) === 'of' ? index + 1 : index);
const names = (tokens: readonly Token[], index: number): boolean => tokens[index]?.kind === 'word' && tokens[index]?.number === undefined;

// "a few bits of gyp", "some fern", "a handful of wheat", "several sprigs of heather": how many is not said.
const vague = /^(few|some|several|handful|handfuls|little|bunch|load|loads|touch|scattering|lots)$/;
const vagueAmount = (tokens: readonly Token[], index: number): MeasureSaid | undefined => {
  const at = article.test(text(tokens, index)) && text(tokens, index) !== 'one' ? index + 1 : index;
  const word = text(tokens, at);
  if (!vague.test(word)) return undefined;
  let next = at + 1;
  if (unitOf(text(tokens, next)) !== undefined) next += 1;
  while (portionWords.has(text(tokens, next)) && tokens[next]?.means['ingredient'] === undefined) next += 1;
  next = ofNext(tokens, next);
  const goods = [tokens[next], tokens[next + 1]].some((token) => token?.means['ingredient'] !== undefined);
  return names(tokens, next) && goods ? { next } : undefined;
};

/** A length in words that begins here, or an amount that names no number. */
export const measureSaid = (tokens: readonly Token[], index: number): MeasureSaid | undefined => {
  const at = article.test(text(tokens, index)) ? index + 1 : index;
  const unit = tokens[at]?.number === undefined ? unitOf(text(tokens, at)) : undefined;
  if (unit === undefined) return vagueAmount(tokens, index);
  let next = at + 1;
  let length: number | undefined = 1;
  if (text(tokens, next) === 'and' && text(tokens, next + 1) === 'a' && text(tokens, next + 2) === 'half') {
    length = 1.5;
    next += 3;
  } else if (text(tokens, next) === 'or' && /^(so|two|2)$/.test(text(tokens, next + 1))) {
    if (text(tokens, next + 1) !== 'so') length = undefined;
    next += 2;
  }
  // "metre stick", "foot path": without an article the goods must follow.
  const of = text(tokens, next) === 'of';
  next = ofNext(tokens, next);
  if (at === index && !of && tokens[next]?.means['ingredient'] === undefined) return undefined;
  if (!names(tokens, next)) return undefined;
  return length === undefined ? { next } : { length, unit, next };
};
