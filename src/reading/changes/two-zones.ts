// The two sides of a correction: the stretches of what is meant now, and those of what was said before.

import type { Token } from '../text/token.ts';
import { wordList } from '../words/word-list.ts';

export interface Zones {
  readonly fresh: readonly (readonly [number, number])[];
  readonly old: readonly (readonly [number, number])[];
}

export const inZones = (zones: readonly (readonly [number, number])[], index: number): boolean =>
  zones.some(([from, to]) => index >= from && index < to);

const tags = wordList(`
  material, piece, weekday, month, included, onTop, each, all, taxName, taxWord
`);
/** Whether it could be one side of a correction. */
export const comparable = (token: Token): boolean => token.number !== undefined || tags.some((tag) => token.means[tag] !== undefined);
