// How early a finished piece may be made and by when it must be on its board, by material and piece. Windows are ranges: the usual value is planned with,
// the ends are shown. No published figure says how many weeks early a dried piece may be made, so that one is derived and says so.

import type { Material, PieceKind } from './pieces.ts';
import { commonPractice, type Source } from './sources.ts';

/** How a planning value came about: read in sources, worked out from them, or plain practice. */
export type Basis = 'published' | 'derived' | 'common practice';

export interface HoursAhead {
  readonly least: number;
  readonly usual: number;
  readonly most: number;
  readonly basis: Basis;
  readonly sources: readonly Source[];
}

const shopPanel: Source = {
  title: 'Expert discussion panels 6 and 50: boutonnieres the day before, or two days before, bagged and misted',
  publisher: 'working florists, North America',
  year: 2014,
  address: 'https://www.botanicalbrouhaha.com/botanical-brouhaha-expert-discussion-panel-no-50/',
  grade: 'trade',
};
const personalFlowers: Source = {
  title: 'Keeping personal flowers fresh: corsages and crowns last, on the day before',
  publisher: 'trade course',
  address: 'https://education.teamflower.org/learn/design/ssl/4-of-the-top-best-practices-for-keeping-personal-flowers-fresh',
  grade: 'trade',
};
const corsageFridge: Source = {
  title: 'How to keep corsages fresh: not more than a day before, refrigerated 24 hours at most',
  publisher: 'garden page',
  address: 'https://gardenguides.com/12002269-how-to-keep-corsages-fresh.html',
  grade: 'unattributed',
};
const driedYear: Source = {
  title: 'The art of dried flowers: an arrangement lasts a year or more with a little care',
  publisher: 'Victoria County Master Gardeners, Texas',
  year: 2008,
  address: 'https://www.vcmga.org/2008_Aug07',
  grade: 'official',
};
const preservedLong: Source = {
  title: 'CIR495 Drying and Preserving Plant Materials: close to indefinite with light care; corsages named as a use',
  publisher: 'University of Florida IFAS Extension',
  year: 2020,
  address: 'https://edis.ifas.ufl.edu/publication/ep004',
  grade: 'official',
};
const silkAnyTime: Source = {
  title: 'How to make a boutonniere: fresh the night before, silk at any time',
  publisher: 'wedding flower page',
  year: 2009,
  address: 'http://howtoweddingflowers.blogspot.com/2009/07/how-to-make-boutonniere.html',
  grade: 'unattributed',
};

const freshButtonhole: HoursAhead = { least: 3, usual: 24, most: 48, basis: 'published', sources: [shopPanel] };
const freshCorsage: HoursAhead = { least: 3, usual: 24, most: 24, basis: 'published', sources: [personalFlowers, corsageFridge] };

/** How long before the event a fresh piece, or the fresh part of a mixed one, may be made. */
export const freshHoursAhead: { readonly [piece in PieceKind]: HoursAhead } = {
  buttonhole: freshButtonhole,
  corsage: freshCorsage,
  'wrist corsage': freshCorsage,
  'pin corsage': freshCorsage,
  'flower crown': freshCorsage,
  'hair flower': freshCorsage,
  unspecified: freshCorsage, // the tightest of them, until somebody says which
};

export interface DaysAhead {
  readonly opens: number; // calendar days before the event
  readonly boarded: number; // working days before the event or an earlier hand-over
  readonly basis: Basis;
  readonly sources: readonly Source[];
}

/** Work that keeps: dried pieces last a year or more, so eight weeks in a dark, dry box are safe. */
export const keepingDaysAhead: { readonly [material in Exclude<Material, 'fresh'>]: DaysAhead } = {
  dried: { opens: 56, boarded: 2, basis: 'derived', sources: [driedYear, preservedLong] },
  preserved: { opens: 56, boarded: 2, basis: 'derived', sources: [preservedLong] },
  mixed: { opens: 56, boarded: 2, basis: 'derived', sources: [driedYear, preservedLong] }, // of its base
  artificial: { opens: 56, boarded: 2, basis: 'common practice', sources: [silkAnyTime, commonPractice] },
};

/** Fresh work for an event after noon is boarded this long before it is handed over; for a morning event, the evening before. */
export const boardedBeforeHandOver = { hours: 2, source: commonPractice } as const;
/** When nobody says, an afternoon or evening event is handed over this long before it starts. */
export const handOverBeforeEvent = { hours: 2, source: commonPractice } as const;
/** Share of a day's bench minutes that a comfortable plan fills; the rest is for the telephone, breakages and a late van. */
export const comfortableShare = { percent: 70, source: commonPractice } as const;
