// "scrap the 3 crowns, 16 bouts now", "16 bouts now, 4 corsages scrapped": what is wanted, told in words of loss. Nothing of it broke.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const scrap = pattern('scrap (the|those|these|all|our|her|his|both){0,2} (<count>)? (<material>)? <piece>');
// "had to scrap 3 crowns" tells of a loss.
const asks = (before: Token | undefined): boolean =>
  before === undefined ||
  before.kind === 'line' ||
  /^(,|-|;|and|but|so|ok|please|pls|then|now|just|also|no|sorry|actually)$/.test(before.text);
const countNow = pattern(
  '<count> (<material>)? <piece> now (,|-|;|and|but){1,2} (the|those)? <count> (<material>)? <piece> (are|is|have been|been)? scrapped',
);

export const tellsOfOrder = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = scrap.in(tokens, start, end);
  if (match !== undefined && asks(match.start === start ? undefined : tokens[match.start - 1])) return true;
  return countNow.in(tokens, start, end) !== undefined;
};
