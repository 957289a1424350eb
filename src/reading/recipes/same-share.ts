// "groom gets the same plus a feather": what the wearer before him was given, or what everyone gets, and that much more.

import type { RecipeLineFact } from '../fact.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { roleHeading, who } from './recipe-headings.ts';
import type { StretchRead } from './recipe-stretch.ts';

const same = pattern(
  '(the)? (exact)? same (again|thing|recipe|flowers|one)? (as (the)? (<s:role>|rest|others|other|them|everyone|everyone else|above|that){1,2})? (,|but|and){0,2} (plus|with|and|\\+|add|adding|but with) (an extra|extra|an additional|also)?',
);

/** Whether a share of the same begins here. */
export const isSameAgain = (reader: Reader, index: number, end: number): boolean => same.at(reader.tokens, index, end) !== undefined;

/** `before`: what was given to the wearer named before in this message. */
export const sameShare = (
  reader: Reader,
  { start, end }: Stretch,
  before: readonly RecipeLineFact[] | undefined,
): StretchRead | undefined => {
  const { tokens } = reader;
  const role = roleHeading.at(tokens, start, end);
  const again = role === undefined ? undefined : same.at(tokens, role.end, end);
  const named = role?.kept['r'];
  const wearer = who(named, named === undefined ? undefined : tokens[tokens.indexOf(named, start) + 1]);
  if (again === undefined || wearer === undefined) return undefined;
  const more = linesIn(reader, again.end, end);
  if (more === undefined || more.length === 0 || more.some(({ known }) => !known)) return undefined;
  // "same as the best man": his, where this message gave him any; what the thread gave him is not known here.
  const as = again.kept['s'];
  const last = as === undefined ? before?.at(-1)?.wearer : who(as);
  if (as !== undefined && !before?.some((line) => line.wearer === last)) return undefined;
  const given = (before ?? []).filter(
    (line) => line.wearer === last && !more.some(({ line: { ingredient } }) => ingredient === line.ingredient),
  );
  // "the same but with 2 roses": of those two, whatever the one before has.
  const lines = [
    ...given,
    ...more.map(({ line }) => (line.stems === undefined && line.length === undefined ? { ...line, stems: 1 } : line)),
  ];
  return { wearer: true, fact: { fact: 'recipe', lines: lines.map((line) => ({ ...line, wearer })) } };
};
