// A price in another currency than the studio's is never converted and never stored: the person says what it is in the studio's own money.

import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import { currencySign } from '../values/currency.ts';

type Priced = FactOf<'price'> | FactOf<'change'> | FactOf<'pieces'> | FactOf<'pack'>;

const amountIn = (fact: Priced): string => {
  if (fact.fact === 'change') return String(fact.to ?? fact.by ?? '');
  if (fact.fact === 'pieces') return fact.price?.amount ?? '';
  return fact.fact === 'pack' ? fact.price : fact.amount;
};

const saidIn = (fact: Fact): { readonly currency?: string; readonly symbol?: string } => {
  if (fact.fact === 'pieces') return fact.price ?? {};
  return fact.fact === 'price' || fact.fact === 'change' || fact.fact === 'pack' ? fact : {};
};

const pesos = new Set(['ARS', 'CLP', 'COP', 'CUP', 'DOP', 'MXN', 'UYU']); // written with the same sign

/** "$25" names no country, but it isn't pounds. "Bucks" are anybody's. */
const isDollarSign = (fact: Fact): boolean => saidIn(fact).symbol === '$' && /\$|dollar/i.test('words' in fact ? fact.words : '');

const isForeign = (fact: Fact, studio: string): boolean => {
  const { currency } = saidIn(fact);
  if (currency !== undefined) return currency !== studio;
  return isDollarSign(fact) && currencySign(studio) !== '$' && !pesos.has(studio);
};

const withoutCurrency = (fact: Fact): Fact => {
  if (fact.fact === 'pieces' && fact.price) {
    const { currency: _, symbol: _symbol, ...price } = fact.price;
    return { ...fact, price };
  }
  if (fact.fact !== 'price' && fact.fact !== 'change' && fact.fact !== 'pack') return fact;
  const { currency: _, symbol: _symbol, ...rest } = fact;
  return rest as Fact;
};

/** All the facts in another currency as one question; the choice states them again in the studio's own. */
export const askCurrency = (facts: readonly Fact[], studio: string): { readonly kept: readonly Fact[]; readonly ask: Ask | undefined } => {
  const foreign = facts.filter((fact): fact is Priced => isForeign(fact, studio));
  if (foreign.length === 0) return { kept: facts, ask: undefined };
  const amounts = foreign.map(amountIn).join(', ');
  return {
    kept: facts.filter((fact) => !foreign.some((other) => other === fact)),
    ask: {
      about: 'price',
      why: 'other currency',
      words: foreign.map((fact) => fact.words).join(', '),
      choices: [{ words: `${amounts} in ${studio}`, facts: foreign.map(withoutCurrency) }],
    },
  };
};
