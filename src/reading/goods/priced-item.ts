// One line of a price list: the goods named in a stretch, what they cost and what they come in.

import type { FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import type { Stretch } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import { isNumber, isSingle, type NumberRead, type Token } from '../text/token.ts';
import { eachInPacks, type OneOrPack } from './each-in-packs.ts';
import { fromSeller } from './from-seller.ts';
import { isOpenSize } from './glued-sizes.ts';
import { itemExtras } from './item-extras.ts';
import { knowsItem } from './item-name.ts';
import { besideNames } from './name-edges.ts';
import { isSomeones } from './no-goods.ts';
import { findPack, type PackSize } from './pack-size.ts';
import { isPrice, pricedEitherWay } from './price-at.ts';
import { byHowMuch, changeBeside, changeWord, taken, toldOfThen } from './price-changes.ts';
import { type Priced, priceOfSeveral } from './price-of-several.ts';
import { sellersVan } from './sellers-van.ts';
import { namesSaid } from './several-goods.ts';
import { sizeCell } from './size-cell.ts';
import { withoutStemLength } from './stem-length.ts';

const sellerWord = /^(wholesale|wholesaler|wholesalers|supplier|market|auction|they|has|have|got|doing|sells|selling|selling at|charging)$/;
// "8-10 stem bunch 6.50"
const stemsOpen = pattern('<range> (-)? (stem|stems|stm|st|head|heads|pc|pcs|ct|count) <pack>');
const perStem = pattern('(a|per|/|p) (stem|stm)');
const dryingForm = pattern('(,)? (takes)? <d:duration> (to dry|drying|dry|drying time)');
const least = pattern('(,)? (min|minimum|min order|moq|minimum order) (of|order|qty|is)? (of)? <n:count> (<pack>)?');
const freeForm = pattern('(free|foraged|no cost|nothing)');

// "ten roses for £12": so many for the price.
const together = pattern('<n:count> (<word>){0,2} <ingredient> (for|cost|costs|=|are|is|come to)? <p:money>');
const soldTogether = (tokens: readonly Token[], start: number, end: number): number | undefined => {
  const match = together.in(tokens, start, end);
  const [size, price] = [Number(match?.kept['n']?.number?.amount), Number(match?.kept['p']?.number?.amount)];
  if (match?.end !== end) return undefined;
  // "10 roses $18" can be no price of one, "10 roses $2" can.
  return tokens[match.end - 2]?.means['ingredient'] !== undefined && price < size ? undefined : size;
};

// "gone up 2 quid to 12" tells by how much, not what it was.
const muchLess = (number: NumberRead): boolean => Number(number.amount) * 2.5 < Number(number.max ?? number.amount);

const isPriced = ({ number, text }: Token): boolean => number?.form === 'money' || /^\d+[.,]\d{2}$/.test(text);
// "from £5-5.50": from the one to the other, or what they cost at the least; "gone up to £9-10" is the new price alone.
const fromEither = (tokens: readonly Token[], price: Token | undefined, start: number): boolean => {
  const before = price === undefined ? undefined : tokens[tokens.indexOf(price, start) - 1];
  return before?.means['upTo'] !== undefined || before?.text === 'to' || (before?.text === 'from' && / - /.test(price?.text ?? ''));
};

// Whether two prices are said and neither is an old one.
const pricedTwice = (tokens: readonly Token[]): boolean =>
  tokens.filter(isPriced).length > 1 && !tokens.some(({ text }) => /^(was|now|from|up|down)$/.test(text));

/** The goods of this stretch at their price; none where it gives none. `common` is what all of a list come in, `upTo` where the next begins. */
export const readItem = (reader: Reader, { start, end }: Stretch, common: PackSize, upTo: number): readonly (Priced & OneOrPack)[] => {
  const { tokens, context } = reader;
  const stretch = tokens.slice(start, end);
  const known = knowsItem(stretch, context.items);
  const extra = itemExtras(tokens, start, upTo);
  const pack = withoutStemLength(findPack(tokens, start, end), stretch);
  const used = new Set([...pack.used, ...extra.used]);
  const mark = (match: Match | undefined): void => {
    for (let index = match?.start ?? 0; index < (match?.end ?? 0); index++) used.add(index);
  };
  let basis: FactOf<'tax'>['basis'];
  let taxName: string | undefined;
  for (let index = start; index < end; index++) {
    const tax = taxAt(reader, index);
    if (tax === undefined) continue;
    // "£4.80 ex £5.76 inc", "£3.60 (£3 + vat)": the price read is the first, and so is its tax.
    if (!pricedTwice(tokens.slice(start, index))) {
      basis = tax.fact.basis;
      taxName = tax.fact.name;
    }
    mark(tax.match);
    index = tax.match.end - 1;
  }
  const change = changeBeside(tokens, start, end, [...used]);
  const drying = dryingForm.in(tokens, start, end);
  mark(drying);
  const atLeast = least.in(tokens, start, end);
  mark(atLeast);
  const van = sellersVan(tokens, start, end);
  mark(van);
  const seller = fromSeller(tokens, start, end);
  mark(seller);
  const packed = pack.per !== undefined || pack.size !== undefined || common.per !== undefined;
  const rises = byHowMuch(
    tokens,
    start,
    Math.min(...[van, seller].map((from) => (from !== undefined && from.start > start ? from.start : end))),
  ); // "£1 a stem off the van"
  const much = rises?.kept['n']?.number;
  if (change === undefined && rises !== undefined && (much?.max === undefined || much.or !== undefined)) return [];
  if (stretch.some((_, at) => isOpenSize(tokens, start + at)) || stemsOpen.in(tokens, start, end) !== undefined) return [];
  let price: Token | undefined;
  let from: string | undefined;
  if (change !== undefined) {
    price = change.kept['t'];
    const old = change.kept['f'] ?? change.kept['r'];
    // "bunch of 5 now $13": what it holds is no old price.
    // "up 50c to 6.50" tells by how much too.
    const byHow =
      change.kept['r'] !== undefined &&
      !/^(from|was)$/.test(tokens[tokens.indexOf(change.kept['r'], start) - 1]?.text ?? '') &&
      Number(change.kept['r'].number?.amount) * 2.5 < Number(price?.number?.amount);
    if (isSingle(old?.number) && !byHow && !pack.used.includes(tokens.indexOf(old as Token, start))) from = old?.number?.amount;
    for (const index of change.said) used.add(index);
    // "was 8.80 for 10, now 9.90 for 12": the packs differ.
    const other = (token: Token, at: number): boolean =>
      token.number?.form === 'plain' && !used.has(start + at) && /^(for|of)$/.test(tokens[start + at - 1]?.text ?? '');
    if (stretch.some(other) && !stretch.some((token, at) => other(token, at) && Number(token.number?.amount) === pack.size)) return [];
  } else {
    const at = placesIn({ start, end }).filter(
      (index) => !used.has(index) && isPrice(reader, index, packed, known) && toldOfThen.at(tokens, index, end) === undefined,
    );
    const chosen = at.find((index) => isNumber(tokens[index], 'money')) ?? at[0];
    if (chosen !== undefined) {
      price = tokens[chosen];
      used.add(chosen);
      const after = tokens[chosen + 1];
      if (after?.means['each'] !== undefined) used.add(chosen + 1);
    }
  }
  const free = price === undefined ? freeForm.in(tokens, start, end) : undefined;
  if (price === undefined && !(free !== undefined && known && tokens.slice(start, end).some((token) => token.text === 'free'))) return [];
  // "10 or 12 stem bunch £5", "£5 for 10-12": what one holds is not said.
  const isOpen = (token: Token, at: number): boolean =>
    token.number?.form === 'plain' && token !== price && !used.has(start + at) && !isSingle(token.number);
  if (stretch.some(isOpen)) return [];
  // "statice bu 12 8.60", "gyp, 10, 6.50": in what it comes is not known, and so not what the price is for.
  const cell = sizeCell(tokens, start, end);
  const inCell = cell !== undefined && tokens[cell.index] !== price && !used.has(cell.index) ? cell : undefined;
  if (inCell !== undefined && inCell.size === undefined) return [];
  const rise =
    change === undefined &&
    price?.number?.max !== undefined &&
    price.number.or === undefined &&
    !fromEither(tokens, price, start) &&
    stretch.some((token, at) => changeWord.test(token.text) && !taken.test(stretch[at - 1]?.text ?? '')) &&
    !stretch.some((token) => /^(anywhere|somewhere|between|ranging|ranges|about|around|likely|could|might|maybe)$/.test(token.text));
  const each = stretch.some(
    (token, at) => token.means['each'] !== undefined && /^(each|ea|apiece)$/.test(token.text) && used.has(start + at),
  );
  const nameTokens = stretch.flatMap((token, at) =>
    !used.has(start + at) &&
    token.kind === 'word' &&
    !changeWord.test(token.text) &&
    !sellerWord.test(token.text) &&
    !besideNames(token) &&
    !(free !== undefined && token.text === 'free') &&
    token.number === undefined
      ? [{ ...token, at: start + at }]
      : [],
  );
  // "2.5 a stem, 10 stems per bunch": the price is a stem's, whatever they come in.
  const stemPrice = price === undefined ? undefined : perStem.at(tokens, tokens.indexOf(price, start) + 1, end);
  mark(stemPrice);
  const inPacks = price === undefined || pack.quantity !== undefined ? undefined : eachInPacks(tokens, tokens.indexOf(price, start), end);
  for (const index of inPacks?.used ?? []) used.add(index);
  const names = namesSaid(nameTokens, tokens, context.items);
  const counting = (token: Token): boolean => token.means['each'] !== undefined || token.means['all'] !== undefined;
  if (pricedEitherWay(tokens, start, end)) return [];
  const unheard = !knowsItem(nameTokens, context.items);
  if (unheard && isSomeones(reader, start, end, nameTokens[0]?.at ?? 0)) return [];
  if (names.length === 0 || !(known || packed) || nameTokens.every(counting)) return [];
  const number = price?.number;
  // "was 6.50 a roll, grower doing it for 5": the new price is no size.
  const size =
    change !== undefined && price !== undefined && pack.used.includes(tokens.indexOf(price, start))
      ? undefined
      : (inPacks?.size ?? pack.size ?? inCell?.size);
  const ofOne = inPacks !== undefined ? !inPacks.open : stemPrice !== undefined && pack.size !== undefined && pack.unit === undefined;
  const several = pack.size === undefined && pack.per === undefined ? soldTogether(tokens, start, end) : undefined;
  const perOf = pack.per === undefined ? (each ? { per: 'each' } : common.per === undefined ? {} : { per: common.per }) : { per: pack.per };
  const many = [number?.amount, atLeast?.kept['n']?.number?.amount].includes(String(pack.quantity)) ? undefined : pack.quantity;
  return names.map((item) => ({
    fact: 'pack',
    item,
    price: number === undefined ? '0' : rise ? (number.max ?? number.amount) : number.amount,
    ...(number?.max !== undefined && !rise ? { priceMax: number.max } : {}),
    ...(size === undefined
      ? common.size === undefined
        ? several === undefined
          ? {}
          : { size: several }
        : { size: common.size }
      : { size }),
    ...(pack.unit === undefined ? {} : { unit: pack.unit }),
    ...(ofOne ? { per: 'stem' } : perOf),
    ...(inPacks?.open === true && price !== undefined
      ? { oneOrPack: reader.words(tokens.indexOf(price, start), tokens.indexOf(price, start) + 1) }
      : {}),
    ...(number?.currency === undefined ? {} : { currency: number.currency }),
    ...(number?.symbol === undefined ? {} : { symbol: number.symbol }),
    ...(basis === undefined || basis === 'none' ? {} : { basis }),
    ...(taxName === undefined ? {} : { taxName }),
    ...(from === undefined ? (rise && number !== undefined && !muchLess(number) ? { from: number.amount } : {}) : { from }),
    ...(many === undefined || price === undefined ? {} : { quantity: many, ...priceOfSeveral(reader, price, many) }),
    ...(drying?.kept['d']?.number?.unit === 'day'
      ? { dryingDays: Number(drying.kept['d'].number.max ?? drying.kept['d'].number.amount) }
      : {}),
    ...extra.extras,
    words: reader.words(start, end),
  }));
};
