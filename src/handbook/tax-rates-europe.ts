// VAT on cut flowers and what is made of them: one rate in Britain, and in Ireland, Germany, France and the Netherlands a lower one
// for fresh material. A mixed piece has no row there: which part rules is a question for the studio. Start days are from memory.

import type { Material } from './pieces.ts';
import type { TaxRate } from './tax-rate.ts';
import { bloemenplan, blumenhandel, bofipHorticulture, gardenCentres, kamervraag, vfood3520 } from './tax-sources.ts';

const notFresh: readonly Material[] = ['dried', 'preserved', 'artificial'];
const vat = (name: string, rate: string) => [{ name, rate }];

export const ratesOfEurope: readonly TaxRate[] = [
  { regime: 'GB', parts: vat('VAT', '20'), from: '2011-01-04', status: 'law', source: vfood3520 },

  { regime: 'IE', materials: ['fresh'], parts: vat('VAT', '13.5'), from: '2003-01-01', status: 'law', source: gardenCentres },
  {
    regime: 'IE',
    materials: notFresh,
    parts: vat('VAT', '23'),
    from: '2012-01-01',
    status: 'law',
    source: gardenCentres,
    note: 'The rate is published for dried and artificial flowers; preserved ones are taken here as dried.',
  },

  {
    regime: 'DE',
    materials: ['fresh'],
    parts: vat('MwSt', '7'),
    from: '2007-01-01',
    status: 'law',
    source: blumenhandel,
    note: 'The lower rate is for fresh flowers and foliage; a piece whose wire, pins and ribbon outweigh them may take 19 %.',
  },
  {
    regime: 'DE',
    materials: notFresh,
    parts: vat('MwSt', '19'),
    from: '2007-01-01',
    status: 'law',
    source: blumenhandel,
    note: 'The lower rate names fresh flowers alone, so these are taken at the full rate.',
  },

  {
    regime: 'FR',
    materials: ['fresh'],
    parts: vat('TVA', '10'),
    from: '2014-01-01',
    status: 'law',
    source: bofipHorticulture,
    note: 'Made-up pieces whose work outweighs their flowers take 20 %.',
  },
  {
    regime: 'FR',
    materials: notFresh,
    parts: vat('TVA', '20'),
    from: '2014-01-01',
    status: 'law',
    source: bofipHorticulture,
    note: 'The lower rate is for flowers as they were grown, so these are taken at the full rate.',
  },

  {
    regime: 'NL',
    materials: ['fresh'],
    parts: vat('btw', '9'),
    from: '2019-01-01',
    status: 'law',
    source: kamervraag,
    note: 'Made-up pieces are generally taxed at 21 %.',
  },
  {
    regime: 'NL',
    materials: notFresh,
    parts: vat('btw', '21'),
    from: '2012-10-01',
    status: 'law',
    source: kamervraag,
    note: 'The lower rate is for cut flowers, so these are taken at the full rate.',
  },
  { regime: 'NL', materials: ['fresh'], parts: vat('btw', '21'), from: '2028-01-01', status: 'plan', source: bloemenplan },
];
