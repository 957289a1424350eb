// A number of the corpus said as a range or a choice: no fact keeps one end of it alone.

import { expect, test } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';
import { corpusLines } from './support/corpus-files.ts';

// Every seventh message keeps this within seconds.
const texts = ['sample.jsonl', 'more.jsonl']
  .flatMap((name) => corpusLines<{ text: string }>(name).map(({ text }) => text))
  .filter((text, at) => at % 7 === 0 && text.length < 110 && !/\b(twenty|thirty|forty|dozen)/i.test(text));

// Small numbers are typed in words too, or as hours; in "R4 500" the digits are of one number.
const least = 13;
const numbers =
  /(?<![\d.,:/\w-])(?<!\d )([£$€]?)(\d{2,3})(?![\d.,:/\w%-]| ?(?:st|nd|rd|th|am|pm|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec))/gi;
const both: Readonly<Record<string, string[]>> = {
  count: ['countMax'],
  amount: ['amountMax', 'amounts'],
  price: ['priceMax'],
  number: ['numberMax'],
  days: ['daysMax'],
};

/** Where in the facts a value stands without the other end beside it. */
const alone = (fact: object, ends: readonly string[]): boolean =>
  Object.entries(fact).some(([key, value]) => {
    if (/Max$|^(words|amounts|leadDays|dryingDays)$/.test(key)) return false;
    if (typeof value === 'object' && value !== null) return alone(value, ends);
    return ends.includes(String(value)) && !(both[key] ?? []).some((other) => other in fact);
  });

const ranged = (text: string): string[] =>
  [...text.matchAll(numbers)].flatMap((match) => {
    const [whole, sign = '', digits = ''] = match;
    const [low, high] = [Number(digits), Number(digits) + 2];
    const again = [...text.matchAll(/\d+/g)].filter(([each]) => [low, high].includes(Number(each))).length > 1;
    if (low < least || again) return [];
    return [`${sign}${low} or ${sign}${high}`, `${sign}${low}-${high}`].flatMap((said) => {
      const typed = text.slice(0, match.index) + said + text.slice(match.index + whole.length);
      const { facts } = readMessage(typed, context);
      return facts.some((fact) => fact.fact !== 'date' && alone(fact, [String(low), String(high)])) ? [typed] : [];
    });
  });

test('no end of a range is kept alone', () => {
  expect(texts.flatMap(ranged)).toEqual([]);
});
