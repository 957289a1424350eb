// One kind's recipe like another's but for something: "corsages same as bouts but double everything", "corsages the same as the bouts plus a ribbon".

import type { PieceKind } from '../../handbook/pieces.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { allGoodsNamed } from './goods-named.ts';

type Recipe = Extract<Unworded, { fact: 'recipe' }>;

const like = pattern(
  '(the|our)? <p:piece> (recipe)? (are|is|get|gets|use|uses|have|has|with|:|-|on|,)? (the|our|exactly|exact|all){0,2} same (recipe|flowers|ingredients|stems|mix|stuff|thing|things)? (as|as in|as for|as on|like|of) (the|in the|for the|our)? <q:piece> (,|-|only|just){0,2}',
);
const double = pattern(
  '(but|and|only|with)? (<k:word>) (everything|it all|of everything|the amounts|the stems|the flowers|as much|all of it|it|up|the recipe|quantities|the quantities|the lot)? ',
);
const more = pattern('(but|and)? (plus|with|and|add|adding|\\+) (an extra|extra|also)?');
const without = pattern('(but|and)? (without|no|minus|less|leave out|leaving out|with no|not) (the|any)?');
const scales: Readonly<Record<string, string>> = {
  double: '2',
  doubled: '2',
  twice: '2',
  triple: '3',
  treble: '3',
  half: '0.5',
  halve: '0.5',
};

/** What is other than in the recipe it is like; undefined where the words say anything else. */
const otherwise = (reader: Reader, start: number, end: number): Partial<Recipe> | undefined => {
  const { tokens } = reader;
  const scaled = double.at(tokens, start, end);
  const word = scaled?.kept['k']?.text ?? '';
  const scale = Object.hasOwn(scales, word) ? scales[word] : undefined;
  if (scaled?.end === end && scale !== undefined) return { scale };
  const out = without.at(tokens, start, end);
  const drops = out === undefined ? undefined : allGoodsNamed(reader, out.end, end);
  if (drops !== undefined) return { drops };
  const verb = more.at(tokens, start, end);
  const lines = verb === undefined ? undefined : linesIn(reader, verb.end, end);
  const whole = lines !== undefined && lines.length > 0 && lines.every(({ known, line }) => known && (line.stems ?? 1) <= 12);
  return whole ? { adds: true, lines: lines.map(({ line }) => line) } : undefined;
};

export const likeBut = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = like.at(reader.tokens, start, end);
  const [piece, of] = [match?.kept['p'], match?.kept['q']].map((token) => token?.means['piece'] as PieceKind | undefined);
  if (match === undefined || piece === undefined || of === undefined || piece === of || [piece, of].includes('unspecified'))
    return undefined;
  const change = match.end < end ? otherwise(reader, match.end, end) : undefined;
  // "double" of nothing named may be how many there are.
  const ofRecipe = change?.scale === undefined || (reader.context.inRecipe ?? []).length > 0;
  return change === undefined || !ofRecipe
    ? undefined
    : found(reader, start, end, [{ fact: 'recipe', lines: [], ...change, piece, like: of }]);
};
