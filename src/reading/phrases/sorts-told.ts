// The sort of the corsages a thread holds: "half wrist half pin on". It goes before the recipes, which would put half a pin into each.

import { sortOfThose } from '../changes/sort-of-those.ts';
import type { Phrase } from '../phrase.ts';

export const sortsTold: Phrase = {
  name: 'sorts told',
  examples: [],
  find: (reader) =>
    reader.context.pieces.length === 0
      ? []
      : reader
          .untouched()
          .slice(0, 20)
          .flatMap((part) => sortOfThose(reader, part) ?? []),
};
