// Prices that are said to be what each line comes to: "40 bouts 480, 6 corsages 180, those are line totals", "10 bouts £120 not each".

import type { PieceKind } from '../../handbook/pieces.ts';
import { anyIn, type Pattern, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import type { Price } from './price-at.ts';

const those = "(those|these|they|that|it|thats|that's|both|all|prices|figures|amounts|numbers)? (are|is|'re|r)? (all)? (the|for)?";
const totals = '(line totals|totals|line total|total|line prices|totals per line|totals for each line|the lot|<all>)';
const line = '(per|by|for|by the|for the|<each>|each|a) (line|row)';
const eachOne =
  '(each|ea|apiece|per piece|per item|unit prices|unit price|single prices|price each|prices each|each prices|<each> (piece|one|item)?)';
const notEach: readonly Pattern[] = [
  pattern(`${those} ${totals}? (,|-)? (and|so)? not (the)? ${eachOne}`),
  pattern(`not (the)? ${eachOne} (,|-|:)? ${those} ${totals}`),
];
// "that's each not per line": the other way about.
const eachOnly: readonly Pattern[] = [
  pattern(`${eachOne} (,|-)? (and|so)? not (the|a|for the)? (${line}|${totals}|line|row)`),
  pattern(`not (the)? (${line}|line totals|line prices) (,|-|:|but)? ${those} ${eachOne}`),
];
const said: readonly Pattern[] = [
  pattern(
    '(line totals|totals (per|for each|by) (line|kind|type)|(those|these|both|they) (are|r) (all)? totals|for the lot of each|line prices)',
  ),
  pattern(line),
  ...notEach,
];

// "bouts come to $108, corsages $110", "$84 total for the bouts and $198 for the corsages": said of one, and meant of the other.
const ofKinds: readonly Pattern[] = [pattern('<piece> (come|comes|came|coming|add|adds|work|works) (up|out)? (to|at|out at) <amount>')];
const totalFor = pattern('<amount> (<all>|total|all told) for (the|all the|all|all of the) <p:piece>');
// "96 for the bouts all up, 28 each the corsages": said of its own kind alone.
const forTotal = pattern('<amount> (for|on) (the|all the|all|all of the|those|our)? <p:piece> (,|-|\\()? (in)? <a:all>');
// "all in" may speak of the tax, and a bare "all" of what they are: "96 for the bouts, all fresh".
const saysTotal =
  /^(all up|all told|altogether|all together|total|in total|the lot|for the lot|as a lot|in all|all of them|the whole lot)$/;
const ownTotal = (tokens: readonly Token[], price: Price): Price => {
  const match = saysEach(tokens, price) ? undefined : forTotal.at(tokens, price.index, tokens.length);
  const { p: piece, a: all } = match?.kept ?? {};
  if (match === undefined || piece === undefined || !saysTotal.test(all?.text ?? '')) return price;
  return { ...price, end: match.end, per: 'all', piece: piece.means['piece'] as PieceKind, pieceIndex: tokens.indexOf(piece, price.index) };
};
const ofKind = (tokens: readonly Token[], price: Price): Price => {
  const match = totalFor.at(tokens, price.index, tokens.length);
  const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  if (match !== undefined && piece !== undefined) return { ...price, end: match.end, per: 'all', piece, pieceIndex: match.end - 1 };
  return price.piece === undefined || saysEach(tokens, price) ? price : { ...price, per: 'all' };
};
const saysEach = (tokens: readonly Token[], { start, end }: Price): boolean =>
  tokens.slice(start, end).some(({ means }) => means['each'] !== undefined);

const toldOf = (tokens: readonly Token[], prices: readonly Price[]): Price['per'] | undefined => {
  if (anyIn(eachOnly, tokens, 0, tokens.length)) return prices.length > 1 ? 'each' : undefined;
  return anyIn(prices.length > 1 ? said : notEach, tokens, 0, tokens.length) ? 'all' : undefined;
};

/** Bare prices with what is said of them: what a line comes to, and no price of one. */
export const lineTotals = (tokens: readonly Token[], given: readonly Price[]): Price[] => {
  const prices = forTotal.might(tokens) ? given.map((price) => ownTotal(tokens, price)) : given;
  if (prices.length > 1 && (anyIn(ofKinds, tokens, 0, tokens.length) || totalFor.in(tokens, 0, tokens.length) !== undefined))
    return prices.map((price) => ofKind(tokens, price));
  const per = toldOf(tokens, prices);
  return per === undefined ? [...prices] : prices.map((price) => (price.per === 'unsaid' ? { ...price, per } : price));
};

const counted = pattern('<count> (<material>)? <piece>');
/** Where "not each" only says what the prices of an order are, nothing is taken back; it tells where that is said. */
export const basisOfOrder = (tokens: readonly Token[], start: number, end: number): number | undefined => {
  const match = notEach.map((form) => form.in(tokens, start, end)).find((found) => found !== undefined);
  return match !== undefined && counted.in(tokens, start, match.start) !== undefined ? match.start : undefined;
};
