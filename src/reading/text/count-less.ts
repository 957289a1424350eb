// "2 dozen lapels less 2, so 22", "40 bouts minus 5 = 35": a count worked out aloud is what it comes to. Where the sum is wrong, nothing is changed.

import { formOf, type Match } from '../pattern.ts';
import { changed, type Token } from './token.ts';

const less = '(,|-)? (less|minus|take away|bar|not counting) (the)? <b:count> (of (them|those))?';
const so =
  "(,|-|=|so|that's|thats|that is|makes|making|making it|makes it|which makes|which is|ie|i.e|leaves|leaving|call it|it's|its){1,4}";
const forms = [
  formOf(`<a:count> (<material>)? <piece> ${less} ${so} <c:count> (<piece>)?`),
  formOf(`<a:count> ${less} ${so} <c:count> (<material>)? <piece>`),
];
const numberOf = (match: Match, name: string): number | undefined => {
  const number = match.kept[name]?.number;
  return number === undefined || number.max !== undefined ? undefined : Number(number.amount);
};

const sumOf = (tokens: readonly Token[], index: number): { match: Match; tokens: readonly Token[] } | undefined => {
  for (const form of forms) {
    const match = form.at(tokens, index);
    const [a, b, c] = match === undefined ? [] : [numberOf(match, 'a'), numberOf(match, 'b'), numberOf(match, 'c')];
    const count = match?.kept['c'];
    if (match === undefined || a === undefined || b === undefined || c === undefined || count === undefined || a - b !== c) continue;
    if (tokens[match.end]?.means['each'] !== undefined) continue;
    const kinds = tokens
      .slice(match.start, match.end)
      .filter(({ means }) => means['material'] !== undefined || means['piece'] !== undefined);
    const last = tokens[match.end - 1] as Token;
    const said = kinds.slice(0, kinds.findIndex(({ means }) => means['piece'] !== undefined) + 1);
    return {
      match,
      tokens: [
        changed(count, { start: (tokens[index] as Token).start, glued: false }),
        ...said.map((token) => (token.means['piece'] === undefined ? token : changed(token, { end: Math.max(token.end, last.end) }))),
      ],
    };
  }
  return undefined;
};

// "three dozen buttonholes bar two, eight pound a go", "20 bouts done bar 2": nobody says what it comes to, and nothing else is said of the rest.
const taken = '(,|-)? (less|minus|bar) <b:count>';
const left = [
  formOf(`<a:count> (<material>)? (<piece>|<piece> (all)? (done|made|finished|boxed|ready)) ${taken}`),
  formOf(`<a:count> ${taken} (<material>)? <piece>`),
];
// What may stand behind it: the end, a sign, a price, the tax.
const closes = formOf('(,|;|\\.|\\)|@|at|<money>|<plain> <each>|<line>|<tax>|<included>|<onTop>|please|pls|thanks|ta)');
const priced = formOf('(,|-|<line>)? (at|@)? (<money>|<plain> <each>|<tax>|<included>|<onTop>)');
// "20 bouts minus 2, cousins not coming" may take two off an order that is known: only a dozen, "bar" or a price behind it tells how many are ordered.
const endsThere = (tokens: readonly Token[], start: number, end: number): boolean => {
  const sure = tokens[start]?.number?.inDozens === true || tokens.slice(start, end).some(({ text }) => text === 'bar');
  return sure ? tokens[end] === undefined || closes.at(tokens, end) !== undefined : priced.at(tokens, end) !== undefined;
};

const leftOf = (tokens: readonly Token[], index: number): { match: Match; tokens: readonly Token[] } | undefined => {
  for (const form of left) {
    const match = form.at(tokens, index);
    const [a, b] = match === undefined ? [] : [numberOf(match, 'a'), numberOf(match, 'b')];
    if (match === undefined || a === undefined || b === undefined || b * 2 > a || !endsThere(tokens, index, match.end)) continue;
    const [count, less] = [tokens[index] as Token, match.kept['b'] as Token];
    if (count.number?.approx === true || less.number?.approx === true) continue;
    const at = tokens.indexOf(less, index);
    const last = tokens[match.end - 1] as Token;
    const rest = tokens
      .slice(index + 1, match.end)
      .filter((token, offset) => index + 1 + offset !== at && !/^(,|-|less|minus|bar)$/.test(token.text));
    const amount = String(a - b);
    return {
      match,
      tokens: [
        changed(count, { kind: 'number', text: amount, number: { form: 'plain', amount } }),
        ...rest.map((token, offset) => (offset === rest.length - 1 ? changed(token, { end: Math.max(token.end, last.end) }) : token)),
      ],
    };
  }
  return undefined;
};

export const withCountsLess = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => /^(less|minus|take away|bar|take|not counting|not)$/.test(text))) return tokens;
  const read: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const sum = tokens[index]?.number?.form === 'plain' ? (sumOf(tokens, index) ?? leftOf(tokens, index)) : undefined;
    if (sum === undefined) read.push(tokens[index] as Token);
    else {
      if (read.at(-1)?.text === 'all') read.pop(); // "all 20 bouts done bar two": not all of them
      read.push(...sum.tokens);
    }
    index = sum?.match.end ?? index + 1;
  }
  return read;
};
