// What several goods of one message share: a price for two of them, a currency, a tax said last.

import type { FactOf } from '../fact.ts';

// "limonium and statice both 5 a bunch": one price for two.
export const apart = (fact: FactOf<'pack'>): FactOf<'pack'>[] => {
  const names = fact.item.replace(/ (both|all)$/, '').split(' and ');
  return names.length > 1 ? names.map((item) => ({ ...fact, item })) : [fact];
};

/** The currency of one and the tax said last hold for all. */
export const shareTax = (given: readonly FactOf<'pack'>[]): FactOf<'pack'>[] => {
  const last = given.at(-1);
  const currency = given.find((fact) => fact.currency !== undefined)?.currency;
  const facts = given.map((fact) =>
    fact.currency === undefined && fact.symbol === undefined && currency !== undefined ? { ...fact, currency } : fact,
  );
  return facts.map((fact) =>
    fact.basis === undefined && last?.basis !== undefined
      ? { ...fact, basis: last.basis, ...(last.taxName === undefined ? {} : { taxName: last.taxName }) }
      : fact,
  );
};
