// A remark in brackets behind a change: "bouts: 14 now instead of 12 (two cousins got promoted)". Whoever it tells of changes nothing more.

import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const value = ({ number, means, text }: Token): boolean =>
  number?.form === 'money' ||
  number?.form === 'time' ||
  /^(not|was|instead|inc|incl|ex|each|done|made|total|in|or)$/.test(text) ||
  ['piece', 'material', 'ingredient', 'weekday', 'month', 'taxName', 'included', 'onTop', 'each'].some((tag) => means[tag] !== undefined);

// Where the remark that closes the part opens; undefined where there is none, or it may say more of the change.
const bracketBehind = ({ tokens }: Reader, { start, end }: Part): number | undefined => {
  if (tokens[end - 1]?.text !== ')') return undefined;
  let open = end - 2;
  while (open > start && tokens[open]?.text !== '(') open -= 1;
  const inside = tokens.slice(open + 1, end - 1);
  // A number alone may be the new one: "bouts: 14 (12)".
  const tells = inside.filter(({ kind, number }) => kind === 'word' && number === undefined).length >= 2;
  return open > start + 2 && tells && !inside.some(value) ? open : undefined;
};

/** The change with the remark behind it left to nobody. `read` reads a part. */
export const besideBracket = (reader: Reader, part: Part, read: (part: Part) => readonly Finding[]): readonly Finding[] => {
  const open = bracketBehind(reader, part);
  const before = open === undefined ? [] : read({ ...part, end: open });
  return open !== undefined && before.some(({ facts }) => facts !== undefined) ? [...before, { start: open, end: part.end }] : read(part);
};
