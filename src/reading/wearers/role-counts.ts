// What a wearer is called, one or several, and how many a word stands for by itself: one groom, two mums.

import type { Token } from '../text/token.ts';
import { roles } from '../words/people-words.ts';

export const nameOf = (one: string, count: number): string => {
  const role = roles.find((each) => each.one === one);
  return role === undefined ? one : count > 1 ? role.many : role.one;
};

/** One of those: an usher of "ushers". */
export const oneOf = (many: string): string => roles.find((each) => each.many === many)?.one ?? many;

export const pairs = new Set(['dads', 'fathers', 'mums', 'moms', 'mothers', 'mams', 'papas']);
const plural = /(men|s|children)$/;

/** How many a role stands for by itself: one groom, two mums; unknown for several. */
export const countFor = (text: string, said: number | undefined, both: boolean): number | undefined => {
  if (said !== undefined) return said;
  if (both || pairs.has(text)) return 2;
  const role = roles.find((each) => each.said.includes(text));
  if (role === undefined || role.one === 'rest') return undefined; // "everyone else" may be any number
  return text !== role.one &&
    plural.test(text) &&
    !/(ss|brides?)$/.test(text) &&
    role.many !== role.one &&
    role.said.includes(text) &&
    text !== 'boss' &&
    isPlural(text)
    ? undefined
    : 1;
};
export const isPlural = (text: string): boolean =>
  /(men|s|children|parents|kids)$/.test(text) && !/(ss|bros|moms?)$/.test(text.slice(0, -1)) && !/^(sis|cors|poppy|pops|boss)$/.test(text);

/** "both sets of parents" are four; how many two sets of others are is not known. */
export const inSets = (tokens: readonly Token[], role: Token): number | undefined =>
  !tokens.some(({ text }) => text === 'sets') ? 1 : /^(grand)?parents$/.test(role.text) ? 2 : undefined;

/** "his twin brothers" are two; "2 sets of twin nephews" are not counted here. */
export const bornTogether = (tokens: readonly Token[], role: Token): number | undefined => {
  const at = tokens.findIndex(({ text }) => text === 'twin' || text === 'triplet');
  if (at < 0 || !isPlural(role.text) || tokens.slice(0, at).some(({ text }) => text === 'of')) return undefined;
  return tokens[at]?.text === 'twin' ? 2 : 3;
};

/** "his parents", "the bride's parents" are two; of "parents" by itself it is not said whose they are. */
export const parentsOf = (tokens: readonly Token[], role: Token): number | undefined =>
  role.text === 'parents' && tokens.some(({ text, means }) => /^(his|her)$/.test(text) || /^(bride|groom)$/.test(means['owner'] ?? ''))
    ? 2
    : undefined;

// "groom + 3 FOB celebrant": nobody has three fathers.
export const onlyOne = (token: Token, number: Token | undefined): boolean =>
  /^(fob|fog|mob|mog|((father|mother|dad|mum|mom) of the .+))$/.test(token.text) && Number(number?.number?.amount) > 2;

export const openEnded = (next: Token | undefined): boolean =>
  next === undefined || next.number?.form === 'plain' || /^(\+|,|and|&|n|plus|maybe|or|perhaps|possibly|to)$/.test(next.text);
