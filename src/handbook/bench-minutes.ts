// How long one piece takes at the bench. Few figures are published and they disagree widely, so each kind keeps its range and the usual value is a planning choice.

import type { PieceKind } from './pieces.ts';
import { commonPractice, type Source } from './sources.ts';

export interface BenchMinutes {
  readonly least: number;
  readonly usual: number; // planned with until a studio says or learns its own
  readonly most: number;
  readonly published: boolean; // false: no published figure was found
  readonly sources: readonly Source[];
}

const schoolContest: Source = {
  title: 'Floriculture event outline: corsage and boutonniere together in 30 minutes',
  publisher: 'Mott-Regent School, North Dakota',
  address: 'https://www.mott.k12.nd.us/Page/395',
  grade: 'textbook',
};
const shopOwner: Source = {
  title: 'Shop owner quoted on prom orders: boutonniere 15-30 minutes, corsage 45-60',
  publisher: 'school newspaper',
  address: 'http://www.onwravens.net/ravendaily/have-you-ordered-your-prom-flowers/',
  grade: 'trade',
};
const shopWorker: Source = {
  title: 'Shop worker: over 5 minutes an item is slow, 45 for a wrist corsage far too slow',
  publisher: 'personal page',
  address: 'https://frogs-of-war.dreamwidth.org/tag/trifecta',
  grade: 'unattributed',
};

const corsage: BenchMinutes = { least: 15, usual: 30, most: 60, published: true, sources: [schoolContest, shopOwner, shopWorker] };
const buttonhole: BenchMinutes = { least: 5, usual: 15, most: 30, published: true, sources: [schoolContest, shopOwner, shopWorker] };

export const benchMinutes: { readonly [piece in PieceKind]: BenchMinutes } = {
  buttonhole,
  corsage,
  'wrist corsage': corsage,
  'pin corsage': corsage,
  'flower crown': { least: 30, usual: 60, most: 120, published: false, sources: [commonPractice] },
  'hair flower': { least: 10, usual: 20, most: 45, published: false, sources: [commonPractice] },
  unspecified: buttonhole, // counted as the smallest piece until somebody says
};

/** Share of a mixed piece's minutes spent on its dried base; the rest adds the fresh part. Common practice, no source. */
export const mixedBaseShare = { dividend: 2, divisor: 3, source: commonPractice } as const;
