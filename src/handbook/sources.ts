// Where a figure or a caution of the handbook was read, and how much weight it bears. Shown beside the figure, so nobody takes a blog for a law.

export type Grade =
  | 'official' // government, university, standard or law
  | 'textbook' // journal, school of floristry, grower body
  | 'trade' // supplier, grower or working florist
  | 'unattributed' // an unsigned page: only shows that others say so too
  | 'common practice'; // florists do it; no published source

export interface Source {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number; // left out where the page shows none
  readonly address: string;
  readonly grade: Grade;
}

/** A source in the order it is quoted. */
export const source = (grade: Grade, title: string, publisher: string, address: string, year?: number): Source => ({
  title,
  publisher,
  address,
  grade,
  ...(year === undefined ? {} : { year }),
});

export const commonPractice: Source = {
  title: 'common practice, no source',
  publisher: '',
  address: '',
  grade: 'common practice',
};

/** How a source is named beside its figure: "Drying Flowers, Iowa State University Extension, 1998 (official)". */
export const sourceLine = (source: Source): string =>
  source.grade === 'common practice'
    ? source.title
    : `${[source.title, source.publisher, ...(source.year === undefined ? [] : [source.year])].join(', ')} (${source.grade})`;

const weight: readonly Grade[] = ['official', 'textbook', 'trade', 'unattributed', 'common practice'];

/** The strongest grade among these sources; no source at all is common practice. */
export const bestGrade = (sources: readonly Source[]): Grade =>
  weight.find((grade) => sources.some((source) => source.grade === grade)) ?? 'common practice';
