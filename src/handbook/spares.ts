// What to have over. Published figures are few: 20 % on fresh stems, twice the need of what is dried at home; no source gives a percentage of finished pieces.

import { commonPractice, type Source } from './sources.ts';

export interface Spare {
  readonly of: 'fresh stems' | 'home-dried stems' | 'finished pieces';
  readonly percent?: number;
  readonly pieces?: number; // for each wearers' list
  readonly source: Source;
}

const flowerFarm: Source = {
  title: 'How many stems: 20 % over in each category',
  publisher: 'flower farm',
  year: 2014,
  address: 'http://fernwoodfarmllc.com/howmany.htm',
  grade: 'trade',
};
const purdue: Source = {
  title: 'HO-31 How to dry plant material: collect about twice what you need',
  publisher: 'Purdue University Extension',
  year: 1965,
  address: 'http://e-archives.lib.purdue.edu/cdm/compoundobject/collection/AESmimeoHO/id/771/rec/6',
  grade: 'official',
};

export const spares: readonly Spare[] = [
  { of: 'fresh stems', percent: 20, source: flowerFarm },
  { of: 'home-dried stems', percent: 100, source: purdue },
  { of: 'finished pieces', pieces: 1, source: commonPractice }, // and one more for the groom where photographs come long before the ceremony
];
