// "At what price each?" answered in few words: "16 inc vat", "bouts 16 corsages 34", "16 for the bouts, 34 for corsages". Outside that question such numbers stay unread.

import type { PieceKind } from '../../handbook/pieces.ts';
import { couldBePrice } from '../changes/now-count-or-price.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { Fact, FactOf } from '../fact.ts';
import { amountSaid } from '../order/price-each.ts';
import { type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import { isCount, isNumber, type NumberRead, type Token } from '../text/token.ts';
import { taxAt } from './tax-basis.ts';

const opening =
  "(ok|so|um|well|oh|the|say|and|n|&|plus|i|we|i'd|we'd|id|charge|do|for|call it|lets say|let's say|make it|it's|its|they're){0,4}";
const kindFirst = pattern(
  `${opening} <p:piece> (for|at|@|are|is|:|-|=|will be|would be|should be|go at|go for|come to|to be){0,1} <m:amount> (<each>)? (now)?`,
);
const priceFirst = pattern(
  `${opening} <m:amount> (<each>)? (for|on|per|a|an|the|for the|on the|for each|for a|each for|each for the) (<each>)? <p:piece>`,
);
const bareForm = pattern(
  `${opening} <m:amount> (<each>)? (for (those|them|these|each|each one|each of them|all of them))? (please|pls|then|thanks)?`,
);

const forms = [kindFirst, priceFirst, bareForm];

const isEdge = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'line' || /^(,|;|\.|-|and|n|&|\+|plus|\/|please|pls|thanks|ta|x)$/.test(token.text);

/** The tax words behind a price are read as they always are. */
const behindTax = (reader: Reader, end: number): number => taxAt(reader, end)?.match.end ?? end;

const isPrice = (reader: Reader, match: Match): boolean => {
  const { m, p } = match.kept;
  const at = reader.tokens.indexOf(m as Token, match.start);
  if (!isNumber(m, 'plain', 'money') || m?.number?.or !== undefined || m?.number?.inDozens === true) return false;
  if (!allFree(reader, match.start, match.end)) return false;
  return p?.means['piece'] !== 'unspecified' && dateAt(reader.tokens, at, reader.context) === undefined;
};

interface Priced {
  readonly start: number;
  readonly end: number;
  readonly token: Token;
  readonly piece: PieceKind | undefined;
}

const clauseEnd = (tokens: readonly Token[], from: number, end: number): number => {
  let index = from;
  while (index < end && !isEdge(tokens[index])) index += 1;
  return index;
};

/** What the part says, price by price; nothing where a number beside a kind is no price. */
const pricesIn = (reader: Reader, { start, end }: Part): readonly Priced[] => {
  const { tokens } = reader;
  const prices: Priced[] = [];
  let index = start;
  while (index < end) {
    const match = forms.map((form) => form.at(tokens, index, end)).find((each) => each !== undefined && isPrice(reader, each));
    const next = match === undefined ? index : behindTax(reader, match.end);
    const token = match?.kept['m'];
    // "bouts 16 corsages 34": the next kind may stand right behind.
    const isWhole =
      next >= end ||
      isEdge(tokens[next]) ||
      (match?.kept['p'] !== undefined && (tokens[next]?.means['piece'] !== undefined || tokens[next]?.number !== undefined));
    if (match !== undefined && token !== undefined && isWhole) {
      prices.push({ start: match.start, end: match.end, token, piece: match.kept['p']?.means['piece'] as PieceKind | undefined });
      index = next;
    } else {
      const other = tokens.slice(index, clauseEnd(tokens, index, end));
      if (other.some(({ means }) => means['piece'] !== undefined) && other.some((each) => isNumber(each, 'plain', 'money'))) return [];
      index += other.length;
    }
    while (index < end && isEdge(tokens[index])) index += 1;
  }
  return prices;
};

const asFact = ({ token, piece }: Priced): Omit<FactOf<'price'>, 'words'> => ({
  fact: 'price',
  ...amountSaid(token.number as NumberRead),
  per: 'each',
  ...(piece === undefined ? {} : { piece }),
});

/** "16 and 34" for two kinds, "14, 32, 65" for three: which is whose is asked, in the order they were said first. */
const askWhose = (reader: Reader, prices: readonly Priced[], kinds: readonly PieceKind[]): Finding => {
  const [start, end] = [prices[0]?.start ?? 0, prices.at(-1)?.end ?? 0];
  const words = reader.words(start, end);
  const choice = (pieces: readonly PieceKind[]): Choice => {
    const priced = prices.map((price, at) => ({ ...price, piece: pieces[at] }));
    return {
      words: priced
        .map(({ token, piece }) => `${piece} ${reader.words(reader.tokens.indexOf(token), reader.tokens.indexOf(token) + 1)}`)
        .join(', '),
      facts: priced.map((price): Fact => ({ ...asFact(price), words })),
    };
  };
  const takes = prices.flatMap(placesIn);
  return {
    start,
    end,
    takes,
    asks: [
      { about: 'price', why: 'which number', words, choices: [choice(kinds), ...(kinds.length === 2 ? [choice(kinds.toReversed())] : [])] },
    ],
  };
};

// "15 bouts 26 corsages" of kinds that are counted already: their prices, or so many of each after all?
const counted = pattern('(and|n|&|,|plus|\\+|the|for|-){0,2} <n:plain> <p:piece>');
const askCountsOrPrices = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const { tokens, context } = reader;
  const said: { piece: PieceKind; amount: string }[] = [];
  let at = start;
  for (let match = counted.at(tokens, at, end); match !== undefined; match = counted.at(tokens, at, end)) {
    const { n, p } = match.kept;
    if (!isCount(n) || n?.number?.max !== undefined || !reader.free(at)) return undefined;
    said.push({ piece: p?.means['piece'] as PieceKind, amount: n?.number?.amount ?? '' });
    at = match.end;
  }
  const held = said.every(({ piece, amount }) => context.pieces.includes(piece) && couldBePrice(piece, Number(amount)));
  if (said.length < 2 || !held || behindTax(reader, at) !== end) return undefined;
  const words = reader.words(start, at);
  const choices: Choice[] = [
    { words: 'the price of each', facts: said.map(({ piece, amount }): Fact => ({ fact: 'price', amount, per: 'each', piece, words })) },
    { words: 'how many of each', facts: said.map(({ piece, amount }): Fact => ({ fact: 'pieces', piece, count: Number(amount), words })) },
  ];
  return { start, end: at, asks: [{ about: 'price', why: 'which number', words, choices }] };
};

const find = (reader: Reader): Finding[] => {
  const { open, pieces } = reader.context;
  if (open?.kind !== 'missing' || open.about !== 'price' || pieces.length === 0) return [];
  const [part, further] = reader.message.parts;
  const either = part === undefined || further !== undefined || part.asked ? undefined : askCountsOrPrices(reader, part);
  if (either !== undefined) return [either];
  const prices = reader.untouched().flatMap((part) => (part.asked ? [] : pricesIn(reader, part)));
  const [first, second] = prices;
  if (first === undefined) return [];
  const isNamed = prices.every(({ piece }) => piece !== undefined);
  if (isNamed || second === undefined) return prices.map((price) => found(reader, price.start, price.end, [asFact(price)]));
  return prices.length === pieces.length && prices.every(({ piece }) => piece === undefined) ? [askWhose(reader, prices, pieces)] : [];
};

export const pricesAnswered: Phrase = { name: 'prices answered', examples: [], find };
