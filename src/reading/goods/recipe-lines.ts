// The lines of a recipe: a quantity and a name each. "half a stem eucalyptus", "billy buttons x2", "30cm ribbon".

import type { RecipeLineFact } from '../fact.ts';
import type { Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { portionWords } from '../words/trade-words.ts';
import { itemName, knowsItem } from './item-name.ts';

/** A quantity that begins here: stems, a share of a stem, or a length. */
export const quantity = (
  tokens: readonly Token[],
  index: number,
): { stems?: number; length?: number; unit?: string; next: number } | undefined => {
  const token = tokens[index];
  const number = token?.number;
  if (token === undefined) return undefined;
  if (number?.form === 'plain' && number.max === undefined && Number(number.amount) <= 500) {
    const x = tokens[index + 1]?.text === 'x' ? 1 : 0;
    return { stems: Number(number.amount), next: index + 1 + x };
  }
  if (
    number?.form === 'slashed' &&
    number.parts?.length === 2 &&
    (number.parts[1] ?? 0) > (number.parts[0] ?? 0) &&
    (number.parts[1] ?? 9) <= 4
  ) {
    return { stems: (number.parts[0] ?? 0) / (number.parts[1] ?? 1), next: index + 1 };
  }
  if (number?.form === 'length' || number?.form === 'weight')
    return { length: Number(number.amount), unit: number.unit ?? '', next: index + 1 };
  if (/^(sprig|stem|head|bloom|floret|stalk)$/.test(token.text) && tokens[index + 1]?.text === 'of') return { stems: 1, next: index + 2 };
  if (token.text === 'half' || token.text === 'quarter') {
    const article = /^(a|an|of)$/.test(tokens[index + 1]?.text ?? '') ? 1 : 0;
    return { stems: token.text === 'half' ? 0.5 : 0.25, next: index + 1 + article };
  }
  if (
    /^(a|an|single)$/.test(token.text) &&
    tokens[index + 1]?.kind === 'word' &&
    tokens[index + 1]?.means['pack'] !== 'bunch' &&
    tokens[index + 1]?.means['piece'] === undefined
  )
    return { stems: 1, next: index + 1 };
  return undefined;
};

/** Whether a token stands between two lines. */
export const separates = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'line' || /^(,|and|&|\+|plus|;|\.|with|then|n|\/|\)|\()$/.test(token.text);

const separatesNext = (tokens: readonly Token[], at: number, end: number): boolean => at < end && tokens[at]?.number !== undefined;
const numberBehind = (tokens: readonly Token[], at: number, end: number): { stems: number; next: number } | undefined => {
  const number = tokens[at]?.number;
  if (number?.form !== 'plain' || number.max !== undefined) return undefined;
  let next = at + 1;
  while (next < end && portionWords.has(tokens[next]?.text ?? '')) next += 1;
  return next >= end || separates(tokens[next]) || tokens[next]?.number !== undefined ? { stems: Number(number.amount), next } : undefined;
};

/** A line, and whether its name is a known one. */
export interface Line {
  readonly line: RecipeLineFact;
  readonly known: boolean;
}

// The items of a stretch: a quantity and a name each; a known name may go without a number.
export const linesIn = (reader: Reader, start: number, end: number): Line[] | undefined => {
  const { tokens, context } = reader;
  const lines: Line[] = [];
  let index = start;
  while (index < end) {
    const token = tokens[index];
    if (separates(token) || token?.text === ':' || token?.text === '-') {
      index += 1;
      continue;
    }
    const amount = quantity(tokens, index);
    const from = amount?.next ?? index;
    let to = from;
    while (to < end && !separates(tokens[to]) && (to === from || quantity(tokens, to) === undefined)) to += 1;
    const named = tokens.slice(from, to);
    if (
      named.some(
        (each) =>
          each.number?.form === 'money' ||
          each.number?.form === 'percent' ||
          (each.means['piece'] !== undefined && each.means['ingredient'] === undefined && each.means['piece'] !== 'unspecified'),
      )
    )
      return undefined;
    // "billy buttons x2", "pampas 1": the number behind the name.
    const behind = amount === undefined && named.length > 0 && separatesNext(tokens, to, end) ? numberBehind(tokens, to, end) : undefined;
    const name = itemName(named, false);
    const known = knowsItem(named, context.items);
    if (name === undefined) {
      if (amount !== undefined) return undefined;
      index = Math.max(to, index + 1);
      continue;
    }
    if (amount === undefined && !known) {
      index = Math.max(to, index + 1);
      continue;
    }
    const { stems, length, unit }: { stems?: number; length?: number; unit?: string } = amount ?? behind ?? {};
    lines.push({
      known,
      line: { ingredient: name, ...(stems === undefined ? {} : { stems }), ...(length === undefined ? {} : { length, unit: unit ?? '' }) },
    });
    index = behind?.next ?? to;
  }
  return lines;
};
