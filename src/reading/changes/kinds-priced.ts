// Whose new price it is where several kinds are named: "corsages go up to R180 each, lapels stay at R75 each" gives each kind the price said behind it.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Mention } from '../order/mention.ts';
import type { Price } from '../order/price-at.ts';
import type { Finding, Reader, Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';

/** The kinds given a new number. */
export const kindsIn = (facts: readonly Unworded[]): ReadonlySet<PieceKind> =>
  new Set(facts.flatMap((fact) => (fact.fact === 'change' && fact.piece !== undefined ? [fact.piece] : [])));

/** The prices, each once for every kind it was said of; those said of none stay as they are. `counted` are the kinds given a new number. */
export const ofKindsAhead = (prices: readonly Price[], mentions: readonly Mention[], counted: ReadonlySet<PieceKind>): readonly Price[] => {
  const isCounted = ({ kind, countIndex }: Mention): boolean => countIndex !== undefined || counted.has(kind);
  if (new Set(mentions.map(({ kind }) => kind)).size < 2) return prices;
  const gaps = prices.map((price, at) => mentions.filter(({ index }) => index >= (prices[at - 1]?.end ?? 0) && index < price.start));
  // "14 bouts at 12 each and 4 corsages at 30 each": each has its own; "12 bouts and 3 corsages at 14 each" may mean both.
  const oneEach = prices.length > 1 && prices.length === mentions.length && gaps.every(({ length }) => length === 1);
  return prices.flatMap((price, at) => {
    const gap = gaps[at] ?? [];
    const nearest = gap.at(-1);
    if (price.piece !== undefined || nearest === undefined || (isCounted(nearest) && !oneEach)) return [price];
    const named = oneEach ? gap : gap.filter((mention) => !isCounted(mention));
    const kinds = new Set<PieceKind>(named.flatMap(({ kind }) => (kind === 'unspecified' ? [] : [kind])));
    return kinds.size === 0 ? [price] : [...kinds].map((piece) => ({ ...price, piece }));
  });
};

// "make the corsages 28 each and the bouts 13": beside a price for one kind, a number behind another may be its price or how many.
const between = /^(are|is|at|to|now|stay|stays|go|goes|down|up|down to|up to|:|=|-|just|only)$/;
const behindKind = (tokens: readonly Token[], { to, piece }: { to?: unknown; piece?: unknown }): boolean =>
  tokens.some((token, at) => {
    if (token.number?.form !== 'plain' || token.number.amount !== String(to) || tokens[at + 1]?.means['piece'] !== undefined) return false;
    let before = at - 1;
    while (between.test(tokens[before]?.text ?? '')) before -= 1;
    return tokens[before]?.means['piece'] === piece;
  });

/** The finding, held where one of its numbers may be a price or a count. */
export const besidePrice = (reader: Reader, finding: Finding): Finding => {
  const { start, end, facts = [] } = finding;
  const tokens = reader.tokens.slice(start, end);
  const changes = facts.flatMap((fact) => (fact.fact === 'change' ? [fact] : []));
  const priced = new Set(
    changes.flatMap(({ what, per, piece }) => (what === 'price' && per === 'each' && piece !== undefined ? [piece] : [])),
  );
  const open = changes.some(
    (change) =>
      change.what === 'count' &&
      change.from === undefined &&
      change.piece !== undefined &&
      !priced.has(change.piece) &&
      behindKind(tokens, change),
  );
  return priced.size > 0 && open ? { start, end, held: true } : finding;
};
