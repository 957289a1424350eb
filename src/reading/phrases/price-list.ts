// What the wholesaler charges: "statice £4.80 wrap of 10 +vat", "strawflowers gone up, 12 to 13.50 a bunch", "pearl head pins box/144 $9.99".

import type { FactOf } from '../fact.ts';
import { itemExtras } from '../goods/item-extras.ts';
import { itemName, knowsItem, namedRun } from '../goods/item-name.ts';
import { findPack, type PackSize } from '../goods/pack-size.ts';
import { isPrice, pricedEitherWay } from '../goods/price-at.ts';
import { type Stretch, stretches } from '../goods/price-stretches.ts';
import { apart, shareTax } from '../goods/several-goods.ts';
import { otherThings } from '../held/more-signs.ts';
import { firstIn, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { isNumber, type Token } from '../text/token.ts';
import { sundryHeads } from '../words/piece-words.ts';
import { taxAt } from './tax-basis.ts';

const changeForms = [
  pattern('(down|up|dropped|gone|went|back|now|risen|cut|come){1,3} to <t:amount> (a|per|/)? (<pack>)? (from|was) <f:amount>'),
  pattern('<t:amount> (a|per|/|the|an)? <pack> (,|-|\\(|now)? (was|used to be|up from|down from|from|not|instead of|were) <f:amount>'),
  pattern(
    '(gone|went|going|up|down|from|rise|rises|jumped|dropped|was|risen|increased|moved|come|crept) (up|down)? (from|,|:)? <r:amount> (to|now|,) (now)? <t:amount>',
  ),
  pattern("was <f:amount> (,|-|but)? (is|it's|its)? now <t:amount>"),
  pattern('now <t:amount> (,|-|\\()? (was|used to be|up from|down from|from|not|instead of|were) <f:amount>'),
  pattern('<t:amount> (,|-|\\()? (was|used to be|up from|down from|not|instead of|were) <f:amount>'),
  pattern('<r:amount> ((up|down|gone up|now) to|now) <t:amount>'),
];
const changeWord = /^(gone|went|going|up|down|from|jumped|dropped|rise|rises|risen|increased|was|moved|crept|come|upto|up ?to)$/;
const seller = /^(wholesale|wholesaler|wholesalers|supplier|market|auction|they|has|have|got|doing|sells|selling|selling at|charging)$/;
const perStem = pattern('(a|per|/|p) (stem|stm)');
const dryingForm = pattern('(,)? (takes)? <d:duration> (to dry|drying|dry|drying time)');
const least = pattern('(,)? (min|minimum|min order|moq|minimum order) (of|order|qty|is)? (of)? <n:count> (<pack>)?');
const recipeWords = pattern('(each one|each piece|per <piece>|recipe|each <piece>)');
const freeForm = pattern('(free|foraged|no cost|nothing)');
const talk =
  /^(could|would|might|it'll|they'll|we'll|it's|they're|we're|coming|arriving|landing|arrive|arrives|landed|collecting|collect|dropping|order|orders|short|missing|came|bay|lunch|coffee|coffees|rent|invoice|parking|petrol|diesel|van|wage|wages|bill|insurance|salary|ticket|tickets|fine|deposit|rates|phone|electric|gas|hoover|cake|pizza|sandwiches|milk|loan|tip|biscuits|delivery|courier|freight|fee|callout|fuel|spent|paid|owes|owe|refund|refunded|tea|teas|takeaway|kitty|raffle|float|till|hours|hour|hr|ph|budget|stopping|stopped)$/;

// "7 for the lads at 11" prices no goods.
const forPeople = pattern('for (the|our|my|his|her) (<role>|<owner>|<bench>)');

// "rose left at 4.30", "poppy is in at 9": somebody with a plant's name.
const leaving = pattern('leaves (here)? (at|around|about|before|after|by) (<plain>|<time>)');
const someone = pattern(
  "(<ingredient>) (is|was|will|has|'s)? (be)? (left|leaves|starts|arrives|leaving|back|finishes|meeting|starting|finishing|off|in|out|here|coming|comes|due|called|rang|owes) (here|in|back|today)? (at|me|by|around|about|from|on)?",
);
// "22 pieces, 14.50 each": an order whose kinds nobody has named yet.
const someOrder = pattern('<count> (pieces|pcs|of them|items) (<material>)? (,|-|@|at)? (<amount> <each>|<each> <amount>)');
// "16 pieces, types tbc, $22 each"
const somePieces = pattern('(about|say)? <count> <piece> (<material>)? (,|-|at|@|:|/)');
const wearable = (reader: Reader, start: number, end: number): boolean =>
  somePieces.at(reader.tokens, start, end) !== undefined ||
  reader.tokens.slice(start, end).some((token, offset) => {
    if (token.means['piece'] === undefined || token.means['piece'] === 'unspecified' || token.means['ingredient'] !== undefined)
      return false;
    return !sundryHeads.has(reader.tokens[start + offset + 1]?.text ?? '');
  });

const readItem = (reader: Reader, { start, end }: Stretch, common: PackSize, upTo: number): FactOf<'pack'> | undefined => {
  const { tokens, context } = reader;
  const stretch = tokens.slice(start, end);
  const known = knowsItem(stretch, context.items);
  const extra = itemExtras(tokens, start, upTo);
  const pack = findPack(tokens, start, end);
  const change = firstIn(changeForms, tokens, start, end);
  const used = new Set([...pack.used, ...extra.used]);
  const mark = (match: Match | undefined): void => {
    for (let index = match?.start ?? 0; index < (match?.end ?? 0); index++) used.add(index);
  };
  let basis: FactOf<'tax'>['basis'];
  let taxName: string | undefined;
  for (let index = start; index < end; index++) {
    const tax = taxAt(reader, index);
    if (tax === undefined) continue;
    basis = tax.fact.basis;
    taxName = tax.fact.name;
    mark(tax.match);
    index = tax.match.end - 1;
  }
  const drying = dryingForm.in(tokens, start, end);
  mark(drying);
  mark(least.in(tokens, start, end));
  const packed = pack.per !== undefined || pack.size !== undefined || common.per !== undefined;
  let price: Token | undefined;
  let from: string | undefined;
  if (change !== undefined) {
    price = change.kept['t'];
    from = (change.kept['f'] ?? change.kept['r'])?.number?.amount;
    mark(change);
  } else {
    const at = Array.from({ length: end - start }, (_, offset) => start + offset).filter(
      (index) => !used.has(index) && isPrice(reader, index, packed, known),
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
  if (price === undefined && !(free !== undefined && known && tokens.slice(start, end).some((token) => token.text === 'free')))
    return undefined;
  const rise = price?.number?.max !== undefined && stretch.some((token) => changeWord.test(token.text));
  const each = stretch.some(
    (token, at) => token.means['each'] !== undefined && /^(each|ea|apiece)$/.test(token.text) && used.has(start + at),
  );
  const nameTokens = stretch.flatMap((token, at) =>
    !used.has(start + at) &&
    token.kind === 'word' &&
    !changeWord.test(token.text) &&
    !seller.test(token.text) &&
    !(free !== undefined && token.text === 'free') &&
    token.number === undefined
      ? [{ ...token, at: start + at }]
      : [],
  );
  // "2.5 a stem, 10 stems per bunch": the price is a stem's, whatever they come in.
  const stemPrice = price === undefined ? undefined : perStem.at(tokens, tokens.indexOf(price, start) + 1, end);
  mark(stemPrice);
  const name = itemName(namedRun(nameTokens, context.items), true);
  const noGoods = (token: Token): boolean => token.means['each'] !== undefined || token.means['all'] !== undefined;
  if (pricedEitherWay(tokens, start, end)) return undefined;
  if (!known && forPeople.in(tokens, start, end) !== undefined) return undefined;
  if (name === undefined || !(known || packed) || nameTokens.every(noGoods)) return undefined;
  const number = price?.number;
  const perOf =
    pack.per === undefined ? (common.per === undefined ? (each ? { per: 'each' } : {}) : { per: common.per }) : { per: pack.per };
  return {
    fact: 'pack',
    item: name,
    price: number === undefined ? '0' : rise ? (number.max ?? number.amount) : number.amount,
    ...(number?.max !== undefined && !rise ? { priceMax: number.max } : {}),
    ...(pack.size === undefined ? (common.size === undefined ? {} : { size: common.size }) : { size: pack.size }),
    ...(pack.unit === undefined ? {} : { unit: pack.unit }),
    ...(stemPrice !== undefined && pack.size !== undefined && pack.unit === undefined ? { per: 'stem' } : perOf),
    ...(number?.currency === undefined ? {} : { currency: number.currency }),
    ...(number?.symbol === undefined ? {} : { symbol: number.symbol }),
    ...(basis === undefined || basis === 'none' ? {} : { basis }),
    ...(taxName === undefined ? {} : { taxName }),
    ...(from === undefined ? (rise && number !== undefined ? { from: number.amount } : {}) : { from }),
    ...(pack.quantity === undefined ? {} : { quantity: pack.quantity }),
    ...(drying?.kept['d']?.number?.unit === 'day'
      ? { dryingDays: Number(drying.kept['d'].number.max ?? drying.kept['d'].number.amount) }
      : {}),
    ...extra.extras,
    words: reader.words(start, end),
  };
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  for (const part of reader.untouched().slice(0, 200)) {
    const tokens = reader.tokens.slice(part.start, part.end);
    if (
      tokens.length > 120 ||
      wearable(reader, part.start, part.end) ||
      tokens.some((token) => (token.kind === 'word' && talk.test(token.text)) || token.means['other'] !== undefined)
    )
      continue;
    if (recipeWords.in(reader.tokens, part.start, part.end) !== undefined) continue;
    const leaves = tokens.some(
      (token, at) => token.text === 'leaves' && leaving.at(reader.tokens, part.start + at, part.end) !== undefined,
    );
    if (
      (leaves || someone.at(reader.tokens, part.start, part.end) !== undefined) &&
      !tokens.some((token) => token.means['pack'] !== undefined)
    )
      continue;
    const known = knowsItem(tokens, reader.context.items);
    if (
      !known &&
      tokens.some((token) => token.means['month'] !== undefined || /^(event|wedding|ceremony|party|reception)$/.test(token.text))
    )
      continue;
    if (!known && someOrder.at(reader.tokens, part.start, part.end) !== undefined) continue;
    if (!known && otherThings.in(reader.tokens, part.start, part.end) !== undefined) continue;
    const pack = findPack(reader.tokens, part.start, part.end);
    // "25 a head for 40" feeds people.
    if (!known && tokens.some((token) => /^(a|per) head$/.test(token.text))) continue;
    const packed = pack.per !== undefined || pack.size !== undefined;
    const money = tokens.some((_, at) => isPrice(reader, part.start + at, packed, known));
    if (
      !(
        (known && (money || tokens.some((token) => token.text === 'free'))) ||
        (packed && tokens.some((token) => token.number?.form === 'money' || (money && token.number !== undefined)))
      )
    )
      continue;
    const cuts = stretches(reader, part.start, part.end, (index) => isPrice(reader, index, packed, known));
    const last = cuts.at(-1);
    const common = cuts.length > 1 && last !== undefined ? commonPack(reader, cuts) : {};
    const priced = cuts.filter((cut) => readItem(reader, cut, common, cut.end) !== undefined);
    const facts = priced.flatMap((cut, at) => readItem(reader, cut, common, priced[at + 1]?.start ?? part.end) ?? []).flatMap(apart);
    if (facts.length === 0) continue;
    const { facts: _, ...rest } = found(reader, part.start, part.end, []);
    findings.push({ ...rest, facts: shareTax(facts) });
  }
  return findings;
};

// "statice 4.80, gyp 5.20 a bunch": the pack said last is meant for all when none has its own.
const commonPack = (reader: Reader, cuts: readonly Stretch[]): PackSize => {
  const packs = cuts.map((cut) => findPack(reader.tokens, cut.start, cut.end));
  const withPack = packs.filter((pack) => pack.per !== undefined || pack.size !== undefined);
  const [only] = withPack;
  return withPack.length === 1 && only === packs.at(-1) && only !== undefined
    ? { ...(only.per === undefined ? {} : { per: only.per }), ...(only.size === undefined ? {} : { size: only.size }) }
    : {};
};

export const priceList: Phrase = {
  name: 'price list',
  examples: ['bunny tails 14.50 a bunch of 50', 'statice 4.80 wrap of 10 + VAT', 'strawflowers gone up, 12 to 13.50 a bunch'],
  find,
};
