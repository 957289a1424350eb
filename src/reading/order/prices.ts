// Which numbers of a message are prices of its pieces. Other people's prices, time and wages are left alone.

import { isBeforeDay } from '../dates/hour-or-price.ts';
import { isHourItBegins, isHourOfOccasion } from '../dates/hours-no-prices.ts';
import { pattern } from '../pattern.ts';
import { everything, type Reader } from '../phrase.ts';
import { onClockLine } from '../text/clock-lines.ts';
import { isCount, type Token } from '../text/token.ts';
import { isOtherThings } from '../words/other-things.ts';
import { sundryHeads } from '../words/piece-words.ts';
import { isBeforeWholeDay } from './before-whole-day.ts';
import { isByPrice } from './by-price.ts';
import { isForStems, isGuestCount } from './guests-or-stems.ts';
import { lineSum } from './line-sums.ts';
import { pricedInRow } from './name-first.ts';
import { costsOthers, isHourToldSo, isSumOfFew } from './no-prices.ts';
import { type Price, priceAt } from './price-at.ts';
import { pricesByMaterial } from './prices-by-material.ts';
import { rowWithOthers } from './row-with-others.ts';

// "labour 8 each", "delivery $20", "deposit 200": the price of something else.
const notOfPieces =
  /^(stems?|flowers|ribbon|ribbons|pins|labour|labor|wage|wages|delivery|postage|setup|sundries|sundry|deposit|wholesale|courier|petrol|parking|bunch|tip|shipping|install|travel|fuel|rent)$/;
const boughtIn = pattern('(box|pack|pk|packet|bag|carton) of <piece>');
// "roses came to £26 each": what the flowers cost.
const ofGoods = pattern('<ingredient> (came|come|comes|cost|costs|worked|works|ended|went|were|was) (out|up|in|to|at|about|around){0,2}');
const ofElse = (reader: Reader, start: number): boolean => {
  const near = reader.tokens[start - 1];
  const at = near !== undefined && /^(is|are|at|:|of|-|=|was)$/.test(near.text) ? start - 2 : start - 1;
  const text = reader.tokens[at]?.text ?? '';
  // "box of hair clips £4": bought by the box
  if (reader.tokens[at]?.means['piece'] !== undefined && boughtIn.at(reader.tokens, at - 2, at + 1) !== undefined) return true;
  for (const back of [2, 3, 4, 5]) if (ofGoods.at(reader.tokens, start - back, start)?.end === start) return true;
  // "whole order total R3200"
  if (reader.tokens[at]?.means['all'] !== undefined) return false;
  return notOfPieces.test(text) || (/^\S+ \S+$/.test(text) && sundryHeads.has(text.replace(/^.* /, ''))); // "corsage box £4"
};

// "bump everything by a pound" tells by how much, not to what.
const byHowMuch = ({ tokens }: Reader, index: number): boolean =>
  (tokens[index - 1]?.text === 'by' && tokens[index - 2]?.number === undefined && !isByPrice(tokens, index)) ||
  thanOthers.at(tokens, index + 1, tokens.length) !== undefined ||
  // "count stays at 20"
  (/^(at|stays|stay|remains|still|is)$/.test(tokens[index - 1]?.text ?? '') && howMany.at(tokens, index - 3, index)?.end === index);
// "£2 more than the others"
const thanOthers = pattern(
  '(<each>)? (more|less|dearer|cheaper|extra|higher|lower|over|under|above|below) (<each>)? (than|the (others|rest))',
);
const howMany = pattern('(count|number|numbers|qty|quantity) (stays|stay|staying|remains|still|is) (at)?');

// "12 gift tags, 3 each", "combs blanks 3 each": things nobody wears.
const ofThings = ({ tokens }: Reader, { start, per }: Price): boolean => {
  const at = /^(,|is|are|at|:|-|=)$/.test(tokens[start - 1]?.text ?? '') ? start - 2 : start - 1;
  const [thing, before] = [tokens[at], tokens[at - 1]];
  if (thing === undefined || per !== 'each') return false;
  if (sundryHeads.has(thing.text) && !/^(order|recipe|workshop|class)$/.test(thing.text) && before?.means['piece'] !== undefined)
    return true;
  const { ingredient, other, everyday, piece } = thing.means;
  const things = isOtherThings(thing) || other !== undefined || everyday !== undefined || (ingredient !== undefined && piece === undefined);
  return things && before?.means['piece'] === undefined && (isCount(before) || isCount(tokens[at - 2]));
};

// "20 bouts for the arch team" and "for 2 tables" say where pieces go.
const whereTo = /^(for|at|on|per|with|of|to|from|by|under|in)$/;
/** "bridal bouquet £250", "table centres 45 each", "bouquets 3 at 150": a price right behind other flower work. */
export const behindOther = ({ tokens }: Reader, price: Price): boolean => {
  const near = tokens[price.start - 1];
  let at = near !== undefined && /^(is|are|at|:|of|-|=|was|for|,)$/.test(near.text) ? price.start - 2 : price.start - 1;
  if (price.at && isCount(tokens[at])) at -= /^[x:-]$/.test(tokens[at - 1]?.text ?? '') ? 2 : 1;
  if (tokens[at]?.means['other'] === undefined || price.per === 'all') return false;
  if (price.per === 'unsaid' && !price.at) return true;
  if (price.piece !== undefined) return false;
  let first = at;
  while (tokens[first - 1] !== undefined && at - first < 3 && !whereTo.test(tokens[first]?.text ?? '') && tokens[first]?.text !== ',')
    first -= 1;
  return !whereTo.test(tokens[first]?.text ?? '');
};
// "6 bouts and a bouquet £250" may price them all.
const listed = (reader: Reader, price: Price): boolean =>
  price.per === 'unsaid' &&
  !price.at &&
  reader.tokens.slice(Math.max(0, price.start - 3), price.start - 1).some((token) => /^(and|&|\+|n|plus|with)$/.test(token.text));

// A number without a unit is a price only where the words say so: each, all, at, budget, or a tax word right behind it.
const taxBehind = pattern('(<included>|(plus|\\+) (the)? <tax>|<tax>|(ex|excl|excluding|before|net|exclusive) )');
const isPrice = (reader: Reader, price: Price): boolean => {
  if (price.number.form === 'money') return true;
  if (price.per !== 'unsaid' || price.at || price.kind !== undefined || price.forCount === true) return true;
  // "crowns 35 each x4 inc gst" counts four.
  if (reader.tokens[price.index - 1]?.text === 'x') return false;
  return taxBehind.at(reader.tokens, price.end, reader.tokens.length) !== undefined;
};

// "600 per day" and "25 an hour" price time, not pieces.
const perTime = pattern(
  '(per|a|an|/|p) (/)? (day|hour|hr|h|week|wk|month|year|km|mile|night|shift|kg|m|metre|bunch|box|pack|pk|packet|bag|carton|roll|stem|wrap|board|tray|crate|table|row|van|couple|person a day)',
);

const leastPrice = 5;
const sharedOut = pattern('<count> <material> (,|and|&|+|n)? (<count> <material>|(the)? (rest|others|remainder|other ones))');

// "4 corsages 28 and a crown 60", "mum's corsage 35 and nan's corsage 30"
const anotherPiece = pattern('and (a|an|(the|her|his)? <owner>) <word>{0,2} <piece>');
// "12 bouts 18 and corsages 45 inc"
const kindAtPrice = pattern('<piece> (at|@|:|-)? <amount>');
// "moms corsage is 38": of one piece it tells the price; "bouts is 38" may count them.
const tellsOne = ({ tokens }: Reader, index: number): boolean =>
  /^(is|costs|=)$/.test(tokens[index - 1]?.text ?? '') &&
  tokens[index - 2]?.means['piece'] !== undefined &&
  !/s$/.test(tokens[index - 2]?.text ?? 's') &&
  Number(tokens[index]?.number?.amount) >= 5;
// "100 lapels, 8.50": a number right behind a counted piece can only be its price.
const behindPiece = (reader: Reader, index: number, pieceEnds: ReadonlySet<number>, listed: boolean): boolean => {
  let at = tellsOne(reader, index) ? index - 2 : index - 1;
  while (
    at > 0 &&
    index - at <= 4 &&
    (reader.tokens[at]?.text === ',' ||
      reader.tokens[at]?.text === '-' ||
      reader.tokens[at]?.means['material'] !== undefined ||
      /^(lads|guys|pls|please|folks)$/.test(reader.tokens[at]?.text ?? ''))
  )
    at -= 1;
  const next = reader.tokens[index + 1];
  // "20 bouts, 12 dried 8 fresh" shares them out.
  const ofMaterial = next?.means['material'] !== undefined;
  const few = isCount(reader.tokens[index]) && Number(reader.tokens[index]?.number?.amount) < leastPrice; // "12 bouts, 2 dried"
  const shared = ofMaterial && (few || sharedOut.at(reader.tokens, index, reader.tokens.length) !== undefined);
  // "9 bouts (12.50)"
  if (reader.tokens[at]?.text === '(' && next?.text === ')' && !isCount(reader.tokens[index])) return pieceEnds.has(at - 1);
  return (
    !shared &&
    pieceEnds.has(at) &&
    (next === undefined ||
      next.kind !== 'word' ||
      isBeforeWholeDay(reader, index) ||
      (next.text === 'and' &&
        (isCount(reader.tokens[index + 2]) ||
          kindAtPrice.at(reader.tokens, index + 2, reader.tokens.length) !== undefined ||
          anotherPiece.at(reader.tokens, index + 1, reader.tokens.length) !== undefined)) ||
      // "1 corsage 45 and 1 bout 20 for the formal": priced like the kind before it.
      (next.text === 'for' &&
        listed &&
        Number(reader.tokens[index]?.number?.amount) >= 5 &&
        reader.tokens[index + 2]?.means['role'] === undefined) ||
      ['material', 'included', 'onTop', 'taxName', 'taxWord', 'all', 'each'].some((tag) => next.means[tag] !== undefined))
  );
};

const isHour = (reader: Reader, index: number): boolean =>
  isHourOfOccasion(reader.tokens, index) || isHourItBegins(reader.tokens, index) || isBeforeDay(reader, index);
// "17:30 canapes for 120": on a line of a run sheet only money is a price.
const isOfSheet = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.number?.form === 'plain' && onClockLine(tokens, index);

/** Every price that no earlier phrase has read. `counts` are the numbers already taken as counts. */
export const findPrices = (
  reader: Reader,
  counts: ReadonlySet<number>,
  pieceEnds: ReadonlySet<number> = new Set(),
  { start, end } = everything(reader),
): Price[] => {
  const prices: Price[] = [];
  const row = pricedInRow(reader);
  const inRow = (index: number): boolean => rowWithOthers(reader.tokens)?.places.includes(index) === true;
  for (let index = start; index < end; index++) {
    if (counts.has(index) || isHour(reader, index)) continue;
    if ([isHourToldSo, costsOthers, isSumOfFew, isOfSheet, isGuestCount, isForStems].some((none) => none(reader.tokens, index))) continue;
    const price = pricesByMaterial(reader, index) ?? priceAt(reader, index);
    if (
      price === undefined ||
      byHowMuch(reader, index) ||
      (!inRow(index) && ofElse(reader, price.start)) ||
      perTime.at(reader.tokens, index + 1, reader.tokens.length) !== undefined
    )
      continue;
    if ((behindOther(reader, price) && !listed(reader, price) && !inRow(index)) || ofThings(reader, price)) continue;
    const sum = price.per === 'all' ? undefined : lineSum(reader.tokens, counts, index, price.end);
    const comesTo = sum === undefined ? undefined : priceAt(reader, sum.at);
    if (!(isPrice(reader, price) || row || comesTo !== undefined || behindPiece(reader, index, pieceEnds, prices.length > 0))) continue;
    prices.push(price);
    if (sum !== undefined && comesTo !== undefined) prices.push({ ...comesTo, start: sum.at, end: sum.end, per: 'all' });
    index = Math.max(index, (sum?.end ?? price.end) - 1); // "45 for one": the one is no price of its own
  }
  return prices;
};
