// The words for numbers: units, tens, dozens and scales, and a ten with its unit ("twenty five", "ninety-nine").

import { wordList } from '../words/word-list.ts';
import type { Token } from './token.ts';

const small: Readonly<Record<string, number>> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fourty: 40,
  forteen: 14,
  fourten: 14,
  fiveteen: 15,
  fiften: 15,
  fifeteen: 15,
  thirten: 13,
  sixten: 16,
  seventen: 17,
  eighten: 18,
  eightteen: 18,
  ninteen: 19,
  nineten: 19,
  twelv: 12,
  twleve: 12,
  elevn: 11,
  twenny: 20,
  twnety: 20,
  therty: 30,
  thrity: 30,
  fivty: 50,
  ninty: 90,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const dozens = new Set(['dozen', 'dozens', 'doz', 'dz', 'dzn', 'dozn', 'dozne', 'dozon', 'dozin', 'dzen', 'doezn', 'dozan']);
export const lakh = 100_000;
const scales: Readonly<Record<string, number>> = {
  hundred: 100,
  hundreds: 100,
  thousand: 1000,
  grand: 1000,
  lakh: lakh,
  lakhs: lakh,
  lac: lakh,
  lacs: lakh,
  gross: 144,
  score: 20,
  k: 1000,
};
export const articles = new Set(['a', 'an']);
// After these "one" is a thing, not a number.
export const beforeThing = new Set(
  wordList(`
  this, that, the, which, every, each, another, no, any, other, first, last, next, wrist, pin, big, bigger, small,
  smaller, march, april, june, july, august, september, october, november, december, january, february, may, saturday,
  friday, sunday, same, right, good, new, old, second
`),
);

// "twentyfive"
const writtenTogether = new Map(
  Object.entries(small)
    .filter(([, ten]) => ten >= 20)
    .flatMap(([tens, ten]) =>
      Object.entries(small)
        .filter(([, unit]) => unit > 0 && unit < 10)
        .map(([units, unit]) => [tens + units, ten + unit] as const),
    ),
);

export const value = (token: Token | undefined): number | undefined => {
  if (token === undefined) return undefined;
  if (token.kind !== 'word') return undefined;
  return Object.hasOwn(small, token.text) ? small[token.text] : writtenTogether.get(token.text);
};
export const scaleOf = (token: Token | undefined): number | undefined =>
  token?.kind === 'word' && Object.hasOwn(scales, token.text) ? scales[token.text] : undefined;

export const skipHyphen = (tokens: readonly Token[], index: number): number => {
  const token = tokens[index];
  return token?.text === '-' && token.glued && tokens[index + 1]?.glued === true ? index + 1 : index;
};

// "twenty five", "ninety-nine": a ten and a unit.
export const tensAndUnits = (tokens: readonly Token[], start: number): { amount: number; next: number } | undefined => {
  const first = value(tokens[start]);
  if (first === undefined) return undefined;
  const after = skipHyphen(tokens, start + 1);
  const second = value(tokens[after]);
  if (first >= 20 && first % 10 === 0 && second !== undefined && second > 0 && second < 10)
    return { amount: first + second, next: after + 1 };
  return { amount: first, next: start + 1 };
};

export const isDozen = (token: Token | undefined): boolean => token?.kind === 'word' && dozens.has(token.text);
