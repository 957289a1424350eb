// "ruscus 7" where ruscus is in the recipe and has no price: its price, or so many in each. Nothing in the words says which, so it is asked.

import { matchIngredient } from '../../handbook/ingredient-names.ts';
import { itemName, knowsItem } from '../goods/item-name.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { isSingle } from '../text/token.ts';

const form = pattern("(and|the|,|ok|oh|so){0,2} (<word>){1,3} (is|are|it's|its|was|:|-|=|@){0,2} <n:plain>");

interface Lone {
  readonly item: string;
  readonly amount: string;
}

const loneIn = (reader: Reader, start: number, end: number, unpriced: readonly string[]): Lone | undefined => {
  const { tokens, context } = reader;
  const match = form.at(tokens, start, end);
  const number = match?.kept['n']?.number;
  if (match?.end !== end || !isSingle(number) || number.worded) return undefined;
  if (!/^\d{1,3}$/.test(number.amount) || number.amount === '0') return undefined;
  const words = tokens.slice(start, end - 1);
  // "rose at 9" may be somebody's hour
  if (words.some(({ text }) => /^(at|by|from|till|until|with|for|on|in)$/.test(text))) return undefined;
  if (!knowsItem(words, context.items) || words.some(({ means }) => means['piece'] !== undefined || means['role'] !== undefined))
    return undefined;
  const name = itemName(words, true);
  const found = name === undefined ? undefined : matchIngredient(name, unpriced);
  return found === undefined || found.match === 'none' ? undefined : { item: found.name, amount: number.amount };
};

export const priceLacking: Phrase = {
  name: 'price lacking',
  examples: [],
  find: (reader): Finding[] => {
    const { tokens, context, message } = reader;
    const unpriced = context.unpriced ?? [];
    const [part] = message.parts;
    if (unpriced.length === 0 || part === undefined || tokens.length > 24 || message.parts.some(({ asked }) => asked)) return [];
    const stretches: Lone[] = [];
    let from = 0;
    for (let index = 0; index <= tokens.length; index++) {
      const token = tokens[index];
      if (token !== undefined && token.kind !== 'line' && !/^(,|and|&|;|\/|n)$/.test(token.text)) continue;
      if (index > from) {
        const lone = loneIn(reader, from, index, unpriced);
        if (lone === undefined) return [];
        stretches.push(lone);
      }
      from = index + 1;
    }
    const words = reader.words(0, tokens.length);
    const prices = stretches.map(({ item, amount }) => ({ fact: 'pack' as const, item, price: amount, words }));
    const lines = stretches.map(({ item, amount }) => ({ ingredient: item, stems: Number(amount) }));
    const choices = [
      { words: stretches.length > 1 ? 'the prices' : 'the price', facts: prices },
      {
        words: stretches.length > 1 ? 'so many in each' : `${stretches[0]?.amount} in each`,
        facts: [{ fact: 'recipe' as const, lines, adds: true as const, words }],
      },
    ];
    return [{ start: 0, end: tokens.length, asks: [{ about: 'price', why: 'which number', words, choices }] }];
  },
};
