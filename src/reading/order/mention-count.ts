// How many of a piece: the number before it ("40 dried lapels", "24 three-stem buttonholes"), behind it ("lapels x 6", "bouts (8)"), or a word ("the one crown").

import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount, type Token } from '../text/token.ts';
import { wordList } from '../words/word-list.ts';
import { pairsBefore } from './bundles.ts';
import type { Mention } from './mention.ts';
import { pricesTheOne } from './the-one-priced.ts';

// Between a number and its piece only describing words may stand.
const breaks = new Set(
  wordList(`
  and, n, them, which, for, with, to, at, from, is, are, was, were, have, has, had, need, needs, want, wants, in, on, by, or, per, each, then, but,
  not, so, if, as, get, gets, got, left, done, made, make, makes, than, that, which, before, after, now, into, onto, pairs, came,
  come, out, no, would, will, can, could, should, be, do, did, does, we, they, you, i, it, kg, plus, minus, inc, percent, guests, quote, quotes, quoting,
  tables, people, hours, days, minutes, price, budget, total, instead, rather, like, few, several
`),
);

const notDescribing = ['piece', 'other', 'month', 'weekday', 'each', 'all', 'budget', 'taxName', 'taxWord', 'upTo', 'from', 'pack'];
const mayDescribe = (token: Token): boolean => {
  if (token.kind === 'line' || token.number !== undefined) return false;
  if (token.kind === 'sign') return token.text === '-' || token.text === '"' || token.text === "'";
  if (breaks.has(token.text)) return false;
  if (token.means['bench'] !== undefined && !/^(pax|guests|ppl|nos)$/.test(token.text)) return false;
  if (token.means['piece'] === 'unspecified' && /^(nos|no|pcs|pc|pieces|units|items)$/.test(token.text)) return true;
  return !notDescribing.some((tag) => token.means[tag] !== undefined);
};

const rightCount = pattern('(x|:|=|qty|-|@ qty) <n:count>');
const bracketed = pattern('(-|:)? \\( (x|qty)? <n:count> (x|off|no|nos|pcs|of|of them)? \\)');
// "24 three-stem buttonholes": how the piece is made, not how many.
const madeOf = pattern('<plain> (-)? (stem|stems|stemmed|bloom|blooms|head|heads|flower|rose|inch|cm|piece)');
const onlyOne = pattern('(just|only|and|,|plus)? the one');
const numbered = pattern('(,|-)? <n:count> (no|nos|pcs|pc|off|pieces|of (them|em|those|these)|nr|qty|in number) (.)?');
const timesPrice = pattern('<n:count> (x|@|at) <money>');
// "bouts 9 x 12.50": only the second can be a price.
const timesPlain = pattern('<n:count> x <p:plain>');
const decimalTimes = ({ tokens }: Reader, after: number): Match | undefined => {
  const match = timesPlain.at(tokens, after, tokens.length);
  return match !== undefined && !isCount(match.kept['p']) && match.kept['p']?.number?.max === undefined ? match : undefined;
};
// "corsages 4 at 32, 13 lapels at 17", "corsages 4 32 each": the first counts where the second can be no hour.
const thenPrice = pattern('<n:count> (@|(at|for|,)? <p:plain> <each>|at <p:plain>) (<plain>)?');
const latestHour = 12;
const countThenPrice = ({ tokens }: Reader, after: number): Match | undefined => {
  const match = thenPrice.at(tokens, after, tokens.length);
  const { n, p } = match?.kept ?? {};
  if (match === undefined || n?.number?.max !== undefined || p?.number?.max !== undefined) return undefined;
  if (p === undefined) return tokens[match.end - 1]?.number === undefined ? undefined : match;
  const plainHour = isCount(p) && Number(p.number?.amount) <= latestHour;
  const sure = tokens[match.end - 1]?.means['each'] !== undefined && tokens[match.start + 1]?.text !== ',';
  return plainHour && !sure ? undefined : match;
};
const columns = pattern('(,|-|:|\\|) <n:count> (,|-|:|\\|) <a:amount>');
const bareRight = pattern('<n:count>');

const madeEndingAt = (reader: Reader, at: number, before: number): number | undefined => {
  const token = reader.tokens[at];
  if (token === undefined || at >= before || !/^(stem|stems|stemmed|bloom|blooms|head|heads|flower|rose|inch|cm)$/.test(token.text))
    return undefined;
  for (const start of [at - 2, at - 1]) if (start > 0 && madeOf.at(reader.tokens, start, at + 1)?.end === at + 1) return start;
  return undefined;
};

// "statice 2, eucalyptus 1 - lapel", "2 roses 1 wax bouts": the last number of what goes into one.
const inRecipe = ({ tokens }: Reader, at: number, piece: number): boolean => {
  const goods = (index: number): boolean => tokens[index]?.means['ingredient'] !== undefined && tokens[index]?.means['piece'] === undefined;
  if (!goods(at - 1)) return false;
  return (tokens[at + 1]?.text === '-' && at + 2 === piece) || (goods(at + 1) && isCount(tokens[at - 2]));
};

export const countLeft = (
  reader: Reader,
  index: number,
): Pick<Mention, 'start' | 'count' | 'exact' | 'countIndex' | 'material' | 'materialIndex'> => {
  const paired = pairsBefore(reader, index);
  if (paired !== undefined) return { start: paired.start, exact: paired.exact, countIndex: paired.start };
  let start = index;
  let material: string | undefined;
  let materialIndex: number | undefined;
  for (let at = index - 1, steps = 0; at >= 0 && steps < 5 && reader.free(at); at--, steps++) {
    const token = reader.tokens[at] as Token;
    const found = { ...(material === undefined || materialIndex === undefined ? {} : { material, materialIndex }) };
    const made = madeEndingAt(reader, at, start);
    if (made !== undefined) {
      at = made;
      continue;
    }
    if (pricesTheOne(reader.tokens, at)) return { start: index };
    if (isCount(token)) return inRecipe(reader, at, index) ? { start: index } : { ...found, start: at, count: token, countIndex: at };
    if (token.text === 'one' && onlyOne.at(reader.tokens, Math.max(0, at - 1), at + 1) !== undefined)
      return { ...found, start: at, exact: 1, countIndex: at };
    if (token.text === 'both' && steps < 2) return { ...found, start: at, exact: 2, countIndex: at };
    const owner =
      token.means['owner'] !== undefined ||
      (token.means['role'] !== undefined && steps === 0 && !/s$/.test(reader.tokens[index]?.text ?? 's') && token.text !== 'rest');
    if (owner && (isCount(reader.tokens[at - 1]) || (reader.tokens[at - 1]?.text === 'x' && isCount(reader.tokens[at - 2])))) continue;
    // "mother corsage 4 nos"
    if (owner && numbered.at(reader.tokens, index + 1, reader.tokens.length) !== undefined) break;
    if (owner) return { ...found, start: at, exact: 1, countIndex: at };
    // "$22 a bout" prices one, it orders none.
    if ((token.text === 'a' || token.text === 'an') && reader.tokens[at - 1]?.number !== undefined) return { start: index };
    if (token.text === 'a' || token.text === 'an' || token.text === 'single') return { ...found, start: at, exact: 1, countIndex: at };
    if (token.means['material'] !== undefined) {
      material = token.means['material'];
      materialIndex = at;
      start = at;
    } else if (!mayDescribe(token)) break;
  }
  return { start, ...(material === undefined || materialIndex === undefined ? {} : { material, materialIndex }) };
};

export const countRight = (
  reader: Reader,
  after: number,
): { count: Token; countIndex: number; marked: boolean; end?: number } | undefined => {
  const told = numbered.at(reader.tokens, after, reader.tokens.length);
  const number = told?.kept['n'];
  const at = number === undefined ? -1 : reader.tokens.indexOf(number, after);
  if (told !== undefined && number !== undefined && reader.free(at)) return { count: number, countIndex: at, marked: true, end: told.end };
  const inside = bracketed.at(reader.tokens, after, reader.tokens.length);
  const between = inside?.kept['n'];
  const place = between === undefined ? -1 : reader.tokens.indexOf(between, after);
  if (inside !== undefined && between !== undefined && reader.free(place))
    return { count: between, countIndex: place, marked: true, end: inside.end };
  // "corsages - 5 - 50.00", "corsages, 5, £50"
  const inColumns = columns.at(reader.tokens, after, reader.tokens.length);
  const [first, price] = [inColumns?.kept['n'], inColumns?.kept['a']];
  if (first !== undefined && price?.number?.max === undefined && (price?.number?.form === 'money' || !isCount(price)))
    if (reader.free(after + 1)) return { count: first, countIndex: after + 1, marked: true };
  // "lapels 40 x $18"
  const times = timesPrice.at(reader.tokens, after, reader.tokens.length);
  const many = times ?? decimalTimes(reader, after) ?? countThenPrice(reader, after);
  if (many?.kept['n'] !== undefined && reader.free(many.start)) return { count: many.kept['n'], countIndex: many.start, marked: true };
  const marked = rightCount.at(reader.tokens, after, reader.tokens.length);
  const match = marked ?? bareRight.at(reader.tokens, after, reader.tokens.length);
  if (match === undefined || !reader.free(match.end - 1)) return undefined;
  const next = reader.tokens[match.end];
  // "for the bouts: 1 rose", "corsages: 3 dried roses"
  const flowers = (at: number): boolean =>
    reader.tokens[at]?.means['ingredient'] !== undefined && reader.tokens[at]?.means['piece'] === undefined;
  if (flowers(match.end) || (flowers(match.end + 1) && next?.kind === 'word')) return undefined;
  // A number with "each", a tax word or a decimal is a price; a dash may stand before a price too. "bouts x12 corsages x4" goes by its marks.
  const certain = marked !== undefined && reader.tokens[after]?.text !== '-' && next?.means['piece'] !== undefined;
  if (
    next !== undefined &&
    !certain &&
    ['each', 'included', 'onTop', 'piece', 'taxName'].some((tag) => next.means[tag] !== undefined && next.text !== 'plus')
  )
    return undefined;
  if (next?.means['all'] !== undefined || next?.text === 'per' || next?.text === '+' || next?.text === '/') return undefined;
  const count = match.kept['n'];
  if (count === undefined || (count.number?.max !== undefined && marked === undefined)) return undefined;
  return { count, countIndex: match.end - 1, marked: marked !== undefined && reader.tokens[after]?.text !== '-' };
};
