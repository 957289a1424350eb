// Where finished pieces and material wait. Temperatures are degrees Celsius, turned from the printed Fahrenheit to the nearest half degree.

import type { Source } from './sources.ts';

export interface StorageRow {
  readonly plant?: string; // left out: most cut flowers
  readonly least: number;
  readonly most?: number; // left out: no upper end was printed
  readonly daysAtMost?: number;
  readonly source: Source;
}

const page = (slug: string): Source => ({
  title: `Flower Library: ${slug.replaceAll('-', ' ')}`,
  publisher: 'Floral Design Institute',
  address: `https://www.floraldesigninstitute.com/blogs/resources-flower-library/${slug}`,
  grade: 'textbook',
});
const orchidCold: Source = {
  title: 'Orchids: chill damage in four to six hours below 50 F',
  publisher: 'flower-food maker',
  year: 2015,
  address: 'https://www.chrysalflowerfood.com/2015/12/',
  grade: 'trade',
};
const waxSheet: Source = {
  title: 'Floral Library: waxflower (Chain of Life Network)',
  publisher: 'Calyx Flowers',
  address: 'http://www.calyxflowers.com/Floral-Library/Content/Waxflower.aspx',
  grade: 'textbook',
};

export const storageRows: readonly StorageRow[] = [
  { least: 2, most: 3.5, source: page('carnation') }, // 36-38 F
  { plant: 'orchid', least: 10, most: 15.5, source: orchidCold }, // 50-60 F
  { plant: 'stephanotis', least: 5.5, daysAtMost: 7, source: page('stephanotis') }, // 42 F, sealed
  { plant: 'gardenia', least: 0, most: 2, daysAtMost: 14, source: page('gardenia') }, // 32-36 F, high humidity
  { plant: 'waxflower', least: 0, most: 1, daysAtMost: 14, source: waxSheet }, // 32-34 F
  { plant: 'lavender', least: 1, most: 3.5, source: page('lavender') }, // 34-38 F
];

/** No orchid, and no piece with one in it, waits below this. */
export const coldestForOrchids = 10;

/** The rows for this plant of the handbook, else the general one. */
export const storageFor = (plant: string | undefined): readonly StorageRow[] => {
  const own = storageRows.filter((row) => row.plant !== undefined && row.plant === plant);
  return own.length > 0 ? own : storageRows.filter((row) => row.plant === undefined);
};

const moths: Source = {
  title: 'Moths infesting dried flowers (quoting Sheen & Alexander 1996)',
  publisher: 'Richters Questions and Answers',
  year: 2003,
  address: 'https://www.richters.com/show.cgi?page=QandA/Growing/20031230-4.html',
  grade: 'textbook',
};
const sunFades: Source = {
  title: 'Help with Herb Drying in Maryland, p 26: sun bleaches',
  publisher: 'University of Maryland Eastern Shore Extension',
  address: 'https://issuu.com./umes.edu/docs/herb_interactive_mkv38final-3/26',
  grade: 'official',
};

/** How dried work is kept until it is handed over. */
export const keepDried = { where: ['dark', 'dry', 'in a closed box'], sources: [sunFades, moths] } as const;
