// The pack that is said of one good and meant for all: "statice 4.80, gyp 5.20 a bunch" has both by the bunch.

import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { findPack, type PackSize } from './pack-size.ts';

/** What none of them has of its own; nothing where each has a pack, or several differ. */
export const commonPack = (reader: Reader, cuts: readonly Stretch[]): PackSize => {
  const packs = cuts.map((cut) => findPack(reader.tokens, cut.start, cut.end));
  // "gerbera 8 each, rose 15, gyp 200 a bunch": one by one, until a bunch is said.
  if (cuts.some((cut) => reader.tokens.slice(cut.start, cut.end).some(({ text }) => text === 'each'))) return {};
  const withPack = packs.filter((pack) => pack.per !== undefined || pack.size !== undefined);
  const [only] = withPack;
  // "gyp 12 a bunch, statice 9": the bunch said first is meant for the others too, its size is not.
  if (withPack.length === 1 && only !== undefined && only === packs[0] && only.per !== undefined && only.per !== 'stem')
    return { per: only.per };
  return withPack.length === 1 && only === packs.at(-1) && only !== undefined
    ? { ...(only.per === undefined ? {} : { per: only.per }), ...(only.size === undefined ? {} : { size: only.size }) }
    : {};
};
