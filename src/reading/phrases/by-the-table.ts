// Pieces told by the tables their wearers sit at: "2 tables of 8, a buttonhole each, £9 a head".

import { byTheTable } from '../order/by-the-table.ts';
import type { Phrase } from '../phrase.ts';

export const tablesOf: Phrase = {
  name: 'by the table',
  examples: ['2 tables of 8, a buttonhole each'],
  find: (reader) => {
    const finding = byTheTable(reader);
    return finding === undefined ? [] : [finding];
  },
};
