// "6 bridesmaids hair flowers 25 each, 8 bouts 17": those between the number and the kind wear them.

import { isCount, type Token } from '../text/token.ts';
import { nameOf } from '../wearers/role-counts.ts';
import type { Mention } from './mention.ts';

// Words for people who may make them, buy them or be counted with everybody: no wearers of these pieces alone.
const loosely = /^(rest|guest|guests|person|people|family|man|men|woman|women|boy|boys|girl|girls|child|children)$/; // or say what size they are

// "the groom plus six ushers each wearing a buttonhole": the number counts him too.
const countsMore = (tokens: readonly Token[], countIndex: number): boolean => {
  for (let at = countIndex - 1; at >= 0 && at > countIndex - 6; at--) {
    const token = tokens[at];
    if (token === undefined || token.kind !== 'word' || token.number !== undefined || token.means['piece'] !== undefined) return false;
    if (token.means['role'] !== undefined || token.means['owner'] !== undefined) return true;
  }
  return false;
};

const between = (tokens: readonly Token[], { countIndex, index }: Mention): Token | undefined => {
  if (countIndex === undefined || countIndex >= index || !isCount(tokens[countIndex]) || countsMore(tokens, countIndex)) return undefined;
  const [who, another] = tokens
    .slice(countIndex + 1, index)
    .filter(({ means }) => means['role'] !== undefined || means['owner'] !== undefined);
  const role = who?.means['role'];
  return role === undefined || another !== undefined || loosely.test(role) || who?.means['bench'] !== undefined ? undefined : who;
};

/** The pieces with who wears them, where that stands between their number and their kind. */
export const withCountedWearers = (tokens: readonly Token[], mentions: readonly Mention[]): Mention[] =>
  mentions.map((mention) => {
    const who = mention.wearer === undefined && mention.count?.number?.max === undefined ? between(tokens, mention) : undefined;
    return who === undefined ? mention : { ...mention, wearer: nameOf(who.means['role'] ?? '', Number(mention.count?.number?.amount)) };
  });
