// Two kinds, one of each for every couple: "bout and corsage for 12 couples 14/32", "12 bout/corsage combos $40 per combo".

import type { PieceKind } from '../../handbook/pieces.ts';
import { decimal } from '../../values/decimal.ts';
import { firstIn, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { isSingle, type Token } from '../text/token.ts';
import { pricedEach } from './price-each.ts';
import { currencyFields } from './read-order.ts';

const link = '(and|,|&|+|/|plus|with|n|-){1,2}';
const both = `(a|one|1)? <a:piece> ${link} (a|one|1)? (matching)? <b:piece>`;
const of = '(for|on)? (the|each)? (her|him|girl|boy|girls|boys|ladies|gents|men|lady|man|lad|lads)?';
const forms = [
  pattern(`(matching)? ${both} (each)? (for (the|a|our|their)? <word>{1,2})? (,|-|:|;){0,1} (for|x)? (the)? <n:count> (couples|pairs)`),
  pattern(
    `<n:count> (x)? (matching)? <a:piece> ${link} (matching)? <b:piece> (combo|combos|set|sets|pair|pairs|duo|duos|package|packages)`,
  ),
  // "8 couples, wrist corsage for her + matching bout for him"
  pattern(
    `<n:count> couples (,|-|:|;|=|so)? (each|all|both|getting|get|with|need|needing|have|having|want|wanting){0,2} (a|one|1)? (matching)? <a:piece> ${of} ${link} (a|one|1)? (matching)? <b:piece> ${of} (each|per couple|a couple)?`,
  ),
];
const ownPrices = pattern('(,|-|:|;)? (at|@)? <x:amount> (and|,|&|+|/|n) <y:amount> (<each>|each)?');
const perPair = pattern('(,|-|:|;)? (at|@|for)? <c:amount> (a|per|each|the|/|for each|for a) (set|pair|combo|couple|duo|package)');

/** As many of each as there are couples, with what each or both cost. */
export const forCouples = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const match = firstIn(forms, tokens, 0, tokens.length);
  const { a, b, n } = match?.kept ?? {};
  const [first, second] = [a?.means['piece'], b?.means['piece']];
  if (match === undefined || n === undefined || first === second || !allFree(reader, match.start, match.end)) return undefined;
  // "6 bouts and corsages for 4 couples" counts them otherwise.
  if ([first, second].includes('unspecified') || (tokens[match.start - 1]?.number !== undefined && tokens[match.start] !== n))
    return undefined;
  if (!isSingle(n.number)) return { start: match.start, end: match.end, held: true };
  const row = tokens[match.end];
  const slashed = row?.number?.form === 'slashed' && row.number.parts?.length === 2 ? row.number.parts : undefined;
  const own = slashed === undefined ? ownPrices.at(tokens, match.end, tokens.length) : undefined;
  const whole = own === undefined ? perPair.at(tokens, match.end, tokens.length) : undefined;
  const cost = (token: Token | undefined, part: number | undefined): object =>
    part === undefined ? pricedEach(token) : { price: { amount: String(part), per: 'each' } };
  const end = slashed === undefined ? (own?.end ?? whole?.end ?? match.end) : match.end + 1;
  if (!allFree(reader, match.start, end)) return undefined;
  const prices = [own?.kept['x'], own?.kept['y'], whole?.kept['c']].filter((token) => token !== undefined);
  if (!prices.every(({ number }) => isSingle(number))) return { start: match.start, end, held: true };
  const count = { count: Number(n.number.amount), ...(n.number.approx === true ? { approx: true as const } : {}) };
  const lines: Unworded[] = [
    { fact: 'pieces', piece: first as PieceKind, ...count, ...cost(own?.kept['x'], slashed?.[0]) },
    { fact: 'pieces', piece: second as PieceKind, ...count, ...cost(own?.kept['y'], slashed?.[1]) },
  ];
  const pair = whole?.kept['c']?.number;
  if (pair !== undefined)
    lines.push({
      fact: 'price',
      amount: decimal(pair.amount)
        .times(n.number?.amount ?? '0')
        .toFixed(),
      per: 'all',
      ...currencyFields(pair),
    });
  return found(reader, match.start, end, lines);
};
