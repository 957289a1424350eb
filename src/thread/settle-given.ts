// What is added to the order at a price: "also 2 crowns for the flower girls at 45 each". The price is theirs, and changes nobody else's.

import type { Fact, FactOf } from '../reading/fact.ts';
import { decimal } from '../values/decimal.ts';
import type { EventState } from './event.ts';
import { kindInOrder } from './kind-in-order.ts';

type Change = FactOf<'change'>;
type Price = FactOf<'price'>;

const isGiven = (fact: Fact): fact is Change => fact.fact === 'change' && fact.what === 'count' && Number(fact.by ?? 0) > 0;
const isEach = (fact: Fact): fact is Price => fact.fact === 'price' && fact.per === 'each' && fact.amounts === undefined;

/** "5 more but those at 12": of the only kind there is. */
const ofOnlyKind = ({ lines }: EventState, price: Price | undefined): Price['piece'] =>
  price?.piece !== undefined && lines.every((line) => line.piece === price.piece) ? price.piece : undefined;

/** Pieces of a kind that costs something else already become a line of their own; else the price is their kind's. */
export const givenAtPrice = (state: EventState, facts: readonly Fact[]): readonly Fact[] => {
  const [given, anotherKind] = facts.filter(isGiven);
  const [price, anotherPrice] = facts.filter(isEach);
  const said = given?.piece ?? ofOnlyKind(state, price);
  if (!given || !said || anotherKind || !price || anotherPrice || facts.some((fact) => fact.fact === 'pieces')) return facts;
  const piece = kindInOrder(state.lines, said);
  if (price.piece && kindInOrder(state.lines, price.piece) !== piece) return facts;
  const { amount, amountMax } = price;
  const costs = state.lines.flatMap((line) => (line.piece === piece && line.price?.per === 'each' ? [line.price.amount] : []));
  const isOther = costs.length > 0 && !costs.some((cost) => decimal(cost).eq(amount));
  if (!isOther) return facts.map((fact) => (fact === price ? { ...price, piece } : fact));
  const own: Fact = {
    fact: 'pieces',
    piece,
    count: Number(given.by),
    price: { amount, ...(amountMax === undefined ? {} : { amountMax }), per: 'each' },
    adds: true,
    words: given.words,
  };
  return facts.flatMap((fact) => (fact === given ? [own] : fact === price ? [] : [fact]));
};
