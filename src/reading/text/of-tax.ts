// Whether a word is of a tax.

import type { Token } from './token.ts';

/** "vat", "tax": the tax itself. */
export const namesTax = (token: Token | undefined): boolean =>
  token !== undefined && (token.means['taxName'] !== undefined || token.means['taxWord'] !== undefined);

/** "vat", "inc", "plus": the tax, or how a price stands to it. */
export const tellsOfTax = (token: Token | undefined): boolean =>
  namesTax(token) || token?.means['included'] !== undefined || token?.means['onTop'] !== undefined;
