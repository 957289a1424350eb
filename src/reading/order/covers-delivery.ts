// A price that pays for delivery and the like as well: "£186 including delivery and VAT", "$340 delivered", "delivery and gst included".

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import type { Price } from './price-at.ts';

/** What is done or added beside the pieces, as a pattern. */
export const service =
  '(delivery|deliveries|delivry|postage|post|shipping|freight|courier|setup|set up|setting up|install|installation|pinning|travel|transport|packaging|boxes|p & p)';
const tax = '(<tax>|<taxName>)';
const behind = pattern(
  `(,|-|\\()? (<each>|<all>)? (,|-|\\()? (<included>|w|with|covers|covering|which includes) (${tax} (and|&|\\+|n|,){1,2} (<included>)?)? (the|free)? ${service}`,
);
const then = pattern(`(,|-|\\()? (<included>|w|with) ${tax} (,|and|&|n)? (<included>|with) (the|free)? ${service}`);
const told = pattern(`(,|-|\\()? (${tax} (and|&|\\+|n|,){1,2})? ${service} ((and|&|\\+|n|,){1,2} ${tax})? (is|are|both|all)? <included>`);
const delivered = pattern('(,|-)? delivered');

// "client has £250 max for 15 BH + 2 corsages inc VAT & delivery": said of the only price, wherever it stands.
const anywhere = pattern(`<included> (${tax} (and|&|\\+|n|,){1,2} (<included>)?)? (the|free)? ${service}`);
const notIncluded = /^(not|isn't|isnt|without|never)$/;

/** Whether what is said behind a price makes it pay for these too. */
export const coversService = (tokens: readonly Token[], { index, end }: Price, only: boolean): boolean => {
  const match = only ? anywhere.in(tokens, 0, tokens.length) : undefined;
  if (match !== undefined && !notIncluded.test(tokens[match.start - 1]?.text ?? '')) return true;
  return [index + 1, end].some((from) =>
    [behind, then, told, delivered].some((form) => form.at(tokens, from, tokens.length) !== undefined),
  );
};
