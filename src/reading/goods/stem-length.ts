// "roses 40cm 90c": how long their stems are, and no size of what is sold. Ribbon and wire are sold by their length.

import type { Token } from '../text/token.ts';
import type { PackSize } from './pack-size.ts';

const soldByLength =
  /ribbon|wire|tape|twine|lace|cord|raffia|elastic|tulle|hessian|string|thread|velvet|garland|chain|burlap|chiffon|jute|wrap|tube|pin|comb|clip|band/;

interface Pack extends PackSize {
  readonly used: readonly number[];
}

// "wire 24g £4 a reel": how thick it is. Wire is sold in 50 g and more.
const isGauge = (pack: Pack, tokens: readonly Token[]): boolean =>
  pack.unit === 'g' &&
  (pack.size ?? 0) >= 16 &&
  (pack.size ?? 0) <= 34 &&
  tokens.some(({ means }) => /wire/.test(means['ingredient'] ?? ''));

/** The pack without a size that is no more than the length of a stem, or the gauge of a wire. */
export const withoutStemLength = (pack: Pack, tokens: readonly Token[]): Pack => {
  if (
    !isGauge(pack, tokens) &&
    (!/^(cm|mm|in)$/.test(pack.unit ?? '') || tokens.some(({ means }) => soldByLength.test(means['ingredient'] ?? '')))
  )
    return pack;
  const { size: _size, unit: _unit, ...unsized } = pack;
  return unsized;
};
