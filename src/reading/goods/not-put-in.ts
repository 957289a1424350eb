// What is left out of a piece, named beside what goes in: "no wattle, just 2 billy buttons", "1 rose, no fern". It is no line of the recipe.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import { quantity } from './quantity.ts';

const opens = pattern(
  "(but|and|with)? (no|without|w / o|minus|skip|skipping|omit|omitting|hold|lose|ditch|(leave|leaving|left|miss|missing|keep|keeping) out|(don't|dont|do not|never|not) (using|use|add|put|include|want|any)|not with) (the|any|more|her|his|their|a|an|that)? <word>",
);
const around = pattern('(but|and)? (leave|leaving|keep|keeping|miss) (the|any|all)? <word>{1,3} out (of (it|them|this|these))?'); // "leave the gyp out"
const inside = /^(no|without|minus)$/;
const goesOn = /^(and|or|&|n|nor|\/)$/;
const ends = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'line' || /^(,|;|:|\.|\(|\)|-|\+|plus|just|only|but|then|with|instead)$/.test(token.text);

/** Where what is left out ends, when that begins here. "2 no roses": two in number. */
export const pastLeftOut = (tokens: readonly Token[], index: number, end: number): number | undefined => {
  const match = opens.at(tokens, index, end) ?? around.at(tokens, index, end);
  const first = match === undefined ? undefined : tokens[match.end - 1];
  if (match === undefined || tokens[index - 1]?.number !== undefined || first?.number !== undefined) return undefined;
  let to = match.end;
  while (to < end && !ends(tokens[to]) && quantity(tokens, to) === undefined) {
    // "no gyp or ivy", "no gyp and no ivy"; "no gyp and 2 roses" goes on with what is in it.
    if (goesOn.test(tokens[to]?.text ?? '') && quantity(tokens, to + 1) !== undefined) break;
    to += 1;
  }
  return to;
};

/** "1 rose without thorns": the name goes no further. */
export const endsName = (tokens: readonly Token[], index: number, end: number): boolean =>
  inside.test(tokens[index]?.text ?? '') && pastLeftOut(tokens, index, end) !== undefined;

/** "and no fern": nothing is said but what is left out. */
export const leavesOut = (tokens: readonly Token[], start: number, end: number): boolean =>
  [start, start + 1].some((from) => pastLeftOut(tokens, from, end) === end);
