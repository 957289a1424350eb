// "bouts up from 20 to 24", "change the corsages to 6 from 8": so many of a kind become so many. Crowns "from 60 to 65" may be a price, so that is asked.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { currencyFields } from '../order/read-order.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';
import { isRare } from './now-count-or-price.ts';
import { upToReason } from './old-numbers.ts';

const change =
  '(change|update|amend|switch|correct|move|bump|take|cut|drop|raise|lower|reduce|increase|bring|put|changing|adjust|alter|set)';
const changed =
  '(up|down|cut|reduced|dropped|bumped|increased|raised|changed|moved|lowered|lifted|trimmed|amended|corrected|updated|gone|going|go|goes|went|come|adjusted|back)';
const number = '(count|number|numbers|qty|quantity|order|total)';
const span =
  '(<upTo> <b:count> from <a:count>|from <a:count> to <b:count>|to <b:count> from <a:count>|from <r:range>|<b:count> from <a:count>)';
const forms = [
  `${change} (the|our|my)? <p:piece> ${number}? (up|down|back)? ${span}`,
  `(the|our)? <p:piece> ${number}? (:|,|-)? (are|is|have|has|been|now|to be|just|need to|can){0,3} ${changed} (up|down|back)? (now)? ${span}`,
  `(the|our)? <p:piece> ${number}? (now)? ${span}`,
].map((source) => pattern(source));

const money = /^(each|ea|apiece|price|prices|priced|cost|pp|per|total|all)$/;

const valuesOf = (match: Match): readonly [string, string] | undefined => {
  const range = match.kept['r']?.number;
  if (range !== undefined) return range.max === undefined || range.or !== undefined ? undefined : [range.amount, range.max];
  const [from, to] = [match.kept['a']?.number, match.kept['b']?.number];
  return isSingle(from) && isSingle(to) ? [from.amount, to.amount] : undefined;
};

// "bouts changed from 12 or 15"
const saysEither = ({ kept }: Match): boolean => Object.values(kept).some((token) => token?.number?.or !== undefined);

export const countFromTo = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  for (const form of forms) {
    const match = form.in(tokens, part.start, part.end);
    const values = match === undefined ? undefined : valuesOf(match);
    if (match !== undefined && saysEither(match)) return { start: part.start, end: part.end, held: true };
    if (match === undefined || values === undefined) continue;
    const [from, to] = values;
    const piece = match.kept['p']?.means['piece'] as PieceKind | undefined;
    const kind = ofKind(piece);
    const asCount: Unworded = { fact: 'change', what: 'count', to: Number(to), from: Number(from), ...kind };
    const { end } = upToReason(tokens, part, [asCount]);
    const rest = [...tokens.slice(part.start, match.start), ...tokens.slice(match.end, end)];
    const stretch = tokens.slice(part.start, end);
    if (
      rest.some((token) => token.number !== undefined) ||
      stretch.some((token) => token.number?.form === 'money' || token.means['each'] !== undefined || money.test(token.text))
    )
      return undefined;
    if (piece === undefined || !isRare(piece, Math.min(Number(from), Number(to)))) return found(reader, match.start, match.end, [asCount]);
    const words = reader.words(match.start, match.end);
    const asPrice: Unworded = { fact: 'change', what: 'price', to, from, per: 'each', ...kind };
    const choices = [
      { words: soMany(to), facts: [{ ...asCount, words } as Fact] },
      { words: `${to} each`, facts: [{ ...asPrice, words } as Fact] },
    ];
    return { start: match.start, end: match.end, asks: [{ about: 'count', why: 'which number', words, choices }] };
  }
  return undefined;
};

// "price up from 11 to 12": what one costs becomes so much.
const priceForm = pattern(
  `(the|our)? (<p:piece>)? (price|prices|rate|cost) (is|are|has|have|been|now|just){0,2} ${changed} (up|down)? (from <r:range>|from <a:amount> to <b:amount>|to <b:amount> from <a:amount>) (<each>)?`,
);

// "bouts up from 12 to 15 each": no span of prices.
const eachForm = pattern(
  `(the|our)? <p:piece> (price|prices)? (are|is|have|has|been|now|just|gone|went|go|goes|going|come){0,3} (up|down|raised|increased|dropped|cut|reduced|bumped|lowered) (up|down)? (from <r:range>|from <a:amount> to <b:amount>) (<each>)?`,
);
const isPriced = ({ number, means }: Token): boolean => number?.form === 'money' || means['each'] !== undefined;
const staysSo = pattern(
  '(,|-|and|but)? (the)? (count|number|numbers|qty|still) (stays|stay|staying|remains|is|still|the same)? (at)? (<count>)? (of them)?',
);

const ownWords = /^(,|-|:|so|ok|okay|now|and|but|sorry|actually|update|correction|my|her|his|their|your|unit|new|please|pls)$/;

/** A price that is told with the one before it. */
export const priceFromTo = (reader: Reader, part: Part): Finding | undefined => {
  const risen = eachForm.in(reader.tokens, part.start, part.end);
  const ofEach = risen !== undefined && reader.tokens.slice(risen.start, risen.end).some(isPriced) ? risen : undefined;
  const match = ofEach ?? priceForm.in(reader.tokens, part.start, part.end);
  const values = match === undefined ? undefined : valuesOf(match);
  if (match !== undefined && saysEither(match)) return { start: part.start, end: part.end, held: true };
  if (match === undefined || values === undefined) return undefined;
  // "wholesaler prices gone up from 11 to 12": somebody else's.
  if (match.start > part.start && !ownWords.test(reader.tokens[match.start - 1]?.text ?? '')) return undefined;
  const stays = staysSo.at(reader.tokens, match.end, part.end);
  const rest = [...reader.tokens.slice(part.start, match.start), ...reader.tokens.slice(stays?.end ?? match.end, part.end)];
  if (ofEach !== undefined && rest.some((token) => token.number !== undefined)) return { start: part.start, end: part.end, held: true };
  if (rest.some((token) => token.number !== undefined || token.means['ingredient'] !== undefined || token.means['piece'] !== undefined))
    return undefined;
  const piece = match.kept['p']?.means['piece'] as PieceKind | undefined;
  const number = match.kept['r']?.number ?? match.kept['b']?.number;
  const each = reader.tokens.slice(match.start, match.end).some(({ means }) => means['each'] !== undefined);
  const [from, to] = values;
  const kind = ofKind(piece);
  const change: Unworded = {
    fact: 'change',
    what: 'price',
    to,
    from,
    ...(each ? { per: 'each' as const } : {}),
    ...(number === undefined ? {} : currencyFields(number)),
    ...kind,
  };
  return found(reader, match.start, stays?.end ?? match.end, [change]);
};
