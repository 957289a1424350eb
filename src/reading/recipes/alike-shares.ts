// Shares of one wearer told by those beside them: "groom gets 2 ranunculus, everyone else 1", "groom gets 1 protea, best man gets 2 zinnies".

import type { RecipeLineFact } from '../fact.ts';
import { leavesOut } from '../goods/not-put-in.ts';
import { quantity } from '../goods/quantity.ts';
import { linesIn, separates } from '../goods/recipe-lines.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { roleHeading, who } from './recipe-headings.ts';
import { readStretch, type StretchRead } from './recipe-stretch.ts';

// "groom gets 2 ranunculus, everyone else 1": the same flower, another number. "ushers get 1 fern frond, groom gets 2 plus a feather": and more.
export const alike = (reader: Reader, { start, end }: Stretch, before: readonly RecipeLineFact[] | undefined): StretchRead | undefined => {
  const { tokens } = reader;
  const role = roleHeading.at(tokens, start, end);
  const named = role?.kept['r'];
  const wearer = who(named, named === undefined ? undefined : tokens[tokens.indexOf(named, start) + 1]);
  const amount = role === undefined ? undefined : quantity(tokens, role.end);
  const [line, second] = before ?? [];
  if (wearer === undefined || amount?.stems === undefined || line === undefined || second !== undefined) return undefined;
  const behind = tokens[amount.next]?.means['each'] === undefined ? 0 : 1; // "groomsmen 1 each"
  const rest = amount.next + behind < end && separates(tokens[amount.next + behind]) ? linesIn(reader, amount.next + behind, end) : [];
  const counted = rest?.every((each) => each.known && (each.line.stems ?? each.line.length) !== undefined) === true;
  if (rest === undefined || !counted || (rest.length === 0 && amount.next + behind < end && !leavesOut(tokens, amount.next + behind, end)))
    return undefined;
  const lines = [{ ingredient: line.ingredient, stems: amount.stems }, ...rest.map((each) => each.line)];
  return { wearer: true, fact: { fact: 'recipe', lines: lines.map((each) => ({ ...each, wearer })) } };
};

// "groom gets 1 protea, best man gets 2 zinnies": beside wearers whose flowers are known, a counted word that no list knows is one too.
const counted = pattern('<count> (x|of)? (<unlisted>){1,3} (each)?');
export const unlisted = (reader: Reader, { start, end }: Stretch): StretchRead | undefined => {
  let index = roleHeading.at(reader.tokens, start, end)?.end ?? end;
  if (index >= end) return undefined;
  while (index < end) {
    const match = counted.at(reader.tokens, index, end);
    if (match === undefined && !separates(reader.tokens[index])) return undefined;
    index = match?.end ?? index + 1;
  }
  return readStretch(reader, { start, end }, true);
};
