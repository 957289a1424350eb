// Pieces ordered and what they cost: "40 lapel pieces at 25", "6 bouts 3 corsages, $12 bouts $28 corsages", "1000 all up for 40".

import { problem } from '../../values/result.ts';
import type { Fact } from '../fact.ts';
import { namedBefore, needed, pairPrices, pricedOnly, withListed } from '../order/apart-counts.ts';
import { settleBundles } from '../order/bundles.ts';
import { certain } from '../order/certain-ones.ts';
import { withoutCheckSums } from '../order/check-sums.ts';
import { countedForWearers } from '../order/counted-for-wearers.ts';
import { countsOfAll } from '../order/counts-of-all.ts';
import { coversOthers } from '../order/covers.ts';
import { coversService } from '../order/covers-delivery.ts';
import { withCurrencySaid } from '../order/currency-said.ts';
import { withDearLines } from '../order/dear-lines.ts';
import { countOrPrice, impossiblePrice, priceOfBox } from '../order/doubtful-prices.ts';
import { hasHappened } from '../order/happened.ts';
import { leftOver } from '../order/left-over.ts';
import { lineTotals } from '../order/line-totals.ts';
import { matchPrices } from '../order/match-prices.ts';
import type { Mention } from '../order/mention.ts';
import { findMentions } from '../order/mentions.ts';
import { leavesOutNamed } from '../order/named-beside.ts';
import { tellsOfOne } from '../order/one-described.ts';
import { hangsOnPrice, ofNoneOrTwo } from '../order/open-prices.ts';
import type { Price } from '../order/price-at.ts';
import { seriesPrices } from '../order/price-series.ts';
import { pricedAgain } from '../order/priced-again.ts';
import { ofKinds, pricedKinds } from '../order/priced-kinds.ts';
import { behindOther, findPrices } from '../order/prices.ts';
import { besideKindPrices, pricesOfOthers } from '../order/prices-of-others.ts';
import { askPricesOrDay } from '../order/prices-or-day.ts';
import { askEachOrAll, countOf, likelyPer, lineFacts, loosely, priceFact } from '../order/read-order.ts';
import { refined } from '../order/refined-mentions.ts';
import { relativePrices } from '../order/relative-prices.ts';
import { equalsTotal, nameFirstAsk, settleTotals } from '../order/settle-prices.ts';
import { withoutSum } from '../order/shares-by-price.ts';
import { isSpare } from '../order/spare-pieces.ts';
import { sumOrTotal } from '../order/sum-or-total.ts';
import { takesAway } from '../order/taken-away.ts';
import { taxedAgain } from '../order/taxed-again.ts';
import { tellsWork } from '../order/tells-work.ts';
import { toldPrices } from '../order/told-prices.ts';
import { withWorkedOut } from '../order/worked-out.ts';
import { pattern } from '../pattern.ts';
import { type Finding, type Phrase, type Reader, takenBy } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import { namesTax, tellsOfTax } from '../text/of-tax.ts';
import { inOtherMatter } from '../text/other-matters.ts';

// "we quoted 18 each last year" is another job's price.
const lastTime = pattern('(last|previous) (year|time|season|month|week|wedding|event|one|job)');

const takes = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): number[] => {
  const tokens = new Set<number>();
  for (const mention of mentions) {
    // "40 bouts for sat, 24 fresh the rest dried": the day between them is read.
    for (let index = mention.start; index < mention.end; index++)
      if (index !== mention.materialIndex && reader.free(index) && !tellsOfTax(reader.tokens[index])) tokens.add(index);
    if (mention.apart === true && mention.countIndex !== undefined) tokens.add(mention.countIndex);
  }
  for (const price of prices) {
    // What the flowers are is read by its own phrase.
    for (let index = price.start; index < price.end; index++) if (reader.tokens[index]?.means['material'] === undefined) tokens.add(index);
    if (price.pieceIndex !== undefined) tokens.add(price.pieceIndex);
    for (const index of price.told ?? []) if (reader.free(index)) tokens.add(index);
  }
  return [...tokens].sort((a, b) => a - b);
};

const find = (reader: Reader): Finding[] => {
  const doubtful = impossiblePrice(reader) ?? priceOfBox(reader) ?? hangsOnPrice(reader) ?? countOrPrice(reader);
  if (doubtful !== undefined) return [doubtful];
  const named = findMentions(reader);
  const again = pricedAgain(
    reader,
    refined(named).filter((mention) => !isSpare(reader.tokens, mention.index) && !tellsOfOne(reader.tokens, mention)),
  );
  const all = again.mentions;
  const counts = new Set(all.flatMap((mention) => (mention.countIndex === undefined ? [] : [mention.countIndex])));
  const ends = new Set(all.filter((mention) => mention.countIndex !== undefined).flatMap((mention) => [mention.last, mention.end - 1]));
  const series = seriesPrices(reader, all);
  const told = [...again.prices, ...toldPrices(reader, all, again.prices)];
  const numbers = findPrices(reader, counts, ends).filter((price) => !told.some((each) => each.index === price.index));
  const whole = countsOfAll(reader, named, numbers);
  if (whole.doubtful) return [{ start: all[0]?.start ?? 0, end: all.at(-1)?.end ?? reader.tokens.length, held: true }];
  for (const index of whole.tokens) counts.add(index);
  const taxed = taxedAgain(reader, counts, numbers);
  const saidAgain = taxed.flatMap(({ tokens }) => tokens);
  const plain = numbers
    .filter((price) => !whole.prices.includes(price) && !counts.has(price.index) && !saidAgain.includes(price.index))
    .map((price) => taxed.find((other) => other.price.index === price.index)?.price ?? price);
  const relative = relativePrices(reader, all, [...told, ...plain]);
  const open = relative.find(({ price }) => price === undefined);
  if (open !== undefined) return [{ start: all[0]?.start ?? open.start, end: open.end, held: true }];
  const found = [
    ...plain.filter(({ index }) => !relative.some(({ start, end }) => index >= start && index < end)),
    ...relative.flatMap(({ price }) => price ?? []),
  ].sort((a, b) => a.index - b.index);
  const said = series.length > 0 ? series : withListed(reader, all, counts, [...told, ...found, ...pairPrices(reader, all)]);
  const kindPrices = pricesOfOthers(reader, all, said);
  const ownPrices = withCurrencySaid(reader, besideKindPrices(all, said, kindPrices));
  const { prices, sums: checked } = withoutCheckSums(
    reader,
    all,
    withWorkedOut(reader, all, lineTotals(reader.tokens, namedBefore(reader, all, ownPrices))),
  );
  const surely = certain(reader, all, prices);
  const shared = withoutSum(surely, prices);
  const sums = surely.filter((mention) => !shared.includes(mention));
  const mentions = needed(reader, pricedOnly(reader, shared, prices), prices);
  // "finished the last 6 crowns" orders nothing, whatever else it says.
  if (prices.every((price) => price.number.form === 'plain' && !price.at) && tellsWork(reader)) return [];
  const ordered = mentions.filter((mention) => mention.countIndex !== undefined);
  if (ordered.length === 0 && prices.length === 0) return [];
  if (ordered.length === 0 && ofNoneOrTwo(reader, prices)) return [];
  const then = ordered.length > 0 ? undefined : lastTime.in(reader.tokens, 0, reader.tokens.length);
  if (then !== undefined && !inOtherMatter(reader.message, then.start)) return [];
  // "her mum just rang strike 6 combs" takes some away, from what is not said; "15 lapels down" may be made or be fewer.
  if (ordered.some((mention) => takesAway(reader, mention) || hasHappened(reader, mention))) return [];
  const short = ordered.find((mention) => leavesOutNamed(reader, mention));
  if (short !== undefined) return [{ start: short.start, end: reader.tokens.length, takes: takes(reader, ordered, prices), held: true }];
  const none = ordered.find((mention) => countOf(mention).count === 0);
  if (none !== undefined)
    return [{ start: none.start, end: none.end, problems: [problem('count-not-positive', { words: reader.words(none.start, none.end) })] }];
  const pieces = ordered.reduce((sum, mention) => sum + countOf(mention).count, 0);
  const ambiguous = nameFirstAsk(reader, mentions, prices);
  if (ambiguous !== undefined) return [ambiguous];
  const kinds = pricedKinds(mentions, prices);
  if (kinds !== undefined) {
    const read = ofKinds(reader, kinds);
    const taken = new Set(takenBy(read));
    return [leftOver(reader, taken, []) ? { start: read.start, end: read.end, takes: [...taken], held: true } : read];
  }
  const placement = matchPrices(mentions, equalsTotal(reader, prices, counts));
  const matched = settleBundles(reader, settleTotals(reader, withDearLines(reader, placement), pieces));
  const doubt = prices.length === 0 ? askPricesOrDay(reader, mentions) : undefined;
  const counted = reader.facts.some(({ fact }) => fact === 'pieces');
  const coversOther = coversOthers(reader.tokens, counted);
  const facts: Fact[] = [...lineFacts(reader, matched), ...kindPrices.map(({ fact }) => fact)];
  const asks: Ask[] = [matched.ask ?? [], doubt?.ask ?? []].flat();
  const read: Price[] = matched.lines.flatMap((line) => (line.price === undefined ? [] : [line.price]));
  const common = matched.common;
  if (matched.ask !== undefined || matched.lines.length === 1)
    read.push(
      ...matched.spare.filter((price) => price.per === 'all'),
      ...(matched.ask === undefined ? [] : prices.filter((price) => !read.includes(price))),
    );
  // "two casket sprays at 185 each": the price of other work alone.
  if (mentions.length === 0 && coversOther && common?.per === 'each') return [];
  const worn = ordered.length > 0 || mentions.length > 0 ? 0 : countedForWearers(reader, common);
  const trade =
    ordered.length > 0 ||
    mentions.length > 0 ||
    worn > 0 ||
    (common !== undefined &&
      (common.per === 'each' ||
        (counted && common.per === 'all') ||
        (common.kind !== undefined && (common.kind !== 'from' || common.number.form === 'money')) ||
        taxNear(reader)));
  if (common !== undefined && trade) {
    const service = coversService(reader.tokens, common, prices.length === 1);
    const per = likelyPer(
      reader,
      mentions.length === 1 ? { ...common, named: true } : common,
      pieces + worn,
      service || (coversOther && !behindOther(reader, common)),
      loosely(reader, common),
    );
    if (per === 'unsaid' && (ordered.length > 0 || worn > 0)) {
      asks.push(askEachOrAll(reader, common));
      read.push(common);
    } else if (per !== 'unsaid') {
      // "45 each for the crowns" where none are counted
      const ofKind = per === 'each' && ordered.length === 0 && common.piece !== undefined && common.piece !== 'unspecified';
      const own = ofKind ? { piece: common.piece } : {};
      facts.push({ ...priceFact(common, per, coversOther || service), ...own, words: reader.words(common.start, common.end) } as Fact);
      read.push(common);
    }
  }
  if (facts.length === 0 && asks.length === 0) return [];
  const apart = sumOrTotal(facts);
  if (apart !== undefined) asks.push(apart.ask);
  const bad = ordered.find(
    (mention) =>
      reader.tokens[mention.start - 1]?.text === '-' &&
      reader.tokens[mention.start]?.glued === true &&
      mention.count !== undefined &&
      reader.tokens[mention.start - 1]?.glued !== true,
  );
  const problems = bad === undefined ? [] : [problem('count-not-positive', { words: reader.words(bad.start - 1, bad.end) })];
  const tokens = [
    ...takes(reader, [...ordered, ...sums], [...read, ...checked, ...whole.prices, ...kindPrices.map(({ price }) => price)]),
    ...whole.tokens,
    ...saidAgain,
    ...(doubt === undefined ? [] : [doubt.index]),
  ];
  const [first = 0] = tokens;
  // A price that was placed and then left open is no loose number.
  const placed = new Set([...tokens, ...placement.lines.flatMap(({ price }) => price?.index ?? [])]);
  if (
    asks.length === 0 &&
    problems.length === 0 &&
    leftOver(
      reader,
      placed,
      ordered.map((mention) => countOf(mention).count),
    )
  )
    return [{ start: first, end: (tokens.at(-1) ?? first) + 1, takes: tokens, held: true }];
  return [{ start: first, end: (tokens.at(-1) ?? first) + 1, takes: tokens, facts: apart?.facts ?? facts, asks, problems }];
};

const taxNear = (reader: Reader): boolean => reader.tokens.some(namesTax);

export const order: Phrase = {
  name: 'order',
  examples: ['40 lapel pieces at 25', '8 buttonholes at 18, 2 wrist corsages at 42', '1000 all up for 40 lapel pieces'],
  find,
};
