// One half of the pieces in each of two materials, however the halves are named: "22 bouts, half of em dried half fresh".

import { pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader } from '../phrase.ts';

// "half of em dried half fresh", "half are fresh, the other half dried"
const ofThem = "(of (them|em|'em|those|these|the lot|it|all))? (is|are|to be|being|in|will be|should be)? (all)?";
const halves = pattern(
  `(half|50%) ${ofThem} <a:material> (flowers|stuff|ones)? (,|and|&|\\+|n|;|-){0,2} (the)? (half|rest|50%|others|other half) ${ofThem} <b:material>`,
);
/** The material of such an order; nothing where more than one kind may be meant. */
export const halvesOf = (reader: Reader): Finding | undefined => {
  if (!reader.tokens.some(({ text }) => text === 'half' || text === '50%')) return undefined;
  const match = halves.in(reader.tokens, 0, reader.tokens.length);
  const [a, b] = [match?.kept['a']?.means['material'], match?.kept['b']?.means['material']];
  if (match === undefined || a === b || (a !== 'fresh' && b !== 'fresh')) return undefined;
  // Of several kinds, whose halves they are is not said.
  if (reader.tokens.filter((token) => token.means['piece'] !== undefined).length !== 1 || !allFree(reader, match.start, match.end))
    return undefined;
  return found(reader, match.start, match.end, [{ fact: 'material', material: 'mixed' }]);
};
