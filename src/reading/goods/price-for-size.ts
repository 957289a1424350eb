// A price and a pack's size with a stroke between them: "$18/10 roses", "roses £14/25".

import type { FactOf } from '../fact.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import type { Part } from '../text/message.ts';
import { codesBefore, signs } from '../words/currency-words.ts';
import { itemName, knowsItem } from './item-name.ts';

const money = (text: string): { currency?: string; symbol?: string } | undefined => {
  const currency = Object.hasOwn(signs, text) ? signs[text] : Object.hasOwn(codesBefore, text) ? codesBefore[text] : undefined;
  if (text === '$') return { symbol: text };
  return currency === undefined ? undefined : { currency };
};

/** Read only when the part is made of the price, the size, the name and a tax word. */
export const priceForSize = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const { tokens, context } = reader;
  let at = start;
  while (at < end && !(tokens[at]?.number?.form === 'slashed' && money(tokens[at - 1]?.text ?? '') !== undefined)) at += 1;
  const parts = tokens[at]?.number?.parts ?? [];
  const [price, size, more] = parts;
  if (at >= end || at - 1 < start || price === undefined || size === undefined || more !== undefined || size < 2) return undefined;
  const rest: number[] = [];
  for (let index = start; index < end; index++) if (index !== at && index !== at - 1) rest.push(index);
  const tax = rest.find((index) => taxAt(reader, index) !== undefined);
  const read = tax === undefined ? undefined : taxAt(reader, tax);
  const named = rest
    .filter((index) => read === undefined || index < read.match.start || index >= read.match.end)
    .flatMap((index) => tokens[index] ?? []);
  if (
    named.length > 4 ||
    !named.every((token) => token.kind === 'word' && token.means['piece'] === undefined) ||
    !knowsItem(named, context.items)
  )
    return undefined;
  const item = itemName(named, true);
  if (item === undefined) return undefined;
  const basis = read?.fact.basis;
  const pack: Omit<FactOf<'pack'>, 'words'> = {
    fact: 'pack',
    item,
    price: String(price),
    size,
    ...money(tokens[at - 1]?.text ?? ''),
    ...(basis === undefined || basis === 'none' ? {} : { basis }),
    ...(read?.fact.name === undefined ? {} : { taxName: read.fact.name }),
  };
  return found(reader, start, end, [pack]);
};
