// How much of something goes in, told beside what it costs: "ribbon 4.20 for 10m roll, 20cm each", "magnets 60p each, one on each", "put a magnet on each, 60p each".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Stretch } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { quantity } from './quantity.ts';

type Use = Stretch & { readonly fact: Unworded };

// "3 of them" counts what was bought.
const inEach =
  '((on|in|to|for|per) (each|every|a|the)? (of them|one)|(each|every|a|the) (of them|one)|(on|in|to|for|per)? (each|every|a|the)? <piece:piece>)';
const eachWay = `(each|${inEach}|per <piece:piece>|on each|in each)`;
const amount = '(<n:count>|a|<m:length>|<f:word> a stem)';
const behind = pattern(
  `(,|-|;|and|\\.|with|using){1,2} (we|i)? (use|using|need|put|take|with|at)? ${amount} (stem|stems|sprig|sprigs|of them)? ${eachWay}`,
);
const ahead = pattern(
  `(put|add|use|pop|stick|include|with|and)? ${amount} (stem|stems|sprig|sprigs)? (of)? (<word>)? <ingredient> (stems|sprigs)? (on|in|to|per|for) (each|every|a|the)? (one|<piece:piece>)? (,|at|@|-)`,
);

const shares: Readonly<Record<string, number>> = { half: 0.5 };

const lineOf = (item: string, { n, m, f }: Match['kept']): FactOf<'recipe'>['lines'][number] | undefined => {
  if (m?.number !== undefined)
    return m.number.max === undefined ? { ingredient: item, length: Number(m.number.amount), unit: m.number.unit ?? '' } : undefined;
  const stems = f === undefined ? Number(n?.number?.amount ?? 1) : shares[f.text];
  return stems === undefined || n?.number?.max !== undefined ? undefined : { ingredient: item, stems };
};

const factOf = (item: string, kept: Match['kept']): Unworded | undefined => {
  const line = lineOf(item, kept);
  const piece = kept['piece']?.means['piece'] as PieceKind | undefined;
  if (line === undefined) return undefined;
  return { fact: 'recipe', lines: [line], adds: true, ...ofKind(piece) };
};

/** How much goes in, told behind a price up to the end of the part, of goods that are named before it. */
export const useBehind = (
  tokens: readonly Token[],
  { start, end }: Stretch,
): (Stretch & { of(item: string): Unworded | undefined }) | undefined => {
  for (let index = behind.next(tokens, start + 2, end); index < end; index = behind.next(tokens, index + 1, end)) {
    const match = behind.at(tokens, index, end);
    if (match?.end === end) return { start: index, end, of: (item) => factOf(item, match.kept) };
  }
  return partBehind(tokens, { start, end });
};

// "gyp 12 a bunch of 10, half a stem": nobody buys a part of a stem, so it goes in with or without "each".
const joint = pattern('(,|-|;|and|\\.|with|using){1,2} (we|i)? (use|using|need|put|take|with|at)?');
const closing = pattern(`(of (it|that|those))? (${eachWay})?`);
// "half a bunch each", "a quarter of a bunch per crown", "half a metre each": a measure goes in only where it is said of each.
const ofEach = pattern(`(of (it|that|those))? ${eachWay}`);
// "roses £16, a bunch each" may say what the price is of; behind "a bunch of 20" it does not.
const oneBunch = pattern('(a|one) bunch');
const measureAt = (tokens: readonly Token[], start: number, index: number): ReturnType<typeof quantity> => {
  const bunch =
    firstWhere(tokens, start, index, ({ means }) => means['pack'] !== undefined) < 0
      ? undefined
      : oneBunch.at(tokens, index, tokens.length);
  return bunch === undefined ? quantity(tokens, index) : { length: 1, unit: 'bunch', next: bunch.end };
};
const partBehind: typeof useBehind = (tokens, { start, end }) => {
  for (let index = joint.next(tokens, start + 2, end); index < end; index = joint.next(tokens, index + 1, end)) {
    const match = joint.at(tokens, index, end);
    const said = match === undefined ? undefined : measureAt(tokens, start, match.end);
    if (said === undefined || (said.stems !== undefined && Number.isInteger(said.stems) && said.makes === undefined)) continue;
    const measured = said.length !== undefined;
    const close = said.next === end ? undefined : (measured ? ofEach : closing).at(tokens, said.next, end);
    if (close?.end !== end && (measured || said.next !== end)) continue;
    const { next: _, ...share } = said;
    const piece = close?.kept['piece']?.means['piece'] as PieceKind | undefined;
    return { start: index, end, of: (ingredient) => ({ fact: 'recipe', lines: [{ ingredient, ...share }], adds: true, ...ofKind(piece) }) };
  }
  return undefined;
};

/** "Put a magnet on each, 60p each": how much goes in, told with the name before the price. */
export const useAhead = (tokens: readonly Token[], { start, end }: Stretch, { item, price }: FactOf<'pack'>): Use | undefined => {
  const priced = firstWhere(tokens, start, end, ({ number }) => number?.amount === price);
  const match = ahead.at(tokens, start, end);
  const fact = match === undefined || priced < match.end ? undefined : factOf(item, match.kept);
  return match === undefined || fact === undefined ? undefined : { start, end: match.end, fact };
};
