// Prices of kinds that are named beside an order and not counted in it: "crowns 90 each. 12 bouts" prices no bout.

import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { countOf, priceFact } from './read-order.ts';

const alike = (one: string, other: string): boolean => one.includes(other) || other.includes(one);

// "12 bouts 18, corsages 45 inc gst": laid out like the price before it, and so the price of one.
const taxed = pattern('(<included>|<onTop>|(plus|\\+)? (the)? <tax>)');
const [least, most] = [5, 150];
const alikeLaid = ({ tokens }: Reader, price: Price, prices: readonly Price[]): boolean => {
  const amount = Number(price.number.amount);
  const told = price.number.form === 'money' || taxed.at(tokens, price.end, tokens.length) !== undefined;
  return price.per === 'unsaid' && price.forCount !== true && told && prices.length > 1 && amount >= least && amount < most;
};

// "12 bouts 18, corsages 45 each": 18 for all of them would be out of all proportion.
const share = 5;
/** The prices beside such ones; with "each" or "all" unsaid it is for each where for all would be next to nothing. */
export const besideKindPrices = (
  mentions: readonly Mention[],
  prices: readonly Price[],
  others: readonly { readonly price: Price }[],
): Price[] => {
  const lowest = Math.min(...others.map(({ price }) => Number(price.number.amount)));
  const pieces = mentions.reduce((sum, mention) => sum + (mention.countIndex === undefined ? 0 : countOf(mention).count), 0);
  const own = prices.filter((price) => !others.some((other) => other.price.index === price.index));
  return own.map((price) => {
    const amount = Number(price.number.amount);
    const open = price.per === 'unsaid' && !price.forCount && others.length > 0;
    return open && amount <= lowest && amount / pieces < lowest / share ? { ...price, per: 'each' as const } : price;
  });
};

/** Each such price, with what it states. */
export const pricesOfOthers = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): { price: Price; fact: Fact }[] => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined);
  if (lines.length === 0) return [];
  const once = prices.filter((price, at) => prices.findIndex(({ index }) => index === price.index) === at);
  return once.flatMap((price) => {
    const before = /^(is|are|=|:|-|cost|for)$/.test(reader.tokens[price.start - 1]?.text ?? '') ? price.start - 2 : price.start - 1;
    const own = mentions.find((mention) => mention.countIndex === undefined && mention.last === before && mention.kind !== 'unspecified');
    // "bouts $15 each x 12" counts them after all.
    if (reader.tokens[price.end]?.text === 'x') return [];
    // "10 bouts and corsages at 30"
    const each =
      price.per === 'each' || (price.per === 'unsaid' && (price.at || price.kind === 'from')) || alikeLaid(reader, price, prices);
    if (
      own === undefined ||
      !each ||
      (price.piece !== undefined && price.pieceIndex !== own.index) ||
      lines.some(({ kind }) => alike(kind, own.kind))
    )
      return [];
    const words = reader.words(own.index, price.end);
    return [{ price: { ...price, pieceIndex: own.index }, fact: { ...priceFact(price, 'each', false), piece: own.kind, words } as Fact }];
  });
};
