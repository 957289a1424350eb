// "groom + 3", "best man and 4 lads": so many more men behind the one named, whom nobody names.

import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { firstWhere, isSingle, roughly, type Token } from '../text/token.ts';
import { nameOf, onlyOne } from './role-counts.ts';
import { andMore } from './wearer-words.ts';
import type { Entry } from './wearers-read.ts';

// "groom and 3 ushers", "groom + 2 in bouts": what stands behind the number says whose or what it is.
const goesOn = (next: Token | undefined, count: Token): boolean =>
  !(next?.means['role'] === undefined || onlyOne(next, count)) ||
  next?.means['piece'] !== undefined ||
  /^(in|with|w|wearing|get|have|having|getting|all|for|x|each)$/.test(next?.text ?? '');

const named = /^(men|lads|guys|boys|groomsmen)$/;

/** The men behind the wearer `role`, wearing what was named last, and where they end; unsure where they are a range or a choice of people unnamed. */
export const menBehind = (
  { tokens }: Reader,
  { start, end: index }: Stretch,
  end: number,
  role: string,
  worn: Entry['piece'],
): { readonly entry: Entry; readonly end: number } | 'unsure' | undefined => {
  // "groom (+3)"
  const open = firstWhere(tokens, start, index, ({ text }) => text === '(');
  const inside = open < 0 ? undefined : andMore.at(tokens, open + 1, index);
  // "groom (+2) bouts": what they wear stands behind the bracket.
  const within = inside !== undefined && [inside.end - 1, inside.end].some((at) => tokens[at]?.text === ')') ? inside : undefined;
  const more = within ?? andMore.at(tokens, index, end);
  const next = tokens[more?.end ?? 0];
  if (more?.kept['n'] === undefined || !/^(groom|best man)$/.test(role) || (within === undefined && goesOn(next, more.kept['n'])))
    return undefined;
  const { number } = more.kept['n'];
  const most = number?.max;
  // "groom + 5 or 6 groomsmen" is asked; in "groom (+2-3)" nobody says that they are men.
  if (!isSingle(number) && (most === undefined || !named.test(tokens[more.end - 1]?.text ?? ''))) return 'unsure';
  const count = Number(number?.amount);
  return {
    entry: {
      at: more.start,
      wearer: nameOf('groomsman', count),
      count,
      ...(most === undefined ? {} : { most: Number(most) }),
      ...roughly(more.kept['n']),
      ...(worn === undefined ? {} : { piece: worn }),
    },
    end: Math.max(index, more.end),
  };
};
