// As many pieces as the people they are for: "lapels for 22 men", "corsages for the two mums". Where others are named behind them they are not all:
// "corsages for the two mums and my godmother, so 3".

import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const forTeam = pattern('for (a|the|our|her|his|their)? (team|party|group|class|crew|squad|choir|band) of <n:count>');
const forSome = pattern('for <n:count> ((,|-|:) (<money>|<plain> <each>|@|at)|(@|at) (<money>|<plain> <each>))');
const forPeople = pattern(
  'for (the|our|all|all the)? <n:count> (<material>)? (<role>|<bench>|blokes|fellas|fellows|chaps|gents|men|kids|children|couples|family|mates|aunties|uncles|gals|dudes|heads|males|females)',
);
const further = pattern('((,|and|&|\\+|plus|n){1,2} (my|her|his|the|our|their|a|one)? (<role>|<owner>)){1,4}');
const soMany = pattern(
  "(,|-|\\(|:){0,2} (so|so that's|so thats|that's|thats|making|which is|which makes|ie|i\\.e\\.) (that's|thats)? <n:count>",
);

const verbs = /^(get|gets|getting|have|has|having|wear|wears|wearing|want|wants|need|needs|with|in|are|is|at|@|:)$/;

export interface PeopleFor {
  readonly number: Token;
  readonly at: number;
}
const counted = (tokens: readonly Token[], match: Match | undefined, from: number): PeopleFor | undefined => {
  const number = match?.kept['n'];
  return number === undefined ? undefined : { number, at: tokens.indexOf(number, from) };
};

/** How many people the pieces before `from` are said to be for. */
export const peopleFor = (tokens: readonly Token[], from: number): PeopleFor | undefined => {
  const match = forPeople.at(tokens, from, tokens.length);
  const behind = match === undefined ? undefined : further.at(tokens, match.end, tokens.length);
  // "corsages for 4 girls, mums get bouts"
  const more = verbs.test(tokens[behind?.end ?? 0]?.text ?? '') ? undefined : behind;
  // "for 12 lads and 4 corsages for ladies" goes on with something else.
  if (more !== undefined) return counted(tokens, soMany.at(tokens, more.end, tokens.length), more.end);
  return counted(tokens, match ?? forTeam.at(tokens, from, tokens.length) ?? forSome.at(tokens, from, tokens.length), from);
};
