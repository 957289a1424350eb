// "3 of the crowns need to be bigger", "10 of the bouts are fresh": said of some that are ordered already. It orders nothing, and is no matter of them all.

import { sharesBySize } from '../order/shares-by-size.ts';
import { someWorn } from '../order/some-worn.ts';
import { beginsAt, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';

const some = pattern(
  '(about|only|just)? (<count>|half|some|most|a few|a couple|both) of (the|those|these|our|my|their|her|his) (<material>)? <piece> (is|are|was|were|need|needs|get|gets|have|has|should|must|will|want|wants|go|goes|to|can|could|with|in)',
);

// "they want 12 of the 18 in dried", "6 of them want dried": which is said of some, and no matter of them all.
const someDried = pattern(
  '(about|only|just)? (<count>|half|some|a few|a couple|most) of (the|those|these|our|my|their|her|his|them) (<count>)? (of them)? (are|is|they)? (in|to be|want|wants|wanted|need|should be|will be|as){1,2} <material>',
);

const size = '(small|smaller|big|bigger|little|large|larger|tiny|mini|kids|kids size|child|child size|adult|adult size)';
// "smaller ones 10 each, the rest 14": nothing says how many of either.
const bySize = pattern(
  `(the)? ${size} (ones|one|sizes)? (are|is|at|@|:|for){0,2} <amount> (<each>)? (,|;|and|&|-|but){0,2} (the)? (<role>|rest|others|other ones|${size}) (of them)? (ones|one|sizes)? (are|is|at|@|:|for){0,2} <amount> (<each>)?`,
);

const forms = [some, bySize];

const find = (reader: Reader): Finding[] =>
  reader.message.parts.flatMap((part): Finding[] => {
    const { start, end } = part;
    const worn = someWorn(reader, part);
    if (worn !== undefined) return [worn];
    for (let index = start; index < end; index++) {
      if (!beginsAt(forms, reader.tokens, index)) continue;
      const counted = reader.tokens[index - 1]?.number !== undefined;
      if (some.at(reader.tokens, index, end) === undefined && (counted || bySize.at(reader.tokens, index, end) === undefined)) continue;
      // "16 bouts, 2 large 14 small, large 18 small 12": how many of either is said.
      const sized = sharesBySize(reader);
      if (sized !== undefined && sized.start < index && sized.end > index) return [];
      const takes = Array.from({ length: end - index }, (_, offset) => index + offset).filter((at) => reader.free(at));
      return [{ start: index, end, takes, held: true }];
    }
    return [];
  });

export const someOfAKind: Phrase = { name: 'some of a kind', examples: [], find };

const findDried = (reader: Reader): Finding[] =>
  reader.message.parts.flatMap((part): Finding[] => {
    const match = someDried.in(reader.tokens, part.start, part.end);
    const takes = Array.from({ length: (match?.end ?? 0) - (match?.start ?? 0) }, (_, offset) => (match?.start ?? 0) + offset);
    return match === undefined ? [] : [{ start: match.start, end: match.end, takes: takes.filter((at) => reader.free(at)), held: true }];
  });

/** Goes before the work done: "12 of the 18 in dried" is none. */
export const someOfAMaterial: Phrase = { name: 'some of a material', examples: [], find: findDried };
