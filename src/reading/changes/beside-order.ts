// "12 bouts at 14 incl gst, sorry excl": only the basis or the material of what is ordered in the same breath is put right, and the order stands.

import type { Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import { isCount, type Token } from '../text/token.ts';
import type { Zones } from './two-zones.ts';

const tags = ['included', 'onTop', 'taxName', 'taxWord', 'material'];

/** The tokens of the change alone, where counted pieces stand in what it takes back. */
export const besideOrder = (tokens: readonly Token[], part: Part, zones: Zones, facts: readonly Unworded[]): number[] | undefined => {
  const [turned, second] = zones.old;
  if (turned === undefined || second !== undefined || turned[0] !== part.start) return undefined;
  if (facts.some((fact) => fact.fact !== 'change' || (fact.what !== 'tax' && fact.what !== 'material'))) return undefined;
  const before = tokens.slice(...turned);
  if (!before.some(isCount) || !before.some(({ means }) => means['piece'] !== undefined)) return undefined;
  return placesIn(part).filter((index) => index >= turned[1] || tags.some((tag) => tokens[index]?.means[tag] !== undefined));
};

/** "8 bouts, sorry 12 each": the old number counts pieces, and the new one is a price, so what became of the eight is not said. */
export const countForPrice = (tokens: readonly Token[], { old }: Zones, facts: readonly Unworded[]): boolean =>
  facts.some(
    (fact) =>
      fact.fact === 'change' &&
      fact.what === 'price' &&
      fact.from !== undefined &&
      old.some(([from, to]) =>
        tokens.slice(from, to).some((token, at) => {
          const kind = tokens[from + at + (tokens[from + at + 1]?.means['material'] === undefined ? 1 : 2)];
          return isCount(token) && token.number?.amount === String(fact.from) && kind?.means['piece'] !== undefined;
        }),
      ),
  );
