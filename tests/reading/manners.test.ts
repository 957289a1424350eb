// What stands around a message changes nothing in it: greetings, thanks, a smile, capitals, a full stop, odd spaces.

import { describe, expect, test } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';
import { corpusLines } from './support/corpus-files.ts';

// Every third message keeps this within seconds.
const texts = ['sample.jsonl', 'more.jsonl']
  .flatMap((name) => corpusLines<{ text: string }>(name).map(({ text }) => text))
  .filter((_, at) => at % 3 === 0);

const said = (text: string): string => {
  const { facts, asks, problems } = readMessage(text, context);
  const plain = JSON.stringify([
    facts,
    asks.map((ask) => [ask.why, ask.choices.map((choice) => choice.facts)]),
    problems.map(({ code }) => code),
  ]);
  return plain.replace(/"(words|note|title)":"(?:[^"\\]|\\.)*"/g, '""').toLowerCase();
};

// With "please" it is what the bench is to make, and no longer what it made.
const asked = 'before please';
const orders = new Set(['6 buttonholes before lunch and 8 after']);

const plainly = new Map(texts.map((text) => [text, said(text)]));

describe('a message means the same', () => {
  test.each<[string, (text: string) => string]>([
    ['behind a greeting', (text) => `hi ${text}`],
    ['behind a greeting to several', (text) => `hey team, ${text}`],
    ['behind a time of day', (text) => `Good morning all! ${text}`],
    ['behind a word to begin with', (text) => `ok so ${text}`],
    ['before thanks', (text) => `${text}, thanks!`],
    [asked, (text) => `${text} pls`],
    ['before a kiss', (text) => `${text} x`],
    ['before a smile', (text) => `${text} 🙂`],
    ['as a sentence', (text) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`],
    ['with two spaces', (text) => text.replaceAll(' ', '  ')],
    ['with curly apostrophes', (text) => text.replaceAll("'", '’')],
  ])('%s', (manner, around) => {
    const same = texts.filter((text) => manner !== asked || !orders.has(text));
    expect(same.filter((text) => said(around(text)) !== plainly.get(text))).toEqual([]);
  });
});
