// What follows from the studio's region when it has not chosen otherwise.

import type { StudioSettings } from './settings.ts';

/** Writes month before day. Others write the day first. */
const monthFirst = new Set(['US', 'CA', 'PH']);

/** Says "boutonniere" where others say "buttonhole". */
const boutonnieres = new Set(['US', 'CA']);

export const dayFirst = (settings: StudioSettings): boolean => settings.dayFirst ?? !monthFirst.has(settings.region);

export const says = (settings: StudioSettings): 'buttonhole' | 'boutonniere' =>
  settings.says ?? (boutonnieres.has(settings.region) ? 'boutonniere' : 'buttonhole');
