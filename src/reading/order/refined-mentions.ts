// Mentions that say more about the one before them, or sum up the others, and are no lines of their own.

import type { Mention } from './mention.ts';

// "twenty-odd corsages, wrist ones": a second name without a number says more about the first.
/** The mentions that are lines of an order or name a kind. */
export const refined = (mentions: readonly Mention[]): Mention[] => {
  const kept: Mention[] = [];
  for (const mention of mentions) {
    const before = kept.at(-1);
    const near = before !== undefined && mention.start - before.end <= 2;
    if (near && before.kind === 'corsage' && mention.countIndex === undefined && /^(wrist|pin) corsage$/.test(mention.kind)) {
      kept[kept.length - 1] = { ...before, kind: mention.kind, end: mention.end };
    } else if (
      near &&
      before.countIndex !== undefined &&
      mention.countIndex === undefined &&
      before.kind === 'unspecified' &&
      mention.kind !== 'unspecified'
    ) {
      kept[kept.length - 1] = { ...before, kind: mention.kind, end: mention.end };
    } else kept.push(mention);
  }
  // "50 pieces in all" beside named kinds is their sum, not another order.
  const named = kept.filter((mention) => mention.countIndex !== undefined && mention.kind !== 'unspecified');
  return named.length > 0 ? kept.filter((mention) => mention.kind !== 'unspecified') : kept;
};
