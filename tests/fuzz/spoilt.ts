// Good input spoilt in the ways people, programs and attackers spoil it: text cut, doubled and filled with odd characters, objects with odd keys.

import type { Random } from './random.ts';

/** Names that mean something to JavaScript rather than to a florist. */
export const oddNames = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf', '__defineGetter__'] as const;

const oddPieces = [
  ...oddNames,
  '\u0000',
  '\u202e',
  '\u200b',
  '\ufeff',
  '\ud800', // half a character
  '💐',
  'ﬁ',
  'ı',
  'é\u0301\u0301',
  '١٢٣',
  '½',
  '1e308',
  '-1',
  '0',
  '99999999999999999999',
  '0.00000000001',
  '1,25,0',
  '31 Feb',
  '29/02/2027',
  '14/3/0000',
  '<@U123|you>',
  '&lt;script&gt;',
  "'; DROP TABLE entries; --",
  '$'.concat('{process.env.SLACK_BOT_TOKEN}'),
  '{{7*7}}',
  '\n\n\n',
  '\t',
  '"',
  '\\',
  '`',
  '((((',
  '£',
  '€ 5 $ 6',
  'x',
  '%',
  '=HYPERLINK("http://x")',
] as const;

export const spoiltText = (random: Random, text: string): string => {
  let spoilt = text;
  for (let times = random.below(5); times > 0; times -= 1) {
    const at = random.below(spoilt.length + 1);
    const end = Math.min(spoilt.length, at + random.below(12));
    const part = spoilt.slice(at, end);
    const kind = random.below(7);
    if (kind === 0) spoilt = spoilt.slice(0, at) + spoilt.slice(end);
    else if (kind === 1) spoilt = spoilt.slice(0, end) + part + spoilt.slice(end);
    else if (kind === 2) spoilt = spoilt.slice(0, at) + random.pick(oddPieces) + spoilt.slice(at);
    else if (kind === 3) spoilt = spoilt.slice(0, at) + String.fromCharCode(random.below(0x1_0000)) + spoilt.slice(at);
    else if (kind === 4) spoilt = [...spoilt].reverse().join('');
    else if (kind === 5) spoilt = spoilt.replace(/\d+/, () => String(random.below(2 ** 31)));
    else if (random.chance(0.08))
      spoilt = spoilt.slice(0, at) + (part || random.pick(oddPieces)).repeat(1 + random.below(600)) + spoilt.slice(at);
  }
  return spoilt;
};

const oddValues: readonly unknown[] = [null, true, 0, -1, 1e308, '', [], {}, [[]], 'x'.repeat(3000), { __proto__: null }, Number.NaN];

/** The same JSON value with some of it replaced, renamed, left out or added. */
export const spoiltJson = (random: Random, value: unknown): unknown => {
  if (random.chance(0.06)) return random.pick(oddValues);
  if (typeof value === 'string') return random.chance(0.3) ? spoiltText(random, value) : value;
  if (Array.isArray(value)) return value.flatMap((one) => (random.chance(0.1) ? [] : [spoiltJson(random, one)]));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).flatMap(([name, inner]): [string, unknown][] => {
    if (random.chance(0.05)) return [];
    return [[random.chance(0.04) ? random.pick(oddNames) : name, spoiltJson(random, inner)]];
  });
  if (random.chance(0.08)) entries.push([random.pick(oddNames), random.pick(oddValues)]);
  return Object.defineProperties(
    {},
    Object.fromEntries(entries.map(([name, inner]) => [name, { value: inner, enumerable: true, configurable: true }])),
  );
};
