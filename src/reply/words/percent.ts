// A share as people read it: one decimal at most, and a true minus sign.

import type { Decimal } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';

/** "23.1 %", "−4 %". Rounds half up. */
export const percent = (rate: Decimal): string => `${printNumber(rate, 1).replace('-', '−')} %`;
