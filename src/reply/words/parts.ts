// The parts of a price by the words the tables use.

import type { WorkingLine } from '../../pricing/working.ts';

const names: { readonly [part in WorkingLine['part']]: string } = {
  price: 'Client pays',
  tax: 'Tax',
  exTax: 'Before tax',
  labour: 'Labour',
  product: 'Product',
  wholesale: 'Wholesale',
  sundries: 'Sundries',
  stems: 'Stems',
  'head maths': 'In your head',
};

export const partName = (part: WorkingLine['part']): string => names[part];
