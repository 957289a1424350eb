// The units packs are sold and recipes are cut in. Lengths are exact: the international yard is 0.9144 m by definition, so no length is ever rounded here.

import { type Decimal, decimal } from '../values/decimal.ts';

/**
 * Metres in one of each, exactly. Yard, foot and inch: the international yard and pound agreement, Federal Register 59-5442 (US National Bureau of
 * Standards, 1959) and the UK Weights and Measures Act 1963; restated in NIST Special Publication 811 appendix B (2008). From memory.
 */
const metresIn = {
  m: decimal('1'),
  cm: decimal('0.01'),
  mm: decimal('0.001'),
  yd: decimal('0.9144'),
  ft: decimal('0.3048'),
  in: decimal('0.0254'),
} as const;

export type LengthUnit = keyof typeof metresIn;

/** What the size of a pack counts: things, a length, or a weight. */
export type Unit =
  | { readonly measure: 'count'; readonly name: string } // stem, pin, card…
  | { readonly measure: 'length'; readonly name: LengthUnit }
  | { readonly measure: 'weight'; readonly name: 'g' | 'kg' | 'oz' | 'lb' };

export const stem: Unit = { measure: 'count', name: 'stem' };

const words: Readonly<Record<LengthUnit | 'g' | 'kg' | 'oz' | 'lb', readonly string[]>> = {
  m: ['m', 'mtr', 'mtrs', 'metre', 'metres', 'meter', 'meters'],
  cm: ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  yd: ['yd', 'yds', 'yard', 'yards'],
  ft: ['ft', 'foot', 'feet', "'"],
  in: ['in', 'ins', 'inch', 'inches', '"', '”'],
  g: ['g', 'gram', 'grams', 'gramme', 'grammes'],
  kg: ['kg', 'kilo', 'kilos', 'kilogram', 'kilograms'],
  oz: ['oz', 'ounce', 'ounces'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
};
const weights = new Set(['g', 'kg', 'oz', 'lb']);

const measured = new Map<string, Unit>(
  Object.entries(words).flatMap(([name, said]) =>
    said.map((word) => [word, { measure: weights.has(name) ? 'weight' : 'length', name } as Unit] as const),
  ),
);

/** Things counted one by one, as price lists name them; each maps to the word we show. */
const counted = new Map<string, string>([
  ...['stem', 'stems', 'st', 'stm', 'each', 'ea', 'piece', 'pieces', 'pc', 'pcs', 'unit', 'units'].map((word) => [word, 'stem'] as const),
  ...[
    'head',
    'bloom',
    'floret',
    'tip',
    'sprig',
    'twig',
    'pin',
    'magnet',
    'card',
    'bag',
    'sheet',
    'stick',
    'wire',
    'length',
    'clip',
    'comb',
    'band',
  ].flatMap((word) => [[word, word] as const, [`${word}s`, word] as const]),
  ['leaf', 'leaf'],
  ['leaves', 'leaf'],
]);

const containers = new Map<string, string>(
  [
    'bunch',
    'box',
    'pack',
    'packet',
    'bundle',
    'wrap',
    'tray',
    'bucket',
    'bag',
    'spool',
    'roll',
    'reel',
    'bolt',
    'hank',
    'sheaf',
    'case',
  ].flatMap((word) => [[word, word] as const, [/(x|ch|s)$/.test(word) ? `${word}es` : `${word}s`, word] as const]),
);

/** Containers that hold one length rather than a number of things. */
const wound = new Set(['spool', 'roll', 'reel', 'bolt', 'hank']);

const tidy = (word: string): string => word.trim().toLowerCase().replace(/\.$/, '');

/** The unit a word means; undefined for a container ("bunch") or an unknown word. */
export const readUnit = (word: string): Unit | undefined => {
  const known = measured.get(tidy(word));
  if (known !== undefined) return known;
  const name = counted.get(tidy(word));
  return name === undefined ? undefined : { measure: 'count', name };
};

/** The container a word means: bunch, box, spool… */
export const readContainer = (word: string): string | undefined => containers.get(tidy(word));

export const isWound = (container: string): boolean => wound.has(container);

/** A length in metres, exactly. */
export const inMetres = (length: Decimal, unit: LengthUnit): Decimal => length.times(metresIn[unit]);

/** Metres as a number of this unit. Exact for m, cm and mm; for yd, ft and in to forty digits. */
export const fromMetres = (metres: Decimal, unit: LengthUnit): Decimal => metres.div(metresIn[unit]);
