// When two names mean one ingredient: case, spaces, accents and plurals never matter, nor whether a compound is written as one word; a slip in spelling is only ever offered, never taken.

import { distance } from 'fastest-levenshtein';

const alwaysEndInS = /(us|is|ss|as|os)$/; // eucalyptus, clematis, grass, gypsophilas stay one word either way

const singular = (word: string): string => {
  if (word.length < 4 || !word.endsWith('s') || alwaysEndInS.test(word)) return word;
  if (word.endsWith('leaves')) return `${word.slice(0, -6)}leaf`;
  if (word.endsWith('ies') && word.length > 5) return `${word.slice(0, -3)}y`;
  if (/(ch|sh|x)es$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
};

// Names that are written as one word or as two: "waxflower" and "wax flower" are one flower.
const compounds: ReadonlyMap<string, string> = new Map(
  ['wax flower', 'straw flower', 'rice flower', 'flannel flower', 'corn flower', 'sun flower', 'passion flower', 'rose hip', 'rose bud']
    .concat(['gum nut', 'pepper berry', 'snow berry', 'rowan berry', 'bunny tail', 'poppy head', 'leather leaf', 'spray rose'])
    .map((name) => [name.replace(' ', ''), name]),
);

// The words of a name without case, accents, signs and plurals.
const wordsOf = (name: string): string[] =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}.]+/gu, ' ')
    .trim()
    .split(' ')
    .map(singular);

/** The form two names of one ingredient share: "Bunny  Tails", "bunny tail" and "bunnytails". */
export const ingredientKey = (name: string): string =>
  wordsOf(name)
    .map((word) => compounds.get(word) ?? word)
    .join(' ');

export type NameMatch =
  | { readonly match: 'same'; readonly name: string }
  | { readonly match: 'only one'; readonly name: string } // one listed name holds every word said: "eucalyptus" for "eucalyptus parvifolia"; say which was taken
  | { readonly match: 'none'; readonly nearest: readonly string[] };

interface NameIndex {
  readonly byKey: ReadonlyMap<string, string>;
  readonly byWord: ReadonlyMap<string, readonly string[]>;
}

/** Built once a list: costing a recipe many ways looks the same names up again and again. */
const indexes = new WeakMap<readonly string[], NameIndex>();

const indexOf = (listed: readonly string[]): NameIndex => {
  const known = indexes.get(listed);
  if (known !== undefined) return known;
  const byKey = new Map<string, string>();
  const byWord = new Map<string, string[]>();
  for (const name of listed) {
    const key = ingredientKey(name);
    if (!byKey.has(key)) byKey.set(key, name);
    for (const word of new Set(wordsOf(name))) byWord.set(word, [...(byWord.get(word) ?? []), name]);
  }
  indexes.set(listed, { byKey, byWord });
  return { byKey, byWord };
};

/** Finds an ingredient among listed names. `nearest` holds at most three, the closest first, none further than a third of its letters away. */
export const matchIngredient = (said: string, listed: readonly string[]): NameMatch => {
  const key = ingredientKey(said);
  if (key === '') return { match: 'none', nearest: [] };
  const { byKey, byWord } = indexOf(listed);
  const same = byKey.get(key);
  if (same !== undefined) return { match: 'same', name: same };
  const [first = [], ...others] = wordsOf(said).map((word) => byWord.get(word) ?? []);
  const holding = first.filter((name) => others.every((names) => names.includes(name)));
  const [only, another] = holding;
  if (only !== undefined && another === undefined) return { match: 'only one', name: only };
  // "eucalyptus sprig" is cut from the eucalyptus on the list: say which was taken.
  const cutFrom = / sprig$/.test(key) ? byKey.get(key.replace(/ sprig$/, '')) : undefined;
  if (cutFrom !== undefined) return { match: 'only one', name: cutFrom };
  return { match: 'none', nearest: holding.length > 0 ? holding.slice(0, 3) : nearestNames(said, listed) };
};

/** A listed name that this one may be a slip of: the whole of it, a letter in six apart. */
export const slipOf = (said: string, listed: readonly string[]): string | undefined => {
  const key = ingredientKey(said);
  const most = Math.max(1, Math.floor(key.length / 6));
  return listed.find((name) => distance(ingredientKey(name), key) <= most);
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
