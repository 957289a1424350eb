// "groom's bout gets 2 roses, groomsmen's get 1 rose": the piece is named once and meant of them all.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Finding, Reader } from '../phrase.ts';

const men = /^(groom|best man|groomsm[ae]n|ushers?|fathers?.*|grandfathers?|page boys?|ring bearers?|brothers?.*|uncles?|sons?.*)$/;

/** The one kind named by any of the wearers' stretches, where the others stand for the same: "the groomsmen's", or men beside a buttonhole. */
export const kindOfAll = ({ tokens }: Reader, stretches: readonly Finding[]): PieceKind | undefined => {
  const kinds = new Set<PieceKind>();
  const bare: Finding[] = [];
  for (const stretch of stretches) {
    const named = tokens
      .slice(stretch.start, stretch.end)
      .flatMap(({ means }) => (means['piece'] !== undefined && means['ingredient'] === undefined ? [means['piece'] as PieceKind] : []));
    for (const kind of named) kinds.add(kind);
    if (named.length === 0) bare.push(stretch);
  }
  const [only, other] = kinds;
  if (only === undefined || only === 'unspecified' || other !== undefined) return undefined;
  const same = bare.every(({ start, end }) =>
    tokens
      .slice(start, end)
      .some(
        ({ means, text }) => means['owner'] !== undefined || text === 'rest' || (only === 'buttonhole' && men.test(means['role'] ?? '')),
      ),
  );
  return same ? only : undefined;
};
