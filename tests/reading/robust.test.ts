// The reader never throws, whatever is typed, and its time grows with the length alone.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { factSchema } from '../../src/reading/fact.ts';
import { longestMessage, readMessage } from '../../src/reading/read-message.ts';
import { inGoodTime } from '../support/in-good-time.ts';
import { context } from './support/context.ts';
import { corpusLines } from './support/corpus-files.ts';

const words = corpusLines<{ text: string }>('sample.jsonl').flatMap((line) => line.text.split(' '));

it('never throws, and every fact is one that can be stored', () => {
  const anything = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 300 }),
    fc.array(fc.constantFrom(...words), { maxLength: 40 }).map((all) => all.join(' ')),
  );
  fc.assert(
    fc.property(anything, (text) => {
      const reading = readMessage(text, context);
      const choices = reading.asks.flatMap((ask) => ask.choices.flatMap((choice) => choice.facts));
      return (
        [...reading.facts, ...choices].every((fact) => factSchema.safeParse(fact).success) &&
        reading.asks.every((ask) => ask.choices.length >= (ask.why === 'part left' ? 1 : 2)) // the rest is taken, or it is said again
      );
    }),
    { numRuns: 1500 },
  );
});

it.each([
  '',
  ' ',
  '\n\n\n',
  '\u0000',
  '__proto__',
  'constructor prototype hasOwnProperty',
  '2 constructor dozen bouts',
  '40 __proto__ at toString each',
  '1e309 buttonholes',
  '-0 bouts at -1 each',
  '99999999999999999999 corsages at 1e1000',
  'NaN lapels at Infinity',
  '½ buttonholes at ¾',
  '４０ buttonholes at ２５ each',
  '<@U1> <#C1|general> <!here> <https://x.test|40 bouts> &amp;&lt;&gt;',
  '😀😀 12 bouts 😀 at 12 each 💐',
  '\u202e40 bouts\u202c at \u200b12 each',
  "'; drop table events; --",
  '{"fact":"made","count":12}',
  '$' + '{40} {{40}} %d %s',
  '((((((((((',
  '))))))',
  '||||',
  '????',
  '.*.*.*',
  '[a-z]+$',
  '\\',
  '\\(',
  '1/0/0',
  '0/0',
  '99/99/9999',
  '2027-13-45',
  '25:99',
  '24:00',
  'the the the of of of',
  'half half half dozen dozen',
  'ÿþ ñandú ß İ ﷽',
])('survives %j', (text) => {
  expect(() => readMessage(text, context)).not.toThrow();
});

it('refuses what is too long instead of reading half of it', () => {
  const reading = readMessage('a '.repeat(longestMessage), context);
  expect(reading.problems).toEqual([{ code: 'message-too-long', data: { characters: 2 * longestMessage, most: longestMessage } }]);
});

const filled = (text: string, length: number): string => text.repeat(Math.ceil(length / text.length)).slice(0, length);
const quickest = (text: string): number => {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    readMessage(text, context);
    return performance.now() - start;
  });
  return Math.min(...times);
};

it.each([
  '12 ',
  '1',
  '1,',
  '1.',
  'and ',
  '6 bouts ',
  'how many left? ',
  'what ',
  'dozen ',
  ' ',
  'not 4 ',
  '<',
  ':a',
  '1 may ',
  '$1 each ',
  'groom, ',
  '1 rose, ',
  'half ',
  '12 done ',
  "it's ",
  '- ',
  '12 or ',
  'the 2nd ',
  '1/',
  '\n1. ',
])('takes time in proportion: %j', (unit) => {
  const short = quickest(filled(unit, 2_000));
  const long = quickest(filled(unit, 16_000));
  // Eight times the text; quadratic growth would take 64 times as long.
  inGoodTime(long, 30 * Math.max(short, 1));
});

// Names that every object has: a table of words must not find them.
const sound = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value === 'object' && value !== null
      ? Object.values(value).every(sound)
      : typeof value !== 'function';

it.each(['constructor', 'valueOf', '__proto__'])('a sentence with “%s” for any one of its words holds only figures and words', (name) => {
  const spoilt = corpusLines<{ text: string }>('sample.jsonl').flatMap(({ text }) => {
    const words = text.split(/\b/);
    return words.flatMap((word, at) => (/\w/.test(word) ? [words.with(at, name).join('')] : []));
  });
  expect(spoilt.filter((text) => !sound(readMessage(text, context)))).toEqual([]);
});

it.each(['each one: 1 rose, 84.2constructor0 on flowers', 'constructor this recipe', 'roses constructor 12 for 20'])(
  '%s: only figures',
  (text) => {
    expect(sound(readMessage(text, context))).toBe(true);
  },
);
