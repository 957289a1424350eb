// The price list a studio has built up by saying prices and importing files: the pack facts, oldest first, with the newest word on each item winning.
// A newer fact that leaves something out ("bunny tails now 15.20 a bunch") keeps what was said before.

import { ingredientKey } from '../handbook/ingredient-names.ts';
import { readRole } from '../handbook/roles.ts';
import { readContainer, readUnit, stem, type Unit } from '../handbook/units.ts';
import type { FactOf } from '../reading/fact.ts';
import { type Decimal, decimal, hundred, zero } from '../values/decimal.ts';
import type { Problem } from '../values/problem.ts';
import { problem } from '../values/result.ts';
import type { Item } from './item.ts';
import { onePackPrice, packsPaid } from './one-pack.ts';

type Pack = FactOf<'pack'>;

export interface PriceList {
  readonly items: readonly Item[];
  readonly unsized: readonly string[]; // priced by the bunch or box, without how many are in it: ask
  readonly problems: readonly Problem[]; // facts that cannot be a row; the rest of the list stands
}

export interface PriceListOptions {
  readonly currency: string; // the studio's, ISO 4217
  readonly taxRate?: Decimal; // percent; takes the tax off prices said to include it
}

/** All that was said about one item, newest word first in each field. Size, unit and container are one statement and stay together. */
const merged = (older: Pack | undefined, newer: Pack): Pack => {
  if (older === undefined) return newer;
  const { size, unit, per, ...rest } = older;
  const saysPack = newer.size !== undefined || newer.unit !== undefined || (newer.per !== undefined && newer.per !== per);
  const pack = saysPack
    ? {}
    : { ...(size === undefined ? {} : { size }), ...(unit === undefined ? {} : { unit }), ...(per === undefined ? {} : { per }) };
  const { priceMax: _max, basis: _basis, taxName: _taxName, from: _from, quantity: _quantity, forAll: _forAll, ...kept } = rest; // these belong to the old price
  return { ...kept, ...pack, ...newer, item: older.item }; // a name typed in a hurry doesn't rename the list's
};

interface Sized {
  readonly size: Decimal;
  readonly unit: Unit;
  readonly pack?: string;
}

/** What is in a pack; undefined while nobody has said. Free material needs no pack: it counts by the stem. */
const sizeOf = (pack: Pack): Sized | undefined => {
  const container = readContainer(pack.per ?? '') ?? readContainer(pack.unit ?? '');
  const unit = readUnit(pack.unit ?? '') ?? (container === undefined ? readUnit(pack.per ?? '') : undefined);
  const named = container === undefined ? {} : { pack: container };
  if (pack.size !== undefined) return { size: decimal(pack.size), unit: unit ?? stem, ...named };
  if (container === undefined && unit !== undefined) return { size: decimal(1), unit };
  return decimal(pack.price).isZero() ? { size: decimal(1), unit: stem } : undefined;
};

const amountOf = (pack: Pack, { taxRate, currency }: PriceListOptions): Decimal => {
  const said = pack.priceMax ?? pack.price;
  const price = onePackPrice(pack, said, currency) ?? decimal(said); // "14 to 16": the dearer, so that a budget never rests on the hope of the cheaper
  return pack.basis === 'included' && taxRate !== undefined ? price.times(hundred).div(hundred.plus(taxRate)) : price;
};

const trouble = (pack: Pack, currency: string): Problem | undefined => {
  if (pack.currency !== undefined && pack.currency !== currency)
    return problem('other-currency', { said: pack.currency, studio: currency });
  if (pack.size !== undefined && pack.size <= 0) return problem('pack-size-not-positive', { item: pack.item, size: String(pack.size) });
  if (decimal(pack.price).lt(zero)) return problem('pack-price-negative', { item: pack.item, price: pack.price });
  if ([pack.price, pack.priceMax ?? pack.price].some((price) => onePackPrice(pack, price, currency) === undefined))
    return problem('pack-price-uneven', { item: pack.item, price: pack.price, packs: packsPaid(pack), per: pack.per ?? 'pack' });
  return undefined;
};

const asItem = (pack: Pack, sized: Sized, options: PriceListOptions): Item => {
  const role = readRole(pack.role ?? '');
  return {
    name: pack.item,
    packPrice: amountOf(pack, options).times(pack.per === 'stem' && pack.size !== undefined ? pack.size : 1), // "2.50 a stem, in tens"
    ...sized,
    ...(pack.supplier === undefined ? {} : { supplier: pack.supplier }),
    ...(pack.leadDays === undefined ? {} : { leadDays: pack.leadDays }),
    ...(pack.spare === undefined ? {} : { spare: decimal(pack.spare) }),
    ...(pack.stock === undefined ? {} : { stock: decimal(pack.stock) }),
    ...(pack.dryingDays === undefined ? {} : { dryingDays: pack.dryingDays }),
    ...(role === undefined ? {} : { role }),
    ...(pack.note === undefined ? {} : { note: pack.note }),
  };
};

/** The list as these facts leave it. The list of an earlier time is the list of the facts up to then. */
export const priceListOf = (packs: readonly Pack[], options: PriceListOptions): PriceList => {
  const byKey = new Map<string, Pack>();
  const problems: Problem[] = [];
  for (const pack of packs) {
    const wrong = trouble(pack, options.currency);
    if (wrong !== undefined) problems.push(wrong);
    else byKey.set(ingredientKey(pack.item), merged(byKey.get(ingredientKey(pack.item)), pack));
  }
  const items: Item[] = [];
  const unsized: string[] = [];
  for (const pack of byKey.values()) {
    const sized = sizeOf(pack);
    if (sized === undefined) unsized.push(pack.item);
    else items.push(asItem(pack, sized, options));
  }
  return { items, unsized, problems };
};

/** An item as the fact that says all of it, for storing an imported list. */
export const packFact = (item: Item): Pack => ({
  fact: 'pack',
  item: item.name,
  price: item.packPrice.toFixed(),
  size: item.size.toNumber(),
  unit: item.unit.name,
  ...(item.pack === undefined ? {} : { per: item.pack }),
  ...(item.supplier === undefined ? {} : { supplier: item.supplier }),
  ...(item.leadDays === undefined ? {} : { leadDays: item.leadDays }),
  ...(item.spare === undefined ? {} : { spare: item.spare.toFixed() }),
  ...(item.stock === undefined ? {} : { stock: item.stock.toNumber() }),
  ...(item.dryingDays === undefined ? {} : { dryingDays: item.dryingDays }),
  ...(item.role === undefined ? {} : { role: item.role }),
  ...(item.note === undefined ? {} : { note: item.note }),
  words: item.name,
});
