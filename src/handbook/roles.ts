// The part an ingredient plays in a piece. Focal, line, texture, foliage and filler are the trade's own words; sundry is everything that is not plant.

export const roles = ['focal', 'line', 'texture', 'foliage', 'filler', 'sundry'] as const;
export type Role = (typeof roles)[number];
export type PlantRole = Exclude<Role, 'sundry'>;
export const plantRoles = ['focal', 'line', 'texture', 'foliage', 'filler'] as const satisfies readonly PlantRole[];

// Common practice, no source: how price lists and florists name the same five parts.
const said: Readonly<Record<Role, readonly string[]>> = {
  focal: ['focal', 'focals', 'focus', 'feature', 'main', 'main flower', 'face', 'face flower', 'mass'],
  line: ['line', 'linear', 'height', 'movement'],
  texture: ['texture', 'textural', 'secondary', 'accent', 'seed head', 'seedhead', 'pod', 'berry'],
  foliage: ['foliage', 'green', 'greens', 'greenery', 'leaf', 'leaves', 'backing'],
  filler: ['filler', 'fillers', 'filling'],
  sundry: [
    'sundry',
    'sundries',
    'hard goods',
    'hardgoods',
    'ribbon',
    'wire',
    'tape',
    'pin',
    'pins',
    'magnet',
    'card',
    'packaging',
    'supplies',
    'mechanics',
  ],
};
const byWord = new Map(Object.entries(said).flatMap(([role, words]) => words.map((word) => [word, role as Role] as const)));

export const readRole = (word: string): Role | undefined => byWord.get(word.trim().toLowerCase());

/** Words that make an item a sundry when its price list gives no role. Common practice, no source. */
const sundryWord =
  /\b(ribbon|wire|tape|pins?|magnets?|cards?|twine|raffia|lace|elastic|bands?|headbands?|wristlets?|bracelets?|combs?|clips?|glue|box(es)?|bags?|tissue|cellophane|labels?|backing)\b/i;

export const soundsLikeSundry = (name: string): boolean => sundryWord.test(name);
