// Hours in water before fresh material may be wired.

import type { Source } from './sources.ts';

export interface ConditioningRow {
  readonly plant?: string; // left out: nearly every flower and leaf
  readonly least: number; // hours
  readonly most: number;
  readonly note?: string;
  readonly source: Source;
}

const flowerLibrary: Source = {
  title: 'Flower Library: care and handling',
  publisher: 'Floral Design Institute',
  address: 'https://www.floraldesigninstitute.com/blogs/resources-flower-library',
  grade: 'textbook',
};
const bestPractices: Source = {
  title: 'Best Practices for Fresh Cut Flowers',
  publisher: 'Perishable News',
  address: 'https://www.perishablenews.com/floral/best-practices-for-fresh-cut-flowers/',
  grade: 'textbook',
};
const gypsophilaPage: Source = {
  title: 'Cut flower of the month: gypsophila',
  publisher: 'Super Floral Retailing',
  year: 2011,
  address: 'http://superfloralretailing.com/issues/2011/05/cutflower.html',
  grade: 'textbook',
};
const dryShipped: Source = {
  title: 'Mini carnation: handling on arrival',
  publisher: 'wholesaler',
  address: 'https://cfpwholesale.com/product-page/mini-carnation',
  grade: 'trade',
};
const studioRoutine: Source = {
  title: 'Studio routine for wedding flowers',
  publisher: 'florist',
  year: 2019,
  address: 'http://www.techniques4flowers.com/blog/archives/03-2019',
  grade: 'trade',
};
export const conditioningRows: readonly ConditioningRow[] = [
  { least: 2, most: 2, note: 'in water with flower food, before storage or use', source: flowerLibrary },
  { least: 1, most: 3, note: 'at room temperature, longer if cold', source: bestPractices },
  { least: 8, most: 12, note: 'or overnight', source: studioRoutine },
  { plant: 'gypsophila', least: 2, most: 2, note: 'at least', source: gypsophilaPage },
  { plant: 'carnation', least: 4, most: 4, note: 'at least, when shipped dry', source: dryShipped },
];

/** The span of the general rows, in hours. Planned as overnight: material in by the working day before it is wired. */
export const conditioningHours = { least: 2, most: 12, rows: conditioningRows.filter((row) => row.plant === undefined) } as const;
