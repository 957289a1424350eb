// Cuts clean text into words, numerals and signs. One sticky expression, each alternative bounded, so time grows with length alone.

import { thinSpace } from './clean-text.ts';
import { readNumeral } from './numeral.ts';
import { cut, type NumberRead, type Token } from './token.ts';

const shapes = new RegExp(
  [
    '(?<line>\\n+)',
    '(?<space>[ \\u2009]+)',
    '(?<dots>[.]{2,}|/{2,})',
    '(?<iso>\\d{4}(?<sep>[-/.])\\d{1,2}\\k<sep>\\d{1,2}(?![\\d-]))',
    '(?<code>(?:\\d{3}-)\\d{3}-\\d{4}(?![\\d-])|(?:555-\\d{4}|\\d{3}-0\\d{3})(?![\\d-])|0\\d{1,3}[ \\u2009]\\d{3,4}[ \\u2009]\\d{3,4}(?![\\d:.])|#\\d{1,12}|\\d{1,12}#|\\+\\d[\\d]{6,14}|0\\d{3,15}(?![\\d:.])|\\d{6,40}(?!\\d))',
    '(?<date>\\d{1,2}(?<mark>[/.])\\d{1,2}\\k<mark>\\d{2,4}(?![\\d])|\\d{1,2}-\\d{1,2}-\\d{2,4}(?![\\d-])|\\d{1,4}/\\d{1,4}(?![\\d/]|[.]\\d))',
    '(?<time>\\d{1,2}(?::|h(?=\\d))\\d{2}(?!\\d))',
    "(?<numeral>\\d{1,3}(?:[.]\\d{3})+,\\d{1,2}(?!\\d)|\\d{1,3}(?:[,\\u2009']\\d{2,3})+(?:[.]\\d{1,4})?(?![\\d])|(?!\\d{1,4},\\d (?:bout|bh|buttonhole|lapel|corsage|crown|comb|halo|wrist|hair))\\d{1,12}[,.]\\d{1,6}(?![\\d]|x[a-z]{2})|[.]\\d{1,4}(?!\\d|,\\d)|\\d{1,40}|[½¼¾⅓⅔])",
    "(?<word>[a-z\\u00df-\\u024f]+(?:'[a-z]{1,3}(?![a-z]))?)",
    '(?<other>[^])',
  ].join('|'),
  'y',
);

const slashed = (text: string): NumberRead => ({ form: 'slashed', amount: '', parts: text.split(/[/.-]/).map(Number) });

const readTime = (text: string): NumberRead => {
  const [hour = 0, minute = 0] = text.split(/[:h]/).map(Number);
  if (hour > 24 || minute > 59) return { form: 'code', amount: '' };
  return {
    form: 'time',
    amount: '',
    parts: [hour, minute],
    ...(hour < 12 && hour > 0 && !text.startsWith('0') && (!text.includes('h') || hour <= 6) ? { vague: 'time of day' } : {}),
  };
};

const numberOf = (groups: Readonly<Record<string, string | undefined>>, text: string): NumberRead | undefined => {
  if (groups['code'] !== undefined) return { form: 'code', amount: '' };
  if (groups['iso'] !== undefined || groups['date'] !== undefined) return slashed(text);
  if (groups['time'] !== undefined) return readTime(text);
  if (groups['numeral'] !== undefined) return readNumeral(text);
  return undefined;
};

// Most of a message is single spaces, plain words and short whole numbers, which need no look at the other shapes.
const plainWord = /[a-z]+(?![a-z'\u00df-\u024f])/y;
const shortNumber = /[1-9]\d{0,4}(?![^ \n])/y;
// Signs with which no other shape begins.
const lone = new Set(',-():;&@!?=%*"\'~£$€');

export const lex = (text: string): Token[] => {
  const tokens: Token[] = [];
  let glued = false;
  shapes.lastIndex = 0;
  while (shapes.lastIndex < text.length) {
    const start = shapes.lastIndex;
    if (text[start] === ' ' && text[start + 1] !== thinSpace) {
      glued = false;
      shapes.lastIndex = start + 1;
      continue;
    }
    plainWord.lastIndex = start;
    if (plainWord.test(text)) {
      const end = plainWord.lastIndex;
      tokens.push(cut({ kind: 'word', text: text.slice(start, end), start, end, glued }));
      glued = true;
      shapes.lastIndex = end;
      continue;
    }
    shortNumber.lastIndex = start;
    if (shortNumber.test(text)) {
      const end = shortNumber.lastIndex;
      const amount = text.slice(start, end);
      tokens.push(cut({ kind: 'number', text: amount, start, end, glued, number: { form: 'plain', amount } }));
      glued = true;
      shapes.lastIndex = end;
      continue;
    }
    const sign = text[start] ?? '';
    if (lone.has(sign)) {
      tokens.push(cut({ kind: 'sign', text: sign, start, end: start + 1, glued }));
      glued = true;
      shapes.lastIndex = start + 1;
      continue;
    }
    const found = shapes.exec(text);
    if (found === null) break;
    const groups = found.groups ?? {};
    if (groups['space'] !== undefined) {
      glued = groups['space'] === thinSpace && glued;
      continue;
    }
    const shape = groups['dots'] === undefined ? found[0] : ','; // "30 lapels.. R48 each" pauses
    const number = numberOf(groups, shape);
    const kind = number !== undefined ? 'number' : groups['line'] !== undefined ? 'line' : groups['word'] !== undefined ? 'word' : 'sign';
    tokens.push(cut({ kind, text: shape, start, end: start + found[0].length, glued, ...(number === undefined ? {} : { number }) }));
    glued = kind !== 'line';
  }
  return tokens;
};
