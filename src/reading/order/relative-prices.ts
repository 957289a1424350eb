// A price said as so much less or more than the one before it: "5 pin corsages £22.50, 12 BH a fiver less each".

import { decimal } from '../../values/decimal.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isSingle, type NumberRead, type Token } from '../text/token.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';
import { currencyFields } from './read-order.ts';

const apiece = '(<each>|per (piece|item|one|bout|corsage)|a (piece|pop|go))';
const word = '(less|cheaper|lower|under|below|more|dearer|higher|above|over)';
const which = '(the|those|that|them|for the|a)? (<p:piece>|others|ones|other|first|that)';
const than = `((than|then) ${which})?`;
const lead = '(at|,|for|are|is|:|-)? (a)?';
const forms = [
  pattern(`${lead} <n:amount> (${word}|extra) ${apiece} ${than}`),
  pattern(`${lead} <n:amount> ${apiece} (${word}|extra) ${than}`),
  pattern(`${lead} <n:money> (<each>)? <t:upTo> ${which}`),
  pattern(`${lead} <n:money> (<each>)? <t:from> ${which}`),
  pattern(`${lead} <n:money> ${word} ${than}`),
];
// "9 bouts same price": the one price there is, behind it.
const same = pattern(
  '(,|-)? (also|all|both|at|@|for)? (the)? same (unit|piece|each)? (price|prices|rate|cost|money|<each>) (each|apiece|as (them|those|well|that)|too|again)?',
);
const sameFor = pattern('(at|@|for)? (the)? same (unit|piece)? (price|prices|rate|cost|money) (each)? (for|on) (the|our|all|another)?');
const downwards = /^(less|cheaper|lower|under|below|less than|cheaper than|lower than)$/;
const comparing = /than$/;
const ends = (reader: Reader, end: number): boolean => {
  const next = reader.tokens[end];
  return (
    next === undefined ||
    next.kind !== 'word' ||
    ['included', 'onTop', 'taxName', 'taxWord', 'all'].some((tag) => next.means[tag] !== undefined) ||
    /^(and|n|plus|then)$/.test(next.text)
  );
};

const sign = (number: NumberRead): string | undefined => number.currency ?? number.symbol;

interface Told {
  readonly price?: Price;
  readonly start: number;
  readonly end: number;
}

const matchAt = ({ tokens }: Reader, index: number): Match | undefined => {
  for (const form of forms) {
    const match = form.at(tokens, index, tokens.length);
    const compared = match?.kept['t'];
    if (match !== undefined && (compared === undefined || comparing.test(compared.text))) return match;
  }
  return undefined;
};

// The one price that stands before it, of one kind alone; several unlike ones leave it open.
const baseOf = (prices: readonly Price[], index: number, piece: string | undefined): Price | undefined => {
  const before = prices.filter((price) => price.index < index);
  const own = piece === undefined ? before : before.filter((price) => price.piece === piece);
  const [base] = own.length > 0 ? own : before;
  const same = before.every(({ number }) => number.amount === base?.number.amount);
  const exact = base !== undefined && isSingle(base.number) && base.kind === undefined;
  return exact && (same || own.length === 1) && base.per !== 'all' && base.forCount !== true ? base : undefined;
};

const saysWhich = pattern('(for|on|across|both|all|each|the lot|of them|of the two|,|-|:){0,4} (at|is|of)? (<money>|<plain> <each>)');
// "9 bouts same price", "same price for 9 bouts"; "same rate Rs 110" says which.
const alikeAt = ({ tokens }: Reader, mention: Mention): Match | undefined => {
  if (!same.might(tokens)) return undefined;
  const behind = same.at(tokens, Math.max(mention.end, mention.last + 1), tokens.length);
  const next = tokens[behind?.end ?? 0];
  // "20 lapels 20 corsages same price for both R95 each"
  if (behind !== undefined && saysWhich.at(tokens, behind.end, tokens.length) !== undefined) return undefined;
  if (behind !== undefined && next?.number === undefined && !/^(for|of|is|at|@|:|=|-|rs|as)$/.test(next?.text ?? '')) return behind;
  const ahead = sameFor.in(tokens, Math.max(0, mention.start - 6), mention.start);
  return ahead?.end === mention.start ? ahead : undefined;
};

// "4 corsages double that", "crowns twice the price"
const multiple = pattern(
  '(at|,|for|are|is|:|-|which are){0,2} (<t:word>|three times) (of)? (that|the price|price|the cost|the rate|that price|as much|that each)',
);
const timesOf: Readonly<Record<string, number>> = { double: 2, twice: 2, triple: 3, treble: 3, 'three times': 3, half: 0.5 };
const multipliedAt = ({ tokens }: Reader, mention: Mention): (Match & { times: number }) | undefined => {
  if (!multiple.might(tokens)) return undefined;
  const match = multiple.at(tokens, Math.max(mention.end, mention.last + 1), tokens.length);
  const times = timesOf[match?.kept['t']?.text ?? 'three times'];
  return match === undefined || times === undefined ? undefined : { ...match, times };
};
const multiplied = (reader: Reader, prices: readonly Price[], mention: Mention, match: Match & { times: number }): Told => {
  const { start } = match;
  const end = match.end + (reader.tokens[match.end]?.means['each'] === undefined ? 0 : 1);
  const base = baseOf(prices, start, undefined);
  if (base === undefined || !ends(reader, end)) return { start, end };
  const number = { ...base.number, amount: decimal(base.number.amount).times(match.times).toFixed() };
  return {
    start,
    end,
    price: { index: start, start, end, number, per: 'each', at: false, piece: mention.kind, pieceIndex: mention.index },
  };
};

const asBefore = (mentions: readonly Mention[], prices: readonly Price[], mention: Mention, at: number, { start, end }: Match): Told => {
  const base = baseOf(prices, start, undefined);
  const before = mentions[at - 1];
  // "6 corsages 34 each, 9 bouts and 2 crowns same price": whether the bouts too is not said.
  const told = before === undefined || prices.some(({ index }) => index > before.start && index < mention.start);
  if (base === undefined || !told) return { start, end };
  const { number } = base;
  return {
    start,
    end,
    price: { index: start, start, end, number, per: 'each', at: false, piece: mention.kind, pieceIndex: mention.index },
  };
};

/** What each counted kind costs whose price is told by the one before it; without a price where that cannot be said. */
export const relativePrices = (reader: Reader, mentions: readonly Mention[], prices: readonly Price[]): Told[] =>
  mentions.flatMap((mention, at): Told[] => {
    const alike = mention.countIndex === undefined ? undefined : alikeAt(reader, mention);
    if (alike !== undefined && prices.length > 0) return [asBefore(mentions, prices, mention, at, alike)];
    const times = mention.countIndex === undefined ? undefined : multipliedAt(reader, mention);
    if (times !== undefined && prices.length > 0) return [multiplied(reader, prices, mention, times)];
    const match = mention.countIndex === undefined ? undefined : matchAt(reader, Math.max(mention.end, mention.last + 1));
    const number = match?.kept['n']?.number;
    if (match === undefined || number === undefined || number.max !== undefined || reader.tokens[match.end]?.text === 'or') return [];
    const index = reader.tokens.indexOf(match.kept['n'] as Token, match.start);
    const known = prices.filter((price) => price.index !== index);
    const base = baseOf(known, index, match.kept['p']?.means['piece']);
    const less = reader.tokens.slice(index + 1, match.end).some(({ text }) => downwards.test(text));
    const amount = base === undefined ? undefined : decimal(base.number.amount).plus(decimal(number.amount).times(less ? -1 : 1));
    const mixed = base !== undefined && sign(base.number) !== undefined && sign(number) !== undefined && sign(base.number) !== sign(number);
    if (base === undefined || amount === undefined || !amount.gt(0) || mixed || !ends(reader, match.end))
      return [{ start: match.start, end: match.end }];
    const { number: said } = base;
    const own = { ...said, ...(sign(said) === undefined ? currencyFields(number) : {}), amount: amount.toFixed() };
    return [
      {
        start: match.start,
        end: match.end,
        price: {
          index,
          start: match.start,
          end: match.end,
          number: own,
          per: 'each',
          at: false,
          piece: mention.kind,
          pieceIndex: mention.index,
        },
      },
    ];
  });
