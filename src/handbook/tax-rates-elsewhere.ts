// The remaining rates. The United States has no row: every place has its own rate, so the studio sets it. Start days are from memory.

import type { TaxRate } from './tax-rate.ts';
import { calculatingGst, fromMemory, gstAct } from './tax-sources.ts';

export const ratesElsewhere: readonly TaxRate[] = [
  { regime: 'AU', parts: [{ name: 'GST', rate: '10' }], from: '2000-07-01', status: 'law', source: gstAct },
  { regime: 'NZ', parts: [{ name: 'GST', rate: '15' }], from: '2010-10-01', status: 'law', source: calculatingGst },
  { regime: 'ZA', parts: [{ name: 'VAT', rate: '15' }], from: '2018-04-01', status: 'law', source: fromMemory },
  {
    regime: 'IN',
    parts: [{ name: 'GST', rate: '18' }],
    from: '2017-07-01',
    status: 'law',
    source: fromMemory,
    note: 'Flower work may fall under a lower rate: ask your accountant.',
  },
];
