// What the vocabulary says a word is: { piece: 'buttonhole' }.

/** All a word can be. */
export const tags = [
  'piece',
  'material',
  'ingredient',
  'pack',
  'role',
  'owner',
  'bench',
  'other',
  'everyday',
  'sheet',
  'weekday',
  'month',
  'each',
  'all',
  'from',
  'upTo',
  'budget',
  'taxName',
  'taxWord',
  'included',
  'onTop',
] as const;
export type Tag = (typeof tags)[number];

/** Every tag has its place, said or not: code made for one shape serves them all, and is not made anew. */
export type Means = Readonly<Record<Tag, string | undefined> & Record<string, string | undefined>>;

export const meansOf = (said: Readonly<Partial<Record<Tag, string | undefined>>>): Means => ({
  piece: said.piece,
  material: said.material,
  ingredient: said.ingredient,
  pack: said.pack,
  role: said.role,
  owner: said.owner,
  bench: said.bench,
  other: said.other,
  everyday: said.everyday,
  sheet: said.sheet,
  weekday: said.weekday,
  month: said.month,
  each: said.each,
  all: said.all,
  from: said.from,
  upTo: said.upTo,
  budget: said.budget,
  taxName: said.taxName,
  taxWord: said.taxWord,
  included: said.included,
  onTop: said.onTop,
});

/** No meaning yet. */
export const none: Means = meansOf({}); // not frozen: that would be another shape

/** The tags a word has. */
export const tagsOf = (means: Means): readonly Tag[] => (means === none ? [] : tags.filter((tag) => means[tag] !== undefined));
