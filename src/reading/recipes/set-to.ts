// One flower of a recipe put to another number: "bump the gyp to 3 per bout", "reduce fern to 1", "bring the roses down to 4".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Stretch } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { goodsNamed } from './goods-named.ts';

type Recipe = Extract<Unworded, { fact: 'recipe' }>;

/** The piece a number is told of: "2 roses per corsage". */
export const ofEach = pattern('(per|a|an|each|for each|in each|on each|in a|on a) <p:piece>');
const raised = pattern(
  '(bump|up|raise|increase|reduce|drop|cut|lower|bring|take|knock|put|set|trim|push) (up|down|back)? (the|all the)? <any>{1,3} (up|down|back)? (to|<upTo>) <n:count> (stems)?',
);
// The flower that is named between the verb and "to".
const flowerOf = (reader: Reader, start: number, at: number): string | undefined => {
  let [from, to] = [start + 1, at - 1];
  while (/^(up|down|back|the|all)$/.test(reader.tokens[from]?.text ?? '')) from += 1;
  while (/^(up|down|back)$/.test(reader.tokens[to - 1]?.text ?? '')) to -= 1;
  return goodsNamed(reader, from, to);
};

/** "drop the roses to 2": stems, or what they cost. */
export const mayBeEither = (reader: Reader, { start, end }: Stretch): boolean => {
  const match = raised.at(reader.tokens, start, end);
  const number = match?.kept['n'];
  return (
    match?.end === end && number?.text.length === 1 && goodsNamed(reader, start + 1, reader.tokens.indexOf(number, start) - 1) !== undefined
  );
};

/** Nothing where more is said beside it. */
export const setTo = (reader: Reader, { start, end }: Stretch): Recipe | undefined => {
  const match = raised.at(reader.tokens, start, end);
  const number = match?.kept['n'];
  if (match === undefined || number === undefined) return undefined;
  const at = reader.tokens.indexOf(number, start);
  // "drop the roses to 2" alone may be what they cost.
  const per = ofEach.at(reader.tokens, match.end, end);
  if (per?.end !== end && !(match.end === end && reader.tokens[end - 1]?.text === 'stems')) return undefined;
  const ingredient = flowerOf(reader, start, at);
  const piece = per?.kept['p']?.means['piece'] as PieceKind | undefined;
  if (ingredient === undefined || !isSingle(number.number) || Number(number.number?.amount) > 30) return undefined;
  return {
    fact: 'recipe',
    lines: [{ ingredient, stems: Number(number.number?.amount) }],
    adds: true,
    ...ofKind(piece),
  };
};
