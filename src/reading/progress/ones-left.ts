// What is left, named by whose it is: "only the groom's left to do" is one.

import { type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { isPlural } from '../wearers/role-counts.ts';
import { pieceIn } from './made-facts.ts';

export const onesLeft = pattern(
  "(just|only|still|there's only|theres only|its just|it's just) (the|his|her)? (<owner>|<role> 's|<role>) (one|<p:piece>)? (is|to be)? (left to (do|make|wire|finish|box|pin|tape)|to (do|make|wire|finish|box|go)|to be (made|done|finished|wired))",
);
/** Behind "left" these speak of no pieces: "one is left handed", "one dad left to ring". */
export const otherLeft = pattern(
  '(handed|hander|handers|to (ring|call|phone|text|email|message|pay|invite|chase|visit|meet|see|ask|tell))',
);

/** One; in "only the ushers left to do" how many they are is not said. */
export const oneOfTheirs = (tokens: readonly Token[], match: Match): Unworded | undefined => {
  const whose = tokens.slice(match.start, match.end).find(({ means }) => means['role'] !== undefined || means['owner'] !== undefined);
  return whose?.means['owner'] === undefined && isPlural(whose?.text ?? '') ? undefined : { fact: 'left', count: 1, ...pieceIn(match) };
};
