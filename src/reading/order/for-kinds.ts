// What kind a price is for, said behind it: "28 for the corsages". For two kinds together it is of neither alone: "£900 for the corsages and the bouts together".

import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const forNamed = pattern('(each)? (for|on) (the|each|all the|every|a)? <word>{0,2} <piece:piece>');
const whose = '(the|her|his|their|our|all the)?';
const several = pattern(
  `for (both|all)? ${whose} <word>{0,1} <piece> ((,|and|&|\\+|n|plus){1,2} ${whose} <word>{0,1} <piece>){1,3} (<t:all>|together|combined|between them|as one|taken together)?`,
);
const goesOn = /^(at|@|:|=|-|are|is|x)$/;

/** "for the corsages and the bouts": kinds named together behind a price, and whether it is said to be for all of them. */
export const forSeveral = (tokens: readonly Token[], end: number): Match | undefined => {
  const match = several.at(tokens, end, tokens.length);
  const next = tokens[match?.end ?? 0];
  // "£28 for the corsages and bouts £14": each has its own.
  return match === undefined || next?.number !== undefined || goesOn.test(next?.text ?? '') ? undefined : match;
};
/** Whether the words say that the kinds are paid for together. */
export const isTogether = (tokens: readonly Token[], match: Match): boolean => tokens[match.end - 1]?.means['piece'] === undefined;

/** The one kind that the price is said to be for. */
export const forKind = (tokens: readonly Token[], end: number): Match | undefined =>
  forSeveral(tokens, end) === undefined ? forNamed.at(tokens, end, tokens.length) : undefined;
