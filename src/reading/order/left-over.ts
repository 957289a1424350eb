// Numbers that nobody could place beside those of an order: "crowns 4 at 50, 2 at 65 big" read as four and nothing more would be read wrong.

import { formOf, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { wordList } from '../words/word-list.ts';

// All that may stand beside a number that is still of this order: how big, for whom, and the small words of a list.
const ofOrder = new Set(
  wordList(`
  x, @, at, for, is, are, =, :, or, to, the, a, an, of, them, those, these, ones, one, each, need, needs, needed, want, wants, get, gets, buy, free, only, just, about,
  big, bigger, biggest, small, smaller, smallest, large, larger, medium, little, mini, tiny, regular, standard, normal, plain, simple, fancy, full, half,
  adult, adults, kids, kid, child, children, size, sized, single, double, per, off, lot, with, we, they, she, he, his, her, hers, their, theirs, our,
  pin, pins, pinned, wrist, wrists, std, premium, deluxe,
  more, extra, other, others, rest, that, that's, thats, it, its, it's, in, then, if, over, they're, theyre, first, next, after, tiered, pieces, pcs, nos, set, sets, pair, pairs
`),
);
const tags = ['piece', 'each', 'all', 'role', 'owner', 'from', 'upTo', 'material'];
const isOurs = (token: Token): boolean =>
  token.number?.form === 'plain' ||
  token.number?.form === 'money' ||
  token.kind !== 'word' ||
  ofOrder.has(token.text) ||
  tags.some((tag) => token.means[tag] !== undefined);

// "2 fancy at 18": a word that describes, where a thing of its own would be several.
const described = formOf('(x)? <n:count> <d:unlisted> (at|@|for|:|-)? <amount> (<each>)?');
const isDescribed = (run: readonly Token[]): boolean => {
  const match = described.at(run, 0, run.length);
  return match?.end === run.length && Number(match.kept['n']?.number?.amount) > 1 && !/s$/.test(match.kept['d']?.text ?? '');
};

// "11 bouts, 3 of those kid size, 13.50 each": what some of them are like changes neither how many nor, with one price behind, what they cost.
const ofThem = formOf(
  "<n:count> of (those|these|them|em|which|whom) (are|is|being|to be|will be|should be|need to be|in|for|be){0,2} (the|her|his|our)? (<unlisted>|<role>|<owner>|kid|kids|kids'|kid's|child|children|children's|childs|small|smaller|mini|tiny|little|big|bigger|large|larger|adult|adults|junior|half|regular|standard|simple|plain){1,2} (size|sized|ones|versions|type)?",
);
const tellsOfSome = (run: readonly Token[], counts: readonly number[]): boolean => {
  const match = ofThem.at(run, 0, run.length);
  return match?.end === run.length && counts.some((count) => count > Number(match.kept['n']?.number?.amount));
};

// "10 bouts or corsages": which of them?
const eitherKind = pattern('<piece> or (<material>)? <piece>');

const divides = /^([,;()+&-]|and|n|plus|but)$/;
const isNumber = (token: Token): boolean => token.text !== 'one' && (token.number?.form === 'plain' || token.number?.form === 'money');
// "100 guests but 6 crowns": people, and no pieces.
const guests = /^guests?$/;

/** Whether a number stands unread in a sentence of the order, with no word beside it that makes it another's. */
export const leftOver = (reader: Reader, takes: ReadonlySet<number>, counts: readonly number[]): boolean => {
  const { tokens, message } = reader;
  const elsewhere = (index: number): boolean => tokens[index] !== undefined && !reader.free(index);
  if (eitherKind.in(tokens, 0, tokens.length) !== undefined) return true;
  const loose: Token[] = [];
  let sum = 0;
  const onePrice = (from: number): boolean =>
    tokens.slice(from).filter((token, at) => reader.free(from + at) && isNumber(token)).length <= 1;
  const close = (run: readonly Token[], start: number, end: number): void => {
    if (tellsOfSome(run, counts) && onePrice(end)) return;
    for (const { number } of run) sum += Number(number?.amount ?? 0);
    const another = elsewhere(start - 1) || elsewhere(end) || run.some((token) => guests.test(token.means['role'] ?? ''));
    if (!another && (run.every(isOurs) || isDescribed(run))) loose.push(...run.filter(isNumber));
  };
  for (const { start, end } of message.parts) {
    let own = false;
    for (let index = start; index < end; index++) own ||= takes.has(index);
    let from = start;
    for (let index = start; own && index <= end; index++) {
      const inside = index < end && reader.free(index) && !takes.has(index) && !divides.test(tokens[index]?.text ?? '');
      if (inside) continue;
      if (index > from) close(tokens.slice(from, index), from, index);
      from = index + 1;
    }
  }
  // "groom's one is in the 22", "13 BH (12 + 1 spare)": a count said again, or in its parts.
  const [first] = loose;
  const again = loose.every((token) => counts.includes(Number(token.number?.amount)));
  return first !== undefined && !again && !counts.includes(sum);
};
