// Who wears them at a dinner, a school or a club: "club dinner flowers: president, treasurer, 6 life members". A list of such words is
// understood as a whole or not at all, so it goes before what would be held back for its strange words.

import type { Finding, Phrase, Reader } from '../phrase.ts';
import { honoured } from '../wearers/honoured.ts';

const longest = 60;

const find = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, 40)
    .flatMap((part) => (part.end - part.start > longest || part.asked ? [] : (honoured(reader, part) ?? [])));

export const honouredWearers: Phrase = { name: 'honoured wearers', examples: [], find };
