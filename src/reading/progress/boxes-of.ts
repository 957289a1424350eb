// Work told by the box: "2 boxes of 6 packed, so 12 corsages", "three trays of 8 bouts finished", "packed 18 bouts into 3 boxes of 6".
// A number behind that is not what they hold leaves it all unread.

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { doneWord } from './done-words.ts';
import { amountOf } from './made-facts.ts';

const opens = "(ok|okay|right|so|and|update|,|just|that's|thats|we've|i've|ive|we|i|got|have|another){0,3}";
const box = '(box|boxes|tray|trays|crate|crates|carton|cartons|bag|bags|board|boards|rack|racks|row|rows)';
const some = `<a:count> (full|more|whole)? ${box} of <b:count> (<material>)? (<p:piece>)?`;
const be = '(are|is|now|all|been|have been|just|got|fully){0,3}';
const end = '(now|today|so far|up|already|yay|tonight|this morning|this arvo){0,2}';
const sum =
  "(,|-|so|and|which is|that's|thats|that is|makes|that makes|=|is){1,4} <c:count> (<q:piece>)? (done|made|packed|boxed|in all|in total|all up|altogether|total|finished){0,2}";
const forms = [
  `${opens} ${some} ${be} (${doneWord}) ${end} (${sum})?`,
  `${opens} (packed|boxed|made|finished|done|completed|boxed up|packed up) ${some} ${end} (${sum})?`,
  `${opens} (packed|boxed|put|boxed up|packed up) <c:count> (<q:piece>)? (in|into|in to) ${some} ${end}`,
].map((source) => pattern(source));
const boxes = pattern(`<count> (full|more|whole)? ${box} of <count>`);

const packedIn = (reader: Reader, { start, end: last, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : firstAt(forms, reader.tokens, start, last);
  if (match?.end !== last) return undefined;
  const { a, b, c, p, q } = match.kept;
  const unsure = [a, b, c].some((token) => isRangeOrChoice(token?.number));
  const count = amountOf(a) * amountOf(b);
  const others = p !== undefined && q !== undefined && kindOf(p).piece !== kindOf(q).piece;
  if (unsure || others || (c !== undefined && amountOf(c) !== count)) return { start, end: last, held: true };
  return found(reader, start, last, [{ fact: 'made', count, ...kindOf(p ?? q) }]);
};

export const packedByTheBox = (reader: Reader): Finding[] =>
  boxes.might(reader.tokens) ? reader.untouched().flatMap((part) => packedIn(reader, part) ?? []) : [];
