// The lines of a recipe: a quantity and a name each. "half a stem eucalyptus", "billy buttons x2", "30cm ribbon".

import { hazardsIn, tellsOfHealth } from '../../handbook/hazard-words.ts';
import type { RecipeLineFact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { firstWhere, isRangeOrChoice, isSingle, type Token } from '../text/token.ts';
import { portionWords } from '../words/trade-words.ts';
import { itemName, knowsItem } from './item-name.ts';
import { besideNames } from './name-edges.ts';
import { endsName, pastLeftOut } from './not-put-in.ts';
import { type Quantity, quantity, soldByLength } from './quantity.ts';

/** Whether a token stands between two lines. */
export const separates = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'line' || /^(,|and|&|\+|plus|;|\.|with|then|n|\/|\)|\()$/.test(token.text);

const separatesNext = (tokens: readonly Token[], at: number, end: number): boolean =>
  at < end && (tokens[at]?.number !== undefined || tokens[at]?.text === '(');
const numberBehind = (tokens: readonly Token[], at: number, end: number): Quantity | undefined => {
  if (tokens[at]?.text === '(' && tokens[at + 2]?.text === ')' && at + 2 < end && tokens[at + 1]?.number?.form === 'plain')
    return { stems: Number(tokens[at + 1]?.number?.amount), next: at + 3 };
  const number = tokens[at]?.number;
  if (!isSingle(number)) return undefined;
  const closes = (next: number): boolean => next >= end || separates(tokens[next]) || tokens[next]?.number !== undefined;
  // "ribbon 30cm"
  if (number.form === 'length')
    return closes(at + 1) ? { length: Number(number.amount), unit: number.unit ?? '', next: at + 1 } : undefined;
  if (number.form !== 'plain') return undefined;
  // "paddle wire 20 in"
  if (tokens[at + 1]?.text === 'in' && soldByLength(tokens[at - 1]) && closes(at + 2))
    return { length: Number(number.amount), unit: 'in', next: at + 2 };
  let next = at + 1;
  if (/^(nos|no)$/.test(tokens[next]?.text ?? '') && closes(next + 1)) next += 1; // "roses 2 nos"
  while (next < end && portionWords.has(tokens[next]?.text ?? '')) next += 1;
  // "rose x2 fern x1"
  const marked =
    tokens[at - 1]?.text === 'x' &&
    (tokens[next]?.means['ingredient'] !== undefined || (tokens[next]?.kind === 'word' && tokens[next + 1]?.text === 'x'));
  return closes(next) || marked ? { stems: Number(number.amount), next } : undefined;
};

// "15cm wire x3": three such lengths.
const times = (tokens: readonly Token[], at: number): number | undefined =>
  tokens[at - 1]?.text === 'x' && tokens[at]?.number?.form === 'plain' ? Number(tokens[at]?.number?.amount) : undefined;
const repeated = (tokens: readonly Token[], amount: Quantity | undefined, at: number): Quantity | undefined => {
  const many = times(tokens, at);
  return amount?.length === undefined || many === undefined ? undefined : { ...amount, length: amount.length * many };
};

// "1 rosemary for all of them": the name ends where talk begins.
const upToTalk = (named: readonly Token[]): readonly Token[] => {
  const goods = named.findIndex((token) => token.means['ingredient'] !== undefined);
  const talk = goods < 0 ? -1 : named.findIndex((token, at) => at > goods && besideNames(token));
  return talk < 0 ? named : named.slice(0, talk);
};

/** A line, and whether its name is a known one. */
export interface Line {
  readonly line: RecipeLineFact;
  readonly known: boolean;
}

// "3 dried rose buds" are rose buds, unless the price list has them by that name.
const listed = (named: readonly Token[], items: readonly string[]): boolean => {
  const name = itemName(named, false);
  return name !== undefined && items.some((item) => item.toLowerCase() === name);
};
// "1 protea (or 2 blushing brides)", "1 rose or ranunculus": which of them is not said.
const isOpenChoice = (tokens: readonly Token[], from: number, to: number): boolean => {
  const or = firstWhere(tokens, from, to, ({ text }) => text === 'or');
  if (or < 0) return false;
  const goods = (start: number, end: number): boolean =>
    firstWhere(tokens, start, end, ({ means }) => means['ingredient'] !== undefined) >= 0;
  if (or === from) return tokens[or - 1]?.text === '(' && quantity(tokens, or + 1) !== undefined && goods(or + 1, or + 5);
  return goods(from, or) && goods(or + 1, to);
};
const bareStems = (named: readonly Token[]): string | undefined =>
  named.length > 0 && named.every((token) => /^(stem|stems|of|flowers)$/.test(token.text)) ? 'stem' : undefined;

// A pacemaker is the wearer's and silica gel the shelf's. Magnets and glue go in where they are counted out; said without a number they only say how.
const noIngredient = (name: string, counted: boolean): boolean =>
  hazardsIn(name).some((hazard) => !counted || (hazard !== 'magnet' && hazard !== 'hot glue' && hazard !== 'foraged'));

const size = pattern(
  '\\( (with|about|approx)? <number> (x)? (heads|head|blooms|bloom|stems|buds|flowers|florets|leaves|each) (each|per stem|a stem)? \\)',
);

// "14 stems in all": what the lines come to.
const sum = pattern('(<count> (stems|stem|bits|heads|flowers|elements|things)? <all>|<all> (of|:)? <count> (stems|stem|heads|flowers))');

// The items of a stretch: a quantity and a name each; a known name may go without a number.
export const linesIn = (reader: Reader, start: number, end: number): Line[] | undefined => {
  const { tokens, context } = reader;
  const lines: Line[] = [];
  // "pacemaker, use pins"
  const ofCare = (): boolean => tellsOfHealth(reader.words(start, end));
  let index = start;
  while (index < end) {
    const token = tokens[index];
    // "2 spray roses (5 heads)": how big they are.
    const aside = lines.length > 0 ? (size.at(tokens, index, end) ?? sum.at(tokens, index, end)) : sum.at(tokens, index, end);
    if (aside !== undefined) {
      index = aside.end;
      continue;
    }
    if (separates(token) || token?.text === ':' || token?.text === '-') {
      index += 1;
      continue;
    }
    const out = pastLeftOut(tokens, index, end);
    if (out !== undefined) {
      index = out;
      continue;
    }
    // "2-3 roses", "10cm or 12cm ribbon": how many or how long is not said.
    if (token?.number !== undefined && /^(plain|length|weight)$/.test(token.number.form) && !isSingle(token.number)) return undefined;
    const amount = quantity(tokens, index);
    const from = amount?.next ?? index;
    let to = from;
    while (to < end && !separates(tokens[to]) && (to === from || (quantity(tokens, to) === undefined && !endsName(tokens, to, end))))
      to += 1;
    const named = upToTalk(tokens.slice(from, to));
    // "1 rose 2-3 wax"
    if (tokens.slice(from, to).some(({ number }) => number?.form === 'plain' && isRangeOrChoice(number))) return undefined;
    // "3 roses or 2 peonies": which of them is not said.
    if (amount !== undefined && tokens[to - 1]?.text === 'or' && quantity(tokens, to) !== undefined) return undefined;
    if (isOpenChoice(tokens, from, to)) return undefined;
    if (
      named.some(
        (each) =>
          each.number?.form === 'money' ||
          each.number?.form === 'percent' ||
          each.means['month'] !== undefined ||
          each.means['weekday'] !== undefined ||
          (amount !== undefined && each.means['role'] !== undefined) ||
          (each.means['piece'] !== undefined && each.means['ingredient'] === undefined && each.means['piece'] !== 'unspecified'),
      )
    )
      return undefined;
    // "billy buttons x2", "pampas 1": the number behind the name.
    const behind = amount === undefined && named.length > 0 && separatesNext(tokens, to, end) ? numberBehind(tokens, to, end) : undefined;
    const known = knowsItem(named, context.items);
    const name = itemName(named, known && !listed(named, context.items)) ?? (amount === undefined ? undefined : bareStems(named));
    if (name === undefined) {
      if (amount !== undefined) return undefined;
      index = Math.max(to, index + 1);
      continue;
    }
    // "gum x2": counted out, whatever it is.
    const marked = behind !== undefined && tokens[to - 1]?.text === 'x';
    if (noIngredient(name, amount !== undefined || behind !== undefined) || (amount === undefined && ((!known && !marked) || ofCare()))) {
      index = Math.max(to, index + 1);
      continue;
    }
    const { stems, makes, length, unit }: Partial<Quantity> = repeated(tokens, amount, to) ?? amount ?? behind ?? {};
    lines.push({
      known,
      line: {
        ingredient: name,
        ...(stems === undefined ? {} : { stems }),
        ...(makes === undefined ? {} : { makes }),
        ...(length === undefined ? {} : { length, unit: unit ?? '' }),
      },
    });
    index = behind?.next ?? (amount?.length !== undefined && times(tokens, to) !== undefined ? to + 1 : to);
  }
  return lines;
};
