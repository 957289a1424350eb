// One kind of wearers counted again: "6 ushers not 5", "make the ushers 6", "ushers now 6". How many pieces are ordered stays as it was.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';
import { isPlural, nameOf } from './role-counts.ts';

const lead =
  "(sorry|oops|ok|oh|so|actually|update|fyi|no|,|bride says|groom says|she says|they say|client says|turns out|it's|its|there's|there are|there is|we have|they have|that's|thats){0,4}";
const notSoMany = '(,|-)? (not|instead of|rather than|and not|was|were) (the)? <m:count> (<role>)?';
const mostSurely = 7; // more may be what one of theirs costs
const end = '(please|pls|sorry|thanks|ta|in the end|after all){0,2}';
const many = '(<n:count>|one|a single)';
const of = '(of (the|our|his|her))?';
const forms = [
  pattern(`${lead} (now|only|just){1,2} ${many} ${of} <r:role> (now|left|wearing|coming)? (now)? ${end}`),
  pattern(`${lead} ${many} <r:role> (now|left now|now left|${notSoMany}) (now|(,|-)? not <m:count>)? ${end}`),
  pattern(`${lead} (the|his|her|our)? <r:role> (:|-|are|is)? (only|just|at)? <n:count> (now|only) (not <m:count>)? ${end}`),
  pattern(`${lead} (make|change|put) (the|our|his|her)? <r:role> (to|as|up to|down to)? <n:count> (not <m:count>|now|instead)? ${end}`),
  pattern(`${lead} (make it|make that) <n:count> <r:role> (not <m:count>|now|instead)? ${end}`),
  pattern(
    `${lead} (the|his|her|our)? <r:role> (are|is)? (now|up to|down to|up at|gone up to|gone down to) <n:count> (not <m:count>)? ${end}`,
  ),
];

/** The wearers as they are now, where all of the part says so. */
export const countedAgain = (reader: Reader, part: Part): Finding | undefined => {
  for (const form of forms) {
    const match = form.at(reader.tokens, part.start, part.end);
    const { n, r } = match?.kept ?? {};
    if (match?.end !== part.end || r === undefined) continue;
    if (n !== undefined && !isSingle(n.number)) return undefined;
    if (n?.number?.approx === true) return undefined;
    const count = Number(n?.number?.amount ?? 1);
    const behind = n !== undefined && reader.tokens.indexOf(n, match.start) > reader.tokens.indexOf(r, match.start);
    // "make the groom 18" is a price, or his age; "make the ushers 12" may be either; "only 1 mum now" counts her.
    const counts = isPlural(r.text) || (count === 1 && !behind);
    if (!counts || count < 1 || (behind && count > mostSurely)) return undefined;
    const wearer = nameOf(r.means['role'] ?? '', count);
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [{ wearer, count }] }]);
  }
  return undefined;
};
