// "groom + 3", "best man and 4 lads": so many more men behind the one named, whom nobody names.

import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { firstWhere, isSingle } from '../text/token.ts';
import type { Entry } from './read-wearers.ts';
import { nameOf, onlyOne } from './role-counts.ts';
import { andMore } from './wearer-words.ts';

/** The men behind the wearer `role`, wearing what was named last, and where they end; unsure where they are a range or a choice. */
export const menBehind = (
  { tokens }: Reader,
  { start, end: index }: Stretch,
  end: number,
  role: string,
  worn: Entry['piece'],
): { readonly entry: Entry; readonly end: number } | 'unsure' | undefined => {
  // "groom (+3)"
  const open = firstWhere(tokens, start, index, ({ text }) => text === '(');
  const within = open < 0 ? undefined : andMore.at(tokens, open + 1, index);
  const more = within?.end === index ? within : andMore.at(tokens, index, end);
  const next = tokens[more?.end ?? 0];
  if (
    more?.kept['n'] === undefined ||
    !/^(groom|best man)$/.test(role) ||
    !(next?.means['role'] === undefined || onlyOne(next, more.kept['n'])) ||
    next?.means['piece'] !== undefined ||
    /^(in|with|w|wearing|get|have|having|getting|all|for|x|each)$/.test(next?.text ?? '')
  )
    return undefined;
  if (!isSingle(more.kept['n'].number)) return 'unsure';
  const count = Number(more.kept['n'].number.amount);
  return {
    entry: { at: more.start, wearer: nameOf('groomsman', count), count, ...(worn === undefined ? {} : { piece: worn }) },
    end: more.end,
  };
};
