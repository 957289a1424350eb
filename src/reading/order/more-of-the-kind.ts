// A number that goes on with the kind named before it: "6 bouts at 13, 1 at 18 for the groom", "… 12 for family 150 each", "2 fancy @ 24".

import { firstAt, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import type { Mention } from './mention.ts';
import { toldBySize } from './told-by-size.ts';

const others = pattern('<n:count> (x)? (others|ones|more|extra|other ones|(<unlisted>) (ones|versions)) (@|at|<money>|for|<plain>)');
// "10 small crowns and 4 big ones, 42 and 58 each": the prices of both behind them.
const thenBoth = pattern(
  '<n:count> (<unlisted>|grown - up|grown up|grown-up|<d:role>) (ones|versions) (,|-|:|;|\\.)? <amount> (each)? (and|&|n|/|,|\\+) <amount>',
);
const remaining = pattern(
  '(the)? (other|others|remaining) <n:count> (x)? (are|is|all|will be|be|come in|go){0,2} ((at|@|:|-|=)? <money>|(at|@) <plain>|(:|-|=)? <plain> <each>)',
);
const priced = pattern('(,|and|&|+|;|:|plus|then|-)? <n:count> (<d:word>)? (ones|one|versions)? (x)? (@|at) (<money>|<plain>)');
const worn = pattern(
  '(,|-|and|&|+|;|plus|then) <n:count> (x)? for (the|his|her|their|my|our)? (<role>|<bench>|family|families|kids|children|everyone else|the rest)',
);
const onePerson =
  /^(groom|bride|best man|bestman|mob|mog|fob|fog|maid of honour|maid of honor|mother of the bride|mother of the groom|father of the bride)$/;
const owned = pattern('(,|and|&|+|;|plus|then)? (the|for|for the)? (<owner>|<role>) <n:count> (x)? (@|at) (<money>|<plain>)');
const freshForms = [owned, priced];
const goingOn = [owned, priced, worn];
const goods = ['piece', 'pack', 'ingredient', 'other', 'month', 'weekday', 'each', 'all', 'taxWord', 'taxName', 'bench', 'upTo'];

// "a pair of buttonholes, one for himself and one for his best man": they are the two.
const sharedOut = pattern('<a:count> for (<word>){1,3} (,|and|&|n|+){1,2} (the)? (other)? (<b:count>)? (one)? for (<word>){1,3}');
/** Whether the numbers told from here on only share out those before. */
export const sharesOut = (tokens: readonly Token[], before: Mention, number: number): boolean => {
  for (
    let start = sharedOut.next(tokens, before.last + 1, number + 1);
    start <= number;
    start = sharedOut.next(tokens, start + 1, number + 1)
  ) {
    const match = sharedOut.at(tokens, start, tokens.length);
    const [a, b] = [match?.kept['a']?.number, match?.kept['b']?.number];
    if (match === undefined || a === undefined || match.end <= number) continue;
    return Number(a.amount) + Number(b?.amount ?? 1) === (before.exact ?? Number(before.count?.number?.amount));
  }
  return false;
};

interface More {
  readonly count: Token;
  readonly countIndex: number;
  readonly end: number;
}

/** The further line of the kind before, if this place begins one. `from` is its first token, `index` its number. */
export const moreOfTheKind = (reader: Reader, index: number, before: Mention): More | undefined => {
  const more = moreAt(reader, index);
  return more !== undefined && sharesOut(reader.tokens, before, more.countIndex) ? undefined : more;
};

const links = new Set([',', 'and', '&', '+', ';', ':', 'plus', 'then', '-']);
const moreAt = (reader: Reader, index: number): More | undefined => {
  const { tokens } = reader;
  const told = others.at(tokens, index, tokens.length) ?? thenBoth.at(tokens, index, tokens.length);
  if (told?.kept['n'] !== undefined) return { count: told.kept['n'], countIndex: index, end: index + 2 };
  const rest = remaining.at(tokens, index, tokens.length)?.kept['n'];
  if (rest !== undefined) return { count: rest, countIndex: tokens.indexOf(rest, index), end: tokens.indexOf(rest, index) + 1 };
  const mark = tokens[index]?.text ?? '';
  const sized = links.has(mark) || mark === 'x' || mark === 'n' ? toldBySize(tokens, index) : undefined;
  if (sized !== undefined && reader.free(sized.countIndex)) return sized;
  const fresh = tokens[index]?.kind === 'line' || tokens[index]?.text === '.'; // a line or a sentence of its own
  if (!fresh && !links.has(mark)) return undefined;
  const from = fresh ? index + 1 : index;
  const match = firstAt(fresh ? freshForms : goingOn, tokens, from, tokens.length);
  const count = match?.kept['n'];
  const word = match?.kept['d'];
  // "10 after at 2": when, and not of which kind.
  const when = word !== undefined && /^(after|afterwards|later|before|early|late|earlier|am|pm|noon)$/.test(word.text);
  if (match === undefined || count === undefined || when || (word !== undefined && goods.some((tag) => word.means[tag] !== undefined)))
    return undefined;
  const countIndex = tokens.indexOf(count, index);
  if (!reader.free(countIndex)) return undefined;
  // "2 crowns for flower girls 38 each and one for the bride 85": the price stands behind who wears it.
  const forWhom = fresh ? undefined : worn.at(tokens, from, tokens.length);
  // "12 each and 15 for the groom": one man wears no fifteen.
  if (forWhom?.kept['n'] === count && onePerson.test(tokens[forWhom.end - 1]?.text ?? '') && Number(count.number?.amount) > 2)
    return undefined;
  return { count, countIndex, end: forWhom?.kept['n'] === count ? forWhom.end : countIndex + 1 };
};

/** Whether this can go on: a kind with its own number and, since, a price. */
export const goesOn = (reader: Reader, before: Mention | undefined, index: number): before is Mention =>
  before !== undefined &&
  reader.tokens
    .slice(before.index + 1, index)
    .some((token, at) => (token.number?.form === 'money' || token.number?.form === 'plain') && before.countIndex !== before.index + 1 + at);

// "buttonholes: 12 dried 4 fresh": each number is of its own material.
const ofMaterial = pattern('(,|and|&|+|n|plus)? <n:count> <m:material>');

/** The further line of the same kind in another material, and the material of the first. */
export const otherMaterial = (
  reader: Reader,
  before: Mention | undefined,
  index: number,
): { count: Token; countIndex: number; end: number; material: string; first: string } | undefined => {
  const first = reader.tokens[index - 1]?.means['material'];
  const match =
    before?.countIndex === index - 2 && before.count !== undefined ? ofMaterial.at(reader.tokens, index, reader.tokens.length) : undefined;
  const [count, material] = [match?.kept['n'], match?.kept['m']?.means['material']];
  if (match === undefined || count === undefined || material === undefined || first === undefined || material === first) return undefined;
  if (reader.tokens[match.end]?.means['piece'] !== undefined) return undefined;
  return { count, countIndex: match.end - 2, end: match.end, material, first };
};
