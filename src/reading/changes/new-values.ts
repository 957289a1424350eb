// The new values a correction names: counts, prices, tax, material, work done. Each becomes one change; nothing else is touched.

import { findMentions } from '../order/mentions.ts';
import type { Price } from '../order/price-at.ts';
import { findPrices } from '../order/prices.ts';
import { countOf } from '../order/read-order.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { isMaterial } from '../phrases/material-said.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import { doneWord } from '../progress/done-words.ts';
import type { Part } from '../text/message.ts';
import { isCount } from '../text/token.ts';
import { markers } from './change-words.ts';
import { inZones, type Zones, zonesOf } from './zones.ts';

const doneAfter = pattern(`<n:count> (of them)? (<p:piece>)? (were|was|are|is)? (${doneWord})`);
const doneBefore = pattern('(made|did|done|finished|completed) (only|just)? <n:count>');
const isNow = pattern(
  '(the)? <p:piece> (are|is|count|order|number|should be|to be|now|needs to be|go to|to|up to|down to|<upTo>|changed to|=|:|drop to|from|be|at|should have been|goes to|dropping to|gone to|reduced to|cut to|is now|are now)? (now|to|only|at|<upTo>|up to|<upTo>|down to|meant to be)? <n:count>',
);
const priceWord = /^(price|prices|cost|rate|charge|each|quote|pricing)$/;

const otherPrice = pattern('(price|cost|rate) of (the|a)? <filler>'); // "price of petrol"

const within = (part: Part, index: number): boolean => index >= part.start && index < part.end;

/** A reader that sees one part alone, so that a correction never reaches into the next sentence. */
const narrowed = (reader: Reader, part: Part): Reader => ({ ...reader, free: (index) => within(part, index) && reader.free(index) });

const perOf = (price: Price, negated: { each: boolean; all: boolean }): 'each' | 'all' | undefined =>
  price.per === 'unsaid' ? (price.at ? 'each' : negated.all ? 'each' : negated.each ? 'all' : undefined) : price.per;

export const newValues = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  const zones = zonesOf(tokens, part.start, part.end);
  const marked = zones.old.length > 0 || markers.some((marker) => marker.in(tokens, part.start, part.end) !== undefined);
  if (!marked || otherPrice.in(tokens, part.start, part.end) !== undefined) return [];
  const own = narrowed(reader, part);
  const facts: Unworded[] = [...madeChange(reader, part, zones)];
  if (facts.length === 0) facts.push(...countAndPrice(own, part, zones));
  facts.push(...taxChange(reader, part, zones), ...materialChange(reader, part, zones));
  return facts.length === 0 ? [] : [found(reader, part.start, part.end, facts)];
};

const madeChange = (reader: Reader, part: Part, zones: Zones): Unworded[] => {
  const match = doneAfter.in(reader.tokens, part.start, part.end) ?? doneBefore.in(reader.tokens, part.start, part.end);
  if (match?.kept['n'] === undefined) return [];
  const at = reader.tokens.indexOf(match.kept['n']);
  const numbers = reader.tokens.slice(part.start, part.end).flatMap((token, offset) => (isCount(token) ? [part.start + offset] : []));
  const fresh = numbers.find((index) => inZones(zones.fresh, index));
  const old = numbers.find((index) => inZones(zones.old, index));
  const to = reader.tokens[fresh ?? at]?.number?.amount;
  const from = old === undefined ? undefined : reader.tokens[old]?.number?.amount;
  const piece = match.kept['p']?.means['piece'];
  return [
    {
      fact: 'change',
      what: 'made',
      to: Number(to),
      ...(from === undefined ? {} : { from: Number(from) }),
      ...(piece === undefined || piece === 'unspecified' ? {} : { piece: piece as 'buttonhole' }),
    },
  ];
};

const countAndPrice = (own: Reader, part: Part, zones: Zones): Unworded[] => {
  const { tokens } = own;
  const facts: Unworded[] = [];
  const mentions = findMentions(own).filter((mention) => inZones(zones.fresh, mention.index));
  const used = new Set<number>();
  const oldNumber = tokens.findIndex(
    (token, index) =>
      within(part, index) && inZones(zones.old, index) && (token.number?.form === 'plain' || token.number?.form === 'money'),
  );
  const from = oldNumber < 0 ? undefined : tokens[oldNumber]?.number;
  for (const mention of mentions) {
    if (mention.countIndex === undefined || mention.exact === 1) continue;
    used.add(mention.countIndex);
    const { count } = countOf(mention);
    const range = mention.count?.number;
    const was =
      range?.max !== undefined && tokens.slice(part.start, mention.start).some((token) => /^(from|change|bump|up|move)$/.test(token.text));
    facts.push({
      fact: 'change',
      what: 'count',
      to: was ? Number(range?.max) : count,
      ...(was ? { from: count } : from?.form === 'plain' ? { from: Number(from.amount) } : {}),
      ...(mention.kind === 'unspecified' ? {} : { piece: mention.kind }),
    });
  }
  for (let index = part.start; index < part.end; index++) {
    const match = isNow.at(tokens, index, part.end);
    const number = match?.kept['n'];
    const at = match === undefined ? -1 : match.end - 1;
    if (
      match === undefined ||
      number === undefined ||
      used.has(at) ||
      !inZones(zones.fresh, at) ||
      mentions.some((mention) => mention.index === match.start && mention.countIndex !== undefined)
    )
      continue;
    const next = tokens[match.end];
    if (
      next?.means['each'] !== undefined ||
      next?.means['piece'] !== undefined ||
      tokens[at - 1]?.text === 'at' ||
      next?.means['taxName'] !== undefined
    )
      continue;
    used.add(at);
    const kind = match.kept['p']?.means['piece'];
    const range = number.number?.max;
    facts.push({
      fact: 'change',
      what: 'count',
      to: Number(range ?? number.number?.amount),
      ...(range !== undefined ? { from: Number(number.number?.amount) } : from?.form === 'plain' ? { from: Number(from.amount) } : {}),
      ...(kind === undefined || kind === 'unspecified' ? {} : { piece: kind as 'buttonhole' }),
    });
    index = match.end - 1;
  }
  const negated = {
    each: zones.old.some(([start, end]) => tokens.slice(start, end).some((token) => token.means['each'] !== undefined)),
    all: zones.old.some(([start, end]) => tokens.slice(start, end).some((token) => token.means['all'] !== undefined)),
  };
  const named = tokens.slice(part.start, part.end).some((token) => priceWord.test(token.text));
  const prices = findPrices(own, used).filter(
    (price) => inZones(zones.fresh, price.index) && (price.per !== 'unsaid' || price.number.form === 'money' || price.at || named),
  );
  for (const price of prices)
    facts.push(
      priceChange(
        price,
        negated,
        from,
        tokens.slice(part.start, part.end).some((token) => token.text === 'from'),
      ),
    );
  if (prices.length === 0 && named && facts.length === 0) {
    const at = tokens.findIndex(
      (token, index) => within(part, index) && inZones(zones.fresh, index) && token.number?.form === 'plain' && !used.has(index),
    );
    const number = at < 0 ? undefined : tokens[at]?.number;
    if (number !== undefined)
      facts.push({
        fact: 'change',
        what: 'price',
        to: number.max ?? number.amount,
        ...(number.max !== undefined ? { from: number.amount } : from === undefined ? {} : { from: from.amount }),
        per: 'each',
      });
  }
  return facts;
};

const priceChange = (
  price: Price,
  negated: { each: boolean; all: boolean },
  from: { amount: string } | undefined,
  rising: boolean,
): Unworded => {
  const per = perOf(price, negated);
  const to = rising && price.number.max !== undefined ? price.number.max : price.number.amount;
  const was = rising && price.number.max !== undefined ? price.number.amount : from?.amount;
  return {
    fact: 'change',
    what: 'price',
    to,
    ...(was === undefined ? {} : { from: was }),
    ...(per === undefined ? {} : { per }),
    ...(price.number.currency === undefined ? {} : { currency: price.number.currency }),
    ...(price.piece === undefined ? {} : { piece: price.piece }),
  };
};

const taxChange = (reader: Reader, part: Part, zones: Zones): Unworded[] => {
  for (let index = part.start; index < part.end; index++) {
    if (!inZones(zones.fresh, index)) continue;
    const tax = taxAt(reader, index);
    if (tax === undefined || tax.match.end > part.end) continue;
    const before = zones.old.some(([from, to]) => tokensSay(reader, from, to, /^(plus|on top|\+|ex|excl|extra|exclusive|excluding)$/))
      ? 'on top'
      : zones.old.some(([from, to]) => reader.tokens.slice(from, to).some((token) => token.means['included'] !== undefined))
        ? 'included'
        : undefined;
    return [
      {
        fact: 'change',
        what: 'tax',
        to: tax.fact.basis,
        ...(before === undefined || before === tax.fact.basis ? {} : { from: before }),
        ...(tax.fact.name === undefined ? {} : { name: tax.fact.name }),
      },
    ];
  }
  // "not inc, plus": only the old basis may carry the tax's name.
  for (const [start, end] of zones.old) {
    for (let index = start; index < end; index++) {
      const tax =
        taxAt(reader, index) ?? (reader.tokens[index]?.means['included'] !== undefined ? { fact: { basis: 'included' } } : undefined);
      if (
        tax === undefined ||
        !zones.fresh.some(([from, to]) =>
          reader.tokens.slice(from, to).some((token) => /^(plus|on top|ex|excl|\+|extra)$/.test(token.text)),
        )
      )
        continue;
      if (tax.fact.basis === 'included') return [{ fact: 'change', what: 'tax', to: 'on top', from: 'included' }];
    }
  }
  return [];
};

const tokensSay = (reader: Reader, from: number, to: number, words: RegExp): boolean =>
  reader.tokens.slice(from, to).some((token) => words.test(token.text));

const materialChange = (reader: Reader, part: Part, zones: Zones): Unworded[] => {
  const at = (zone: Zones['fresh']): number =>
    reader.tokens.findIndex((_, index) => within(part, index) && inZones(zone, index) && isMaterial(reader, index));
  const fresh = at(zones.fresh);
  if (fresh < 0) return [];
  const to = reader.tokens[fresh]?.means['material'] ?? '';
  const old = at(zones.old);
  const from = old < 0 ? undefined : reader.tokens[old]?.means['material'];
  const piece = reader.tokens
    .slice(part.start, part.end)
    .find((token) => token.means['piece'] !== undefined && token.means['piece'] !== 'unspecified')?.means['piece'];
  return [
    {
      fact: 'change',
      what: 'material',
      to,
      ...(from === undefined ? {} : { from }),
      ...(piece === undefined ? {} : { piece: piece as 'buttonhole' }),
    },
  ];
};
