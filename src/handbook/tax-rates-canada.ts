// Canada's taxes, always on top of the price: federal GST alone, joined with the province's as HST, or beside PST, RST or QST.
// Québec and Ontario were read; the other provinces and all start days are from memory.

import type { TaxPart, TaxRate } from './tax-rate.ts';
import { cra125136, fromMemory, revenuQuebec } from './tax-sources.ts';

const gst: TaxPart = { name: 'GST', rate: '5' };
const hst = (rate: string): readonly TaxPart[] => [{ name: 'HST', rate }];
const besides = (name: string, rate: string): readonly TaxPart[] => [gst, { name, rate }];

const province = (code: string, parts: readonly TaxPart[], from: string, source = fromMemory): TaxRate => ({
  regime: `CA-${code}`,
  parts,
  from,
  status: 'law',
  source,
});

export const ratesOfCanada: readonly TaxRate[] = [
  {
    regime: 'CA',
    parts: [gst],
    from: '2008-01-01',
    status: 'law',
    source: revenuQuebec,
    note: 'The province of the studio is not set, so its own tax is left out.',
  },
  province('AB', [gst], '2008-01-01'),
  province('NT', [gst], '2008-01-01'),
  province('NU', [gst], '2008-01-01'),
  province('YT', [gst], '2008-01-01'),
  province('ON', hst('13'), '2010-07-01', cra125136),
  province('NB', hst('15'), '2016-07-01'),
  province('NL', hst('15'), '2016-07-01'),
  province('PE', hst('15'), '2016-10-01'),
  province('NS', hst('15'), '2010-07-01'),
  province('NS', hst('14'), '2025-04-01'),
  province('BC', besides('PST', '7'), '2013-04-01'),
  province('SK', besides('PST', '6'), '2017-03-23'),
  province('MB', besides('RST', '7'), '2019-07-01'),
  province('QC', besides('QST', '9.975'), '2013-01-01', revenuQuebec),
];
