// How long plants take to dry, by method and plant, each row as its source printed it. Sources disagree, and a damp room slows drying three or four times,
// so the answer is always the span of the rows with a day to begin checking, never an average.

import type { DaysRange } from './days-range.ts';
import * as from from './drying-sources.ts';
import { ingredientKey } from './ingredient-names.ts';
import { plantNamed } from './plants.ts';
import type { Source } from './sources.ts';

export type DryingMethod = 'hang' | 'silica gel' | 'borax' | 'press' | 'glycerine';

export interface DryingRow extends DaysRange {
  readonly plant?: string; // left out: any everlasting or small head
  readonly method: DryingMethod;
  readonly source: Source;
  readonly note?: string;
}

const hang = (plant: string, least: number, most: number, source: Source, note?: string): DryingRow => ({
  plant,
  method: 'hang',
  least,
  most,
  source,
  ...(note === undefined ? {} : { note }),
});

const silica = (least: number, most: number, ...plants: readonly string[]): readonly DryingRow[] =>
  plants.map((plant) => ({ plant, method: 'silica gel', least, most, source: from.silicaList }));

export const dryingRows: readonly DryingRow[] = [
  { method: 'hang', least: 14, most: 21, source: from.iowaDrying, note: 'warm, dark, dry and airy; small banded bunches' },
  { method: 'hang', least: 14, most: 21, source: from.iowaEverlastings },
  { method: 'hang', least: 14, most: 21, source: from.kentuckyDrying },
  { method: 'hang', least: 5, most: 14, source: from.chicagoDrying, note: 'bundles of 6-8 stems in the dark' },
  { method: 'silica gel', least: 3, most: 7, source: from.iowaDrying, note: 'airtight box' },
  { method: 'silica gel', least: 3, most: 8, source: from.iowaPreserving, note: 'airtight box' },
  { method: 'borax', least: 7, most: 14, source: from.iowaDrying, note: 'uncovered box' },
  { method: 'borax', least: 14, most: 21, source: from.iowaPreserving, note: 'with white cornmeal, uncovered' },
  { method: 'press', least: 14, most: 28, source: from.pressCourse, note: 'by size and thickness' },
  { method: 'press', least: 14, most: 21, source: from.chicagoDrying },
  { method: 'glycerine', least: 2, most: 90, source: from.gardenAnswer, note: 'stop when the solution has reached the tips' },
  hang('yarrow', 14, 21, from.iowaEverlastings, 'cut at peak size and colour, heads firm'),
  hang('celosia', 14, 21, from.iowaEverlastings, 'cut at peak colour'),
  hang('globe thistle', 14, 21, from.iowaEverlastings, 'cut blue-grey, before the florets open'),
  hang('globe amaranth', 14, 21, from.iowaEverlastings, 'cut at peak colour'),
  hang('german statice', 14, 21, from.iowaEverlastings, 'cut with all its tiny flowers open'),
  hang('gypsophila', 14, 21, from.iowaEverlastings, 'cut with most flowers open'),
  hang('strawflower', 14, 21, from.iowaEverlastings, 'cut with the outer bracts open, the centre closed'),
  hang('strawflower', 7, 14, from.strawflowerFarm),
  hang('statice', 14, 14, from.staticeFarm, 'about two weeks; in water 12 hours first'),
  hang('lavender', 10, 14, from.lavenderFarm),
  hang('lavender', 7, 21, from.lavenderHouse, 'bundles of 20-30 stems'),
  hang('poppy head', 14, 14, from.poppyGrower, 'about two weeks, picked green'),
  hang('poppy head', 14, 21, from.poppyFlorist, 'until the seeds rattle'),
  hang('poppy head', 30, 30, from.poppyGarden, 'about a month'),
  hang('eucalyptus', 14, 21, from.floristList),
  hang('eucalyptus', 14, 28, from.eucalyptusPage),
  ...['wheat', 'craspedia', 'banksia', 'thistle', 'protea', 'rose'].map((plant) => hang(plant, 14, 21, from.floristList)),
  ...silica(2, 3, 'rose', 'anemone', 'gypsophila', 'larkspur'),
  ...silica(2, 2, 'cornflower', 'ammi'),
  { plant: 'rose', method: 'silica gel', least: 10, most: 10, source: from.silicaList, note: 'thick roses' },
];

export interface DryingTime extends DaysRange {
  readonly plant?: string; // absent: the general range of the method
  readonly by: 'the studio' | 'this plant' | 'the method';
  readonly rows: readonly DryingRow[]; // what the range spans; empty for the studio's own
}

type Own = { readonly [plant: string]: DaysRange };

/** The studio's own days for this plant, by whatever name it used; else the span of the plant's rows; else that of the method. */
export const dryingTime = (plant: string | undefined, method: DryingMethod, own: Own = {}): DryingTime => {
  const named = plant === undefined ? undefined : keyOf(plant);
  const ownDays = Object.entries(own).find(([name]) => named !== undefined && keyOf(name) === named)?.[1];
  if (named !== undefined && ownDays)
    return { least: ownDays.least, most: Math.max(ownDays.least, ownDays.most), plant: named, by: 'the studio', rows: [] };
  const rows = dryingRows.filter((row) => row.method === method && row.plant === named && named !== undefined);
  if (named !== undefined && rows.length > 0) return { ...span(rows), plant: named, by: 'this plant', rows };
  const general = dryingRows.filter((row) => row.method === method && row.plant === undefined);
  return { ...span(general), ...(named === undefined ? {} : { plant: named }), by: 'the method', rows: general };
};

const keyOf = (name: string): string => plantNamed(name) ?? ingredientKey(name);

const span = (rows: readonly DryingRow[]): DaysRange => ({
  least: Math.min(...rows.map((row) => row.least)),
  most: Math.max(...rows.map((row) => row.most)),
});
