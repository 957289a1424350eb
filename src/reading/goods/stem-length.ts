// "roses 40cm 90c": how long their stems are, and no size of what is sold. Ribbon and wire are sold by their length;
// millimetres are their width: "lace 25mm £4".

import type { Token } from '../text/token.ts';
import { goodsWithoutStem } from '../words/measure-words.ts';
import type { PackSize } from './pack-size.ts';

interface Pack extends PackSize {
  readonly used: readonly number[];
}

// "wire 24g £4 a reel": how thick it is. Wire is sold in 50 g and more.
const isGauge = (pack: Pack, tokens: readonly Token[]): boolean =>
  pack.unit === 'g' &&
  (pack.size ?? 0) >= 16 &&
  (pack.size ?? 0) <= 34 &&
  tokens.some(({ means }) => /wire/.test(means['ingredient'] ?? ''));

/** The pack without a size that is no more than the length of a stem, a width, or the gauge of a wire. */
export const withoutStemLength = (pack: Pack, tokens: readonly Token[]): Pack => {
  const isLength =
    pack.unit === 'mm' ||
    (/^(cm|in)$/.test(pack.unit ?? '') && !tokens.some(({ means }) => goodsWithoutStem.test(means['ingredient'] ?? '')));
  if (!isGauge(pack, tokens) && !isLength) return pack;
  const { size: _size, unit: _unit, ...unsized } = pack;
  return unsized;
};
