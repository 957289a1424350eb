// Says which price belongs to which piece: a price of its own for each kind, or one for all.

import { lineByLine } from './line-by-line.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';

export interface Line {
  readonly mention: Mention;
  readonly price?: Price;
}

export interface Matched {
  readonly lines: readonly Line[];
  /** One price for everything. */
  readonly common?: Price;
  /** Prices that could not be placed. */
  readonly spare: readonly Price[];
}

const counted = (mention: Mention): boolean => mention.countIndex !== undefined;

// "6 bouts 3 corsages, $12 bouts $28 corsages" and "12 per bout": a price that names its kind goes to the counted line of that kind.
const namedPrices = (lines: readonly Mention[], prices: readonly Price[], counts: ReadonlyMap<number, Mention>): Map<Mention, Price> => {
  const placed = new Map<Mention, Price>();
  for (const price of prices) {
    if (price.piece === undefined || price.pieceIndex === undefined) continue;
    const own = counts.get(price.pieceIndex);
    const line =
      own ??
      lines.find((mention) => mention.kind === price.piece && !placed.has(mention)) ??
      lines.find((mention) => !placed.has(mention) && related(mention.kind, price.piece ?? 'unspecified'));
    if (line !== undefined) placed.set(line, price);
  }
  return placed;
};

// "lapel 50 pcs 60 corsage 20 pcs 150": name, number and price, and again; each price is of the name before it.
const inRows = (lines: readonly Mention[], prices: readonly Price[]): boolean =>
  lines.length > 1 &&
  prices.length === lines.length &&
  lines.every(({ index, countIndex }, at) => {
    const [price, next] = [prices[at]?.index ?? -1, lines[at + 1]?.index ?? Number.POSITIVE_INFINITY];
    return countIndex !== undefined && countIndex > index && price > countIndex && price < next;
  });

/** "12 wrist corsages … corsages 29.99": the one kind is of the other. */
export const related = (one: string, other: string): boolean => one.includes(other) || other.includes(one);

// "7 buttonholes, 3 corsages: £63 for all the buttonholes": the total of one line, where there are others.
const ownTotal = (lines: readonly Mention[], prices: readonly Price[]): readonly [Mention, Price] | undefined => {
  // "bouts x 11 = $165 crowns x 3 = $150": the kind right behind a total begins the next line.
  const price = prices.find((each) => each.per === 'all' && (each.pieceIndex ?? -1) > each.index + 1);
  const [line, another] = lines.filter(({ kind }) => kind === price?.piece);
  return price === undefined || line === undefined || another !== undefined || lines.length < 2 ? undefined : [line, price];
};

/** Places the prices over the counted pieces. */
export const matchPrices = (mentions: readonly Mention[], prices: readonly Price[]): Matched => {
  const own = ownTotal(mentions.filter(counted), prices);
  if (own === undefined) return placed(mentions, prices);
  const [mention, price] = own;
  const rest = matchPrices(
    mentions.filter((each) => each !== mention),
    prices.filter((each) => each !== price),
  );
  const [only, second] = rest.lines;
  const { common, ...others } = rest;
  const isOwn =
    only !== undefined && second === undefined && common !== undefined && (common.per !== 'all' || common.piece === only.mention.kind);
  const lines = [...(isOwn ? [{ mention: only.mention, price: common }] : rest.lines), { mention, price }];
  return { ...(isOwn ? others : rest), lines: lines.toSorted((a, b) => a.mention.index - b.mention.index) };
};

const placed = (mentions: readonly Mention[], prices: readonly Price[]): Matched => {
  const lines = mentions.filter(counted);
  const bare = (placed: ReadonlyMap<Mention, Price>): Line[] =>
    lines.map((mention) => {
      const price = placed.get(mention);
      return price === undefined ? { mention } : { mention, price };
    });
  const none = new Map<Mention, Price>();
  const [only] = prices;
  if (only === undefined) return { lines: bare(none), spare: [] };
  const totals = prices.filter((price) => price.per === 'all' || price.forCount === true);
  const units = prices.filter((price) => !totals.includes(price));
  const [total] = totals;
  const apart = lineByLine(lines, prices);
  if (apart !== undefined) return { lines: bare(apart.own), ...(apart.common === undefined ? {} : { common: apart.common }), spare: [] };
  if (units.length === 0 && totals.length === 1 && total !== undefined) {
    return { lines: bare(none), common: total, spare: [] };
  }
  if (units.length === 0 && totals.length === lines.length) {
    // "10 bouts $150 total, 4 corsages $120 total": a total for each line.
    const own = new Map<Mention, Price>();
    for (const price of totals) {
      const before = lines.filter((line) => line.index < price.index).at(-1);
      if (before !== undefined && !own.has(before)) own.set(before, price);
    }
    if (own.size === lines.length) return { lines: bare(own), spare: [] };
  }
  const [onlyLine, secondLine] = lines;
  const [unit, secondUnit] = units;
  if (
    onlyLine !== undefined &&
    secondLine === undefined &&
    unit !== undefined &&
    secondUnit === undefined &&
    totals.length === 1 &&
    total !== undefined
  ) {
    return { lines: bare(new Map([[onlyLine, unit]])), common: total, spare: [] };
  }
  if (prices.length === 1) {
    const last = lines.at(-1);
    if (lines.length <= 1 || last === undefined || only.index > last.index) {
      const named = only.piece !== undefined && lines.length > 1 ? lines.filter((line) => line.kind === only.piece) : [];
      const [line] = named;
      if (line !== undefined && named.length === 1 && only.pieceIndex !== line.index)
        return { lines: bare(new Map([[line, only]])), spare: [] };
      return { lines: bare(none), common: only, spare: [] };
    }
    if (only.piece === undefined && lines.every((line) => only.index < line.index)) return { lines: bare(none), common: only, spare: [] };
  }
  const byIndex = new Map(mentions.filter(counted).map((mention) => [mention.index, mention]));
  if (inRows(lines, units))
    return {
      lines: bare(new Map(lines.map((line, at) => [line, units[at] as Price]))),
      ...(total === undefined ? {} : { common: total }),
      spare: [],
    };
  const placed = namedPrices(lines, units, byIndex);
  const rest = units.filter((price) => ![...placed.values()].includes(price));
  const open = lines.filter((line) => !placed.has(line));
  const lastLine = open.at(-1);
  if (rest.length === open.length && lastLine !== undefined && rest.every((price) => price.index > lastLine.index)) {
    // A list of counts, then a list of prices in the same order.
    open.forEach((line, at) => {
      const price = rest[at];
      if (price !== undefined) placed.set(line, price);
    });
    return { lines: bare(placed), ...(total === undefined ? {} : { common: total }), spare: [] };
  }
  // "£15 x 12 bouts, £30 x 2 corsages": each price stands before its own line.
  const ahead = rest.every((price, at) => price.index < (open[at]?.index ?? -1) && price.index > (open[at - 1]?.index ?? -1));
  if (open.length > 1 && rest.length === open.length && ahead) {
    for (const [at, line] of open.entries()) placed.set(line, rest[at] as Price);
    return { lines: bare(placed), ...(total === undefined ? {} : { common: total }), spare: [] };
  }
  // Two bare prices for one piece: neither is sure.
  if (onlyLine !== undefined && secondLine === undefined && rest.length > 1 && rest.every((price) => price.per === 'unsaid' && !price.at))
    return { lines: bare(placed), spare: rest };
  const spare: Price[] = [];
  for (const price of rest) {
    const before = lines.filter((line) => line.index < price.index).at(-1);
    if (before !== undefined && !placed.has(before)) placed.set(before, price);
    else spare.push(price);
  }
  // Prices left over beside unnamed ones: none of them is sure, so only those that name their kind stay.
  if (spare.length > 0 && lines.length > 1)
    for (const [line, price] of placed) if (price.piece === undefined && rest.includes(price)) placed.delete(line);
  return { lines: bare(placed), ...(total === undefined ? {} : { common: total }), spare };
};
