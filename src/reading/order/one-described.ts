// "one crown needs 18 more stems", "1 corsage takes ages": told of what one is like, and no order for one.

import type { Token } from '../text/token.ts';
import type { Mention } from './mention.ts';
import { countOf } from './read-order.ts';

const told = /^(needs|takes|uses|has|gets)$/;

export const tellsOfOne = (tokens: readonly Token[], mention: Mention): boolean =>
  mention.countIndex !== undefined &&
  mention.countIndex < mention.index &&
  countOf(mention).count === 1 &&
  told.test(tokens[mention.last + 1]?.text ?? '');
