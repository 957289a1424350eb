// A second number for one count: "15 bouts maybe 16 at 12", "min 40 lapels max 50", "20 bouts, could be 22". The two become a range;
// a count with one bound ("up to 33 BH", "33 bouts max") becomes a rough one.

import { type Form, formOf, type Match } from '../pattern.ts';
import { changed, firstWhere, isCount, type Token } from './token.ts';

const least = '(min|minimum|<from>)';
const most = '<upTo>';
const perhaps =
  '(maybe|poss|possibly|perhaps|might be|could be|may be|or|or maybe|or possibly|or poss|maybe even|might go to|could go to|possibly even|might be more like|could go up to|might end up)';

const bounded = [
  formOf(`${least} (of)? <n:count> (<material>)? (<p:piece>) (,|and|but|-|/)? ${most} (of)? <m:count>`),
  formOf(`<n:count> (<material>)? (<p:piece>) ${least} (,|and|but|-|/)? (${most} (of)? <m:count>|<m:count> ${most})`),
  formOf(`${least} (of)? <n:count> (,|and|but|-|/)? ${most} (of)? <m:count> (<material>)? <p:piece>`),
];
// "15, 16 tops, buttonholes at a tenner", "fifteen bouts, sixteen max, at 12"
const topped = formOf(`<n:count> (,|-)? <m:count> ${most} (,|-|of){0,2} (<material>)? <p:piece>`);
const toppedBehind = formOf(`<n:count> (<material>)? <p:piece> (,|-)? <m:count> ${most} (,)?`);
const second = formOf(`<n:count> (<material>)? <p:piece> (,|-|\\()? (${perhaps})? <m:count> (,|\\))?`);
const secondBefore = formOf(`<n:count> (,)? (${perhaps})? <m:count> (<material>)? <p:piece>`);
const boundBefore = formOf(`(${most}|${least}) (of)? <n:count> (<material>)? <p:piece>`);
const boundAfter = formOf(`<n:count> (<material>)? <p:piece> (,)? (at)? (the)? (<upTo>|min|minimum|<l:from>)`);
const reach = 12;
const signs = new Set(['maybe', 'poss', 'possibly', 'perhaps', 'might', 'could', 'may', 'or']);
// "from 40" may open a change or a price.
const opensElse = /^(from|start|under|less than|below|within|limit|cap)/;
const priceAhead = formOf('(,)? (at|@|<money>|for <money>|for <plain> <each>|<plain> <each>)');

const of = (match: Match, name: string): number => Number(match.kept[name]?.number?.amount);
const plain = (token: Token | undefined): boolean => token?.number?.max === undefined;

// A number behind these is a price or counts another thing.
const another = (tokens: readonly Token[], end: number): boolean => {
  const next = tokens[end];
  if (next === undefined || tokens[end - 1]?.text === ',') return false;
  return (
    ['piece', 'each', 'month', 'other', 'pack', 'ingredient', 'role', 'bench'].some((tag) => next.means[tag] !== undefined) ||
    (next.number !== undefined && next.number.form !== 'money') ||
    /^(of|for|stem|stems|st)$/.test(next.text)
  );
};

// "bouts 15, 18 max" and "20 bouts, 18 max" tell a price.
const isTopped = (tokens: readonly Token[], { start, kept }: Match): boolean => {
  const [n, m] = [Number(kept['n']?.number?.amount), Number(kept['m']?.number?.amount)];
  const before = tokens[start - 1];
  return m > n && m <= n * 1.4 && before?.means['piece'] === undefined && !ofAnother(before);
};
// "feb 14, maybe 15 bouts", "8 bouts at 12, maybe 14 crowns": the first is no count of the second's.
const ofAnother = (before: Token | undefined): boolean =>
  before !== undefined && (before.means['month'] !== undefined || before.text === 'at' || before.text === '@');

const likelySecond = (tokens: readonly Token[], match: Match): boolean => {
  const told = tokens.slice(match.start, match.end).some((token) => signs.has(token.text));
  if (!told && match.kept['m']?.number?.approx !== true) return false; // "maybe 16" is one rough number
  const [n, m] = [of(match, 'n'), of(match, 'm')];
  const near = m >= n * 0.7 && m <= n * 1.4;
  return near || (m > n && m <= n * 2 && priceAhead.at(tokens, match.end) !== undefined);
};

const toppedAt = (tokens: readonly Token[], index: number): Match | undefined => {
  const match = topped.at(tokens, index);
  if (match !== undefined) return isTopped(tokens, match) ? match : undefined;
  const behind = toppedBehind.at(tokens, index);
  return behind !== undefined && isTopped(tokens, behind) && priceAhead.at(tokens, behind.end) !== undefined ? behind : undefined;
};

const ranged = (tokens: readonly Token[], match: Match): Token[] | undefined => {
  const [first, other] = [match.kept['n'], match.kept['m']];
  const [n, m] = [of(match, 'n'), of(match, 'm')];
  const last = tokens[match.end - 1];
  if (first?.number === undefined || other === undefined || last === undefined || !plain(first) || !plain(other) || n === m)
    return undefined;
  const { approx: _, ...number } = first.number;
  const count: Token = changed(first, { number: { ...number, amount: String(Math.min(n, m)), max: String(Math.max(n, m)) } });
  const kept = tokens
    .slice(match.start, match.end)
    .filter((token) => token.means['material'] !== undefined || token.means['piece'] !== undefined);
  // The piece's word ends where the second number does, so that the words say both.
  return [
    count,
    ...kept.map((token) => (token.means['piece'] === undefined ? token : changed(token, { end: Math.max(token.end, last.end) }))),
  ];
};

const isBound = ({ means }: Token): boolean => means['upTo'] !== undefined || means['from'] !== undefined;
const mayBegin = (token: Token): boolean => token.text === 'min' || token.text === 'minimum' || isBound(token);
const mayBound = (token: Token): boolean =>
  signs.has(token.text) || isBound(token) || (token.number?.approx === true && token.number.form === 'plain');
const firstOf = (forms: readonly Form[], tokens: readonly Token[], index: number): Match | undefined => {
  for (const form of forms) {
    const match = form.at(tokens, index);
    if (match !== undefined) return match;
  }
  return undefined;
};

/** The tokens with second numbers joined to their counts and bounds marked as rough. */
export const joinSecondCounts = (tokens: readonly Token[]): Token[] => {
  if (!tokens.some(mayBound)) return [...tokens];
  // Where the next word of a bound or a doubt stands; a count further before it than any form reaches is let be.
  const bounds = new Int32Array(tokens.length + 1);
  bounds[tokens.length] = tokens.length + reach;
  for (let index = tokens.length - 1; index >= 0; index--)
    bounds[index] = mayBound(tokens[index] as Token) || mayBegin(tokens[index] as Token) ? index : (bounds[index + 1] as number);
  const joined: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const here = tokens[index] as Token;
    const counted = isCount(here) && (bounds[index] as number) < index + reach;
    const bound = counted || mayBegin(here) ? firstOf(bounded, tokens, index) : undefined;
    const behind = counted ? second.at(tokens, index) : undefined;
    const maybe = behind ?? (counted && !ofAnother(tokens[index - 1]) ? secondBefore.at(tokens, index) : undefined);
    const top = counted ? toppedAt(tokens, index) : undefined;
    const match =
      top ??
      (bound !== undefined && (bound.kept['p'] === tokens[bound.end - 1] || !another(tokens, bound.end))
        ? bound
        : maybe !== undefined && (maybe !== behind || !another(tokens, maybe.end)) && likelySecond(tokens, maybe)
          ? maybe
          : undefined);
    const range = match === undefined ? undefined : ranged(tokens, match);
    if (match !== undefined && range !== undefined) {
      joined.push(...range);
      index = match.end;
      continue;
    }
    joined.push(here);
    index += 1;
  }
  return joined.map((token, index) =>
    rough(joined, index) ? changed(token, { number: { ...token.number, approx: true } as NonNullable<Token['number']> }) : token,
  );
};

const rough = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  if (token?.number?.form !== 'plain' || token.number.max !== undefined) return false;
  for (const start of [index - 1, index - 2])
    if (
      start >= 0 &&
      mayBegin(tokens[start] as Token) &&
      !opensElse.test(tokens[start]?.text ?? '') &&
      boundBefore.at(tokens, start)?.kept['n'] === token
    )
      return true;
  const near = firstWhere(tokens, index, Math.min(tokens.length, index + reach), mayBegin) >= 0;
  const after = near ? boundAfter.at(tokens, index) : undefined;
  const next = tokens[after?.end ?? index]; // "12 corsages, max spend 360"
  return (
    after !== undefined &&
    next?.number === undefined &&
    next?.means['budget'] === undefined &&
    !/^from/.test(tokens[after.end - 1]?.text ?? '')
  );
};
