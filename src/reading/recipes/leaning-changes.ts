// Changes that lean on the recipe held: "and pins" is one more thing in it, "use spray roses instead" takes the place of its roses.

import { ingredientKey, matchIngredient } from '../../handbook/ingredient-names.ts';
import { soundsLikeSundry } from '../../handbook/roles.ts';
import { knowsItem } from '../goods/item-name.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { allGoodsNamed, goodsNamed } from './goods-named.ts';

type Recipe = Extract<Unworded, { fact: 'recipe' }>;

const aside =
  "(ok|okay|oh|so|,|-|actually|sorry|um|no|wait|hang on|right|can we|can you|could you|please|pls|lets|let's|we|i|she|bride|the bride){0,3}";
const joins = pattern(`${aside} (and|plus|&|\\+|also|add|adding|with) (also|some|the|a few|a bit of|bit of|usual|our){0,2}`);
const politely = /^(too|also|please|pls|thanks|ta|then|each|as well|on each|in each|on all|of course|obviously|obvs|x)$/;
const takesPlace = pattern(
  `${aside} (use|using|do|have|put|try|want|wants|wanting|make it|make them|go with|go for|goes with|swap to|switch to|swap in|change to|change it to|change them to|we'll use|well use|it'll be|having)? (the|some)?`,
);
const ofPiece = pattern('(in|for|on) (the|all the|our|each)? <p:piece>');

// "and fern called", "add pins to the list", "ask rose instead" say more than a name and what it looks like.
const looks =
  /^(the|a|an|some|any|bit|bits|of|sprig|sprigs|stem|stems|white|pink|red|peach|blush|cream|ivory|yellow|orange|purple|lilac|blue|burgundy|green|small|little|big|large|mini|short|long|dark|pale|light|coral|apricot|mauve|champagne|nude|rust|copper|gold|silver|black|dusty|hot|standard|garden|and|,|&|\+)$/;
const onlyNames = ({ tokens, context }: Reader, start: number, end: number): boolean => {
  const last = tokens[end - 1];
  const isGoods = (token: Token): boolean => token.means['ingredient'] !== undefined || knowsItem([token], context.items);
  const plain = tokens
    .slice(start, end)
    .every((token) => token.number !== undefined || token.means['material'] !== undefined || looks.test(token.text) || isGoods(token));
  return plain && last !== undefined && isGoods(last);
};

// "and pins", "plus ribbon": how many is not said, so it is one each, and the answer says so.
const joined = (reader: Reader, { start, end }: Part): Recipe | undefined => {
  const verb = joins.at(reader.tokens, start, end);
  if (verb === undefined) return undefined;
  let to = end;
  while (to > verb.end && politely.test(reader.tokens[to - 1]?.text ?? '')) to -= 1;
  const piece = ofPiece.in(reader.tokens, verb.end, to);
  const last = piece?.end === to ? piece : undefined;
  const names = allGoodsNamed(reader, verb.end, last?.start ?? to);
  if (names === undefined || !onlyNames(reader, verb.end, last?.start ?? to)) return undefined;
  return { fact: 'recipe', lines: names.map((ingredient) => ({ ingredient })), adds: true, ...ofKind(last?.kept['p']?.means['piece']) };
};

const head = (name: string): string => ingredientKey(name).split(' ').at(-1) ?? '';

/** What in the recipe such goods can take the place of: another sort of the same flower, else what is no sundry. */
const placesFor = (given: string, held: readonly string[]): readonly string[] => {
  const others = [...new Set(held)].filter((name) => ingredientKey(name) !== ingredientKey(given));
  const sort = others.filter((name) => head(name) === head(given));
  return sort.length > 0 ? sort : others.filter((name) => soundsLikeSundry(name) === soundsLikeSundry(given));
};

const instead = (reader: Reader, { start, end }: Part, held: readonly string[]): Finding | undefined => {
  const { tokens } = reader;
  let to = end;
  while (to > start && politely.test(tokens[to - 1]?.text ?? '')) to -= 1;
  const piece = ofPiece.in(tokens, start, to);
  const last = piece?.end === to ? piece : undefined;
  if (last !== undefined) to = last.start;
  if (tokens[to - 1]?.text !== 'instead') return undefined;
  const from = takesPlace.at(tokens, start, to - 1)?.end ?? start;
  const by = goodsNamed(reader, from, to - 1);
  const [line, more] = by === undefined ? (linesIn(reader, from, to - 1) ?? []) : [];
  const counted =
    line?.known === true && more === undefined && line.line.stems !== undefined && line.line.stems <= 12 ? line.line : undefined;
  const given = by ?? counted?.ingredient;
  if (given === undefined || !onlyNames(reader, from, to - 1)) return undefined;
  const kind = ofKind(last?.kept['p']?.means['piece']);
  const of = (ingredient: string): Recipe =>
    counted === undefined
      ? { fact: 'recipe', lines: [], swaps: [{ ingredient, with: given }], ...kind }
      : { fact: 'recipe', lines: [counted], adds: true, drops: [ingredient], ...kind };
  const [only, ...others] = placesFor(given, held);
  if (only === undefined) return undefined;
  if (others.length === 0) return found(reader, start, end, [of(only)]);
  const words = reader.words(start, end);
  const choices = [only, ...others].map((name) => ({ words: name, facts: [{ ...of(name), words }] }));
  return { start, end, asks: [{ about: 'item', why: 'instead of which', words, choices }] };
};

// "actually 1 ruscus", "no, 2 roses": of what is in it, another number.
const corrected = pattern(
  '(no|sorry|wait|oh|hang on|ok|,|-|um){0,3} (actually|no|rather|sorry|scratch that|make that|i mean|meant|make it|correction) (,|:|-|just|only)? <count>',
);
const anew = (reader: Reader, { start, end }: Part, held: readonly string[]): Recipe | undefined => {
  const opening = corrected.at(reader.tokens, start, end);
  if (opening === undefined) return undefined;
  let to = end;
  while (to > opening.end && politely.test(reader.tokens[to - 1]?.text ?? '')) to -= 1;
  const [line, more] = linesIn(reader, opening.end - 1, to) ?? [];
  if (line?.known !== true || more !== undefined || line.line.stems === undefined || line.line.stems > 12) return undefined;
  return matchIngredient(line.line.ingredient, held).match === 'none' ? undefined : { fact: 'recipe', lines: [line.line], adds: true };
};

export const leaningChange = (reader: Reader, part: Part): Finding | undefined => {
  const held = reader.context.inRecipe ?? [];
  if (held.length === 0 || part.end - part.start > 12) return undefined;
  const change = joined(reader, part) ?? anew(reader, part, held);
  return change === undefined ? instead(reader, part, held) : found(reader, part.start, part.end, [change]);
};
