// When two names mean one ingredient: case, spaces, accents and plurals never matter; a slip in spelling is only ever offered, never taken.

import { distance } from 'fastest-levenshtein';

const alwaysEndInS = /(us|is|ss|as|os)$/; // eucalyptus, clematis, grass, gypsophilas stay one word either way

const singular = (word: string): string => {
  if (word.length < 4 || !word.endsWith('s') || alwaysEndInS.test(word)) return word;
  if (word.endsWith('leaves')) return `${word.slice(0, -6)}leaf`;
  if (word.endsWith('ies') && word.length > 5) return `${word.slice(0, -3)}y`;
  if (/(ch|sh|x)es$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
};

/** The form two names of one ingredient share: "Bunny  Tails" and "bunny tail". */
export const ingredientKey = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}.]+/gu, ' ')
    .trim()
    .split(' ')
    .map(singular)
    .join(' ');

export type NameMatch =
  | { readonly match: 'same'; readonly name: string }
  | { readonly match: 'only one'; readonly name: string } // one listed name holds every word said: "eucalyptus" for "eucalyptus parvifolia"; say which was taken
  | { readonly match: 'none'; readonly nearest: readonly string[] };

/** Finds an ingredient among listed names. `nearest` holds at most three, the closest first, none further than a third of its letters away. */
export const matchIngredient = (said: string, listed: readonly string[]): NameMatch => {
  const key = ingredientKey(said);
  const same = listed.find((name) => ingredientKey(name) === key);
  if (same !== undefined) return { match: 'same', name: same };
  const words = key.split(' ');
  const holding = listed.filter((name) => {
    const has = new Set(ingredientKey(name).split(' '));
    return key !== '' && words.every((word) => has.has(word));
  });
  const [only, another] = holding;
  if (only !== undefined && another === undefined) return { match: 'only one', name: only };
  return { match: 'none', nearest: holding.length > 0 ? holding.slice(0, 3) : nearestNames(said, listed) };
};

/** Up to three names that are one slip away, whole or in one of their words. */
export const nearestNames = (said: string, listed: readonly string[]): readonly string[] => {
  const key = ingredientKey(said);
  const most = Math.max(1, Math.floor(key.length / 3));
  return listed
    .map((name) => ({
      name,
      away: Math.min(...[ingredientKey(name), ...ingredientKey(name).split(' ')].map((part) => distance(part, key))),
    }))
    .filter(({ away }) => key !== '' && away <= most)
    .sort((a, b) => a.away - b.away || (a.name < b.name ? -1 : 1))
    .slice(0, 3)
    .map(({ name }) => name);
};
