// "MOB and MOG get corsages, 2 grannies too": the same piece as the wearers before.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { suits } from './share-pieces.ts';
import type { Entry } from './wearers-read.ts';

const asWell = pattern('(,)? (too|also|as well|aswell|likewise|same|the same|same again|ditto) (<each>|please|pls)?');

/** Gives each wearer told "too" what the one before wears, and so all between them that have nothing yet. */
export const shareWithBefore = (reader: Reader, part: Part, entries: Entry[]): void => {
  for (const [at, entry] of entries.entries()) {
    const end = entries[at + 1]?.at ?? part.end;
    const said = asWell.in(reader.tokens, entry.at, end);
    if (said === undefined || entry.piece !== undefined) continue;
    const before = entries.slice(0, at).findLastIndex((each) => each.piece !== undefined);
    const piece = entries[before]?.piece;
    if (piece === undefined) continue;
    for (const each of entries.slice(before + 1, at + 1)) if (suits(each.wearer, piece)) each.piece = piece;
  }
};
