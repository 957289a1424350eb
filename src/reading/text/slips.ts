// Slips of the thumb: two letters the wrong way round ("prcie", "botus"), one typed twice ("weddding"), one left out of a long word ("finshed").
// A slip of one word only, and no word of its own.

import { usualWords } from '../words/usual-words.ts';
import { isKnownWord, knownWords } from '../words/vocabulary.ts';
import { wordList } from '../words/word-list.ts';
import { wordsOfTheirOwn } from '../words/words-of-their-own.ts';

const numbers = wordList('eleven, twelve, fifteen, twenty, thirty, forty, fifty, sixty, seventy, eighty, ninety, hundred, thousand');
// Too short, or a slip of two words, and only one of them likely.
const often: Readonly<Record<string, string>> = {
  teh: 'the',
  hte: 'the',
  adn: 'and',
  yuo: 'you',
  wiht: 'with',
  tiem: 'time',
  pluss: 'plus',
  taxx: 'tax',
};

// Words with the same letters weigh the same, so a slip is sought among few.
const weigh = (word: string): number => {
  let sum = 0;
  for (let at = 0; at < word.length; at++) sum += Math.imul(word.charCodeAt(at), 0x9e3779b1) >>> 8;
  return sum;
};
const letters = [...'abcdefghijklmnopqrstuvwxyz'].map(weigh);

const plain = /^[a-z]{4,}$/;
const byWeight = new Map<number, string[]>();
for (const word of new Set([...usualWords, ...knownWords, ...numbers])) {
  if (!plain.test(word)) continue;
  const weight = weigh(word);
  const same = byWeight.get(weight);
  if (same === undefined) byWeight.set(weight, [word]);
  else same.push(word);
}

const firstApart = (one: string, other: string): number => {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  return at;
};
const swapped = (typed: string, word: string): boolean => {
  const at = firstApart(typed, word);
  return typed[at] === word[at + 1] && typed[at + 1] === word[at] && typed.slice(at + 2) === word.slice(at + 2);
};
const twice = (typed: string, word: string): boolean => {
  const at = firstApart(typed, word);
  return word.length >= 5 && typed[at] === typed[at - 1] && typed.slice(at + 1) === word.slice(at);
};
const leftOut = (typed: string, word: string): boolean => {
  const at = firstApart(typed, word);
  return word.length >= 7 && at > 0 && usualWords.has(word) && typed.slice(at) === word.slice(at + 1);
};

const wordsMeant = (typed: string): readonly string[] => {
  const weight = weigh(typed);
  const found: string[] = [];
  const seek = (sought: number, isSlip: (typed: string, word: string) => boolean): void => {
    const words = byWeight.get(sought);
    if (words !== undefined) found.push(...words.filter((word) => isSlip(typed, word)));
  };
  seek(weight, swapped);
  for (const letter of new Set([...typed].filter((each, at) => each === typed[at - 1]))) seek(weight - weigh(letter), twice);
  if (typed.length >= 6) for (const letter of letters) seek(weight + letter, leftOut);
  return found;
};

/** The one word of which this is a slip; none for a word of its own, or a slip of two. */
export const slipOf = (typed: string): string | undefined => {
  if (Object.hasOwn(often, typed)) return often[typed];
  if (!plain.test(typed) || isKnownWord(typed) || usualWords.has(typed) || numbers.includes(typed) || wordsOfTheirOwn.has(typed))
    return undefined;
  const [word, other] = wordsMeant(typed);
  return other === undefined ? word : undefined;
};
