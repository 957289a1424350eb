// Pieces sold in sets of one of each: "22 sets, corsage ($30) and bout ($12)", "6 prom sets of wrist corsage and bout, $42 a set".

import type { PieceKind } from '../../handbook/pieces.ts';
import { decimal } from '../../values/decimal.ts';
import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { isRangeOrChoice, type NumberRead, type Token } from '../text/token.ts';
import { priceEach } from './price-each.ts';
import { currencyFields } from './read-order.ts';

const price = (name: string): string => `((\\( (at|@)?|at|@|is|are|:|-|=)? <${name}:amount> (<each>)? (\\))?)?`;
const setsOf = (first: string, second: string) =>
  pattern(
    `<n:count> (matching|of the|x|<unlisted>){0,2} (set|sets|combo|combos|pair|pairs) (for (the|a|our)? (<unlisted>|<other>){1,3})? (of|,|:|-|\\(|=|with|each){0,2} (a|one|1)? (x)? <a:piece> ${first} (and|,|&|\\+|/|plus|with|n){1,2} (a|one|1)? (x)? <b:piece> ${second} (\\))?`,
  );
const sets = setsOf(price('ap'), price('bp'));
// "6 sets of bout + corsage at $48 a set": the price is the set's, and not the second piece's.
const unpriced = setsOf('', '');
const perSet = pattern('(,|-|:)? (at|@|for)? <c:amount> (a|per|each|the|/|for each|for a|for the)? (set|combo|pair|couple|<each>)');

const isSet = /^(set|combo|pair|couple)$/;

const own = (number: NumberRead | undefined): object => (number === undefined ? {} : { price: priceEach(number) });

// "5 bouts + 5 wrist corsages, $60 a set": as many of the one as of the other are so many sets.
const alike = pattern(
  '<n:count> (<material>)? <a:piece> (and|,|&|\\+|/|plus|with|n){0,2} <m:count> (<material>)? <b:piece> (,|-|:|\\()? (at|@|for)? <c:amount> ((a|per|each|the|/|for each|for a|for the|for) (matching|matched)? (set|sets|combo|duo|package)|(a|per|each|/) (pair|pr)) (\\))?',
);
const setsOfAlike = (reader: Reader): Finding | undefined => {
  const match = alike.in(reader.tokens, 0, reader.tokens.length);
  if (match === undefined) return undefined;
  const { n, a, m, b, c } = match.kept;
  const [first, second] = [a?.means['piece'] as PieceKind | undefined, b?.means['piece'] as PieceKind | undefined];
  // "4 bouts 12, 4 corsages 50 a pair": a pair right behind one kind may be of that kind.
  const at = c === undefined ? -1 : reader.tokens.indexOf(c, match.start);
  const stretch = reader.tokens.slice(match.start, match.end);
  const joined = stretch.some(({ text }) => /^(and|&|\+|n|plus|with)$/.test(text)) || /^[,:-]$/.test(reader.tokens[at - 1]?.text ?? '');
  if (!joined && stretch.some(({ text }) => /^(pair|pr)$/.test(text))) return undefined;
  // "20 a set aside"
  if (/^(aside|up|down|out|off|of|back)$/.test(reader.tokens[match.end]?.text ?? '')) return undefined;
  const [count, other, each] = [n?.number, m?.number, c?.number];
  if (count === undefined || each === undefined || first === undefined || second === undefined) return undefined;
  if (!allFree(reader, match.start, match.end)) return undefined;
  // Where there are not as many of both, nothing says what a set is.
  if (first === second || count.amount !== other?.amount || count.max !== undefined || each.max !== undefined)
    return { start: match.start, end: match.end, held: true };
  const lines: Unworded[] = [first, second].map((piece) => ({ fact: 'pieces', piece, count: Number(count.amount) }));
  const amount = decimal(each.amount).times(count.amount).toFixed();
  return found(reader, match.start, match.end, [...lines, { fact: 'price', amount, per: 'all', ...currencyFields(each) }]);
};

/** One line for each kind, as many as there are sets; a price for the set is told as the total of all sets. */
export const piecesOfSets = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const matched = setsOfAlike(reader);
  if (matched !== undefined) return matched;
  const plain = unpriced.in(tokens, 0, tokens.length);
  const whose = plain && perSet.at(tokens, plain.end, tokens.length);
  const match = isSet.test(tokens[(whose?.end ?? 0) - 1]?.text ?? '') ? plain : sets.in(tokens, 0, tokens.length);
  const [count, first, second] = [match?.kept['n']?.number, match?.kept['a']?.means['piece'], match?.kept['b']?.means['piece']];
  if (match === undefined || count === undefined || first === undefined || second === undefined) return undefined;
  if (first === second || first === 'unspecified' || second === 'unspecified' || count.max !== undefined) return undefined;
  // "2 pairs of combs and crowns" counts the combs alone.
  const paired = tokens.slice(match.start, match.end).some(({ text }) => /^pairs?$/.test(text));
  if (paired && /s$/.test(match.kept['a']?.text ?? '')) return undefined;
  const behind = perSet.at(tokens, match.end, tokens.length);
  const end = behind?.end ?? match.end;
  if (!allFree(reader, match.start, end)) return undefined;
  const whole = behind?.kept['c']?.number;
  // "6 sets (1 corsage + 1 bout) 30-35 each"
  const said = [whole, match.kept['ap']?.number, match.kept['bp']?.number];
  if (said.some((number) => isRangeOrChoice(number))) return { start: match.start, end, held: true };
  const line = (piece: string, number: NumberRead | undefined): Unworded => ({
    fact: 'pieces',
    piece: piece as PieceKind,
    count: Number(count.amount),
    ...own(number),
  });
  // "6 sets of corsage and bout, 42 each": each set, or each piece?
  const unsaid = behind !== undefined && !isSet.test(tokens[behind.end - 1]?.text ?? '');
  const total = (number: NumberRead): Unworded => ({
    fact: 'price',
    amount: decimal(number.amount).times(count.amount).toFixed(),
    per: 'all',
    ...currencyFields(number),
  });
  const finding = found(reader, match.start, end, [
    line(first, match.kept['ap']?.number),
    line(second, match.kept['bp']?.number),
    ...(whole === undefined || unsaid ? [] : [total(whole)]),
  ]);
  if (whole === undefined || !unsaid) return finding;
  const words = reader.words(tokens.indexOf(behind?.kept['c'] as Token, match.end), end);
  const choice = (said: string, fact: Unworded) => ({ words: `${whole.amount} a ${said}`, facts: [{ ...fact, words } as Fact] });
  const each: Unworded = { fact: 'price', amount: whole.amount, per: 'each', ...currencyFields(whole) };
  return {
    ...finding,
    asks: [{ about: 'price', why: 'each or all', words, choices: [choice('set', total(whole)), choice('piece', each)] }],
  };
};
