// Prices that stand right behind their own lines, some of them for the whole line: "6 bouts for 72, 2 corsages at 30 each".

import { decimal } from '../../values/decimal.ts';
import { isBundleOf } from './bundles.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { countOf } from './read-order.ts';

const isTotal = (price: Price): boolean => price.per === 'all' || price.forCount === true;

// "6 bouts at 12, 2 corsages at 30, 132 all up" comes to more than the lines before it do.
const isOfAll = (lines: readonly Mention[], own: ReadonlyMap<Mention, Price>, total: Price): boolean => {
  if (total.forCount === true) return false;
  const last = lines.at(-1);
  // "1 groom's bout 25, 8 bouts 160 for the 8"
  if (total.ofCount !== undefined && last !== undefined && countOf(last).count === Number(total.ofCount)) return false;
  if (total.bundle !== undefined) return last === undefined || !isBundleOf(total.bundle, last);
  if (lines.slice(0, -1).every((line) => own.get(line)?.per === 'all')) return false; // each of them has its own
  const others = lines.slice(0, -1).map((line) => {
    const price = own.get(line);
    return price === undefined ? decimal(0) : decimal(price.number.amount).times(isTotal(price) ? 1 : countOf(line).count);
  });
  return others.reduce((sum, next) => sum.plus(next), decimal(0)).lessThan(total.number.amount);
};

const stands = (price: Price, before: Mention | undefined, own: Mention | undefined): boolean =>
  isTotal(price) && price.bundle === undefined && price.index > (before?.index ?? -1) && own !== undefined && price.index < own.start;

/** Each line's own price, and one for all where it stands last; undefined where the prices stand otherwise or none is a total. */
export const lineByLine = (
  lines: readonly Mention[],
  prices: readonly Price[],
): { own: Map<Mention, Price>; common?: Price } | undefined => {
  if (lines.length < 2 || !prices.some(isTotal)) return undefined;
  // "£140 for 10 bouts and £250 for 5 corsages"
  const ahead = prices.length === lines.length && prices.every((price, at) => stands(price, lines[at - 1], lines[at]));
  if (ahead) return { own: new Map(lines.flatMap((line, at) => (prices[at] === undefined ? [] : [[line, prices[at]]]))) };
  const slots = lines.map((line, at) =>
    prices.filter(({ index }) => index > line.index && index < (lines[at + 1]?.start ?? Number.MAX_SAFE_INTEGER)),
  );
  if (slots.reduce((sum, slot) => sum + slot.length, 0) !== prices.length) return undefined;
  const own = new Map<Mention, Price>();
  for (const [at, line] of lines.entries()) {
    const [price, second, third] = slots[at] ?? [];
    const last = at === lines.length - 1;
    if (price === undefined) continue;
    if (price.piece !== undefined && price.piece !== line.kind) return undefined;
    if (second !== undefined && !(last && isTotal(second) && !isTotal(price) && third === undefined)) return undefined;
    if (last && second === undefined && isTotal(price) && isOfAll(lines, own, price)) {
      // Behind every line, and no other price: for all of them.
      return own.size === 0 ? undefined : { own, common: price };
    }
    if (second === undefined && isTotal(price) && last && own.size === 0 && price.bundle === undefined) return undefined;
    own.set(line, price);
    if (second !== undefined) return { own, common: second };
  }
  return { own };
};
