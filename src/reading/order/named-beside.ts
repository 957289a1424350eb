// Somebody named before so many others with their piece: "groom, 4 ushers bouts £12 each, 2 mums corsages £28 each". He wears one too, so the four are not all.

import type { Reader } from '../phrase.ts';
import { isCount } from '../text/token.ts';
import type { Mention } from './mention.ts';

const links = /^([,&+]|and|plus|n)$/;
const opens = /^([,&+.;:(-]|and|plus|n|the|our|for|1)$/;

/** Whether a counted line leaves out one who is named right before it and whom nobody has read. */
export const leavesOutNamed = (reader: Reader, { start, index, countIndex }: Mention): boolean => {
  const { tokens } = reader;
  if (countIndex !== start) return false;
  // "2 mums 2 nans corsages at 9": those two wear one as well.
  const linked = links.test(tokens[start - 1]?.text ?? '');
  const at = linked ? start - 2 : start - 1;
  const named = tokens[at];
  const before = tokens[at - 1];
  const worn = tokens.slice(start + 1, index).some(({ means }) => means['role'] !== undefined);
  return (
    worn &&
    named?.means['role'] !== undefined &&
    named.means['role'] !== 'rest' &&
    named.means['piece'] === undefined &&
    reader.free(at) &&
    (before === undefined ||
      (!linked && (isCount(before) || before.means['role'] !== undefined)) ||
      before.kind === 'line' ||
      opens.test(before.text))
  );
};
