// One more piece, for somebody who wants one as well: "nan wants a wrist corsage too" is one more, "… so that's 5" says how many there are then.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { countFor, nameOf } from '../wearers/role-counts.ts';

const lead =
  '(ok|oh|so|and|actually|sorry|update|just|,|-|:|heard|turns out|also|now|apparently|the client says|bride says|she says|they say){0,4}';
const wants =
  "(wants|want|needs|need|would like|'d like|is having|'s having|having|is getting|'s getting|gets|get|is to have|to have|will have|'ll have|will want|will need|asked for|has asked for|is wanting|now wants|now needs|also wants|also needs|has decided on|to get)";
const too = '(too|as well|aswell|also|after all|in the end|now){1,2}';
const then =
  "(,|-|\\.)? (so|and|which|that|,){0,2} (that's|thats|that is|makes it|makes|that makes|its|it's|it is|is|now|we're at|we're on|we are at){0,2}";
const end = '(now|then|in all|in total|total|altogether|please|pls|all up){0,2}';
const forms = [
  `${lead} (the|his|her|my|our|their)? (<r:role>|<word>{1,2}) ${wants} (a|an|one|another|1) (<material>)? <p:piece> ${too} (${then} <n:count> (<q:piece>)? ${end})?`,
  `${lead} (the|his|her|my|our|their)? (<r:role>|<word>{1,2}) ${wants} (one) ${too} ${then} <n:count> <q:piece> ${end}`,
  `${lead} (a|an|one|1) (<material>)? <p:piece> for (the|his|her|my|our|their)? (<r:role>|<word>{1,2}) ${too} (${then} <n:count> (<q:piece>)? ${end})?`,
].map((source) => pattern(source));

export const oneToo = (reader: Reader, part: Part): Finding | undefined => {
  const match = firstAt(forms, reader.tokens, part.start, part.end);
  const { r, p, q, n } = match?.kept ?? {};
  const piece = (q ?? p)?.means['piece'] as PieceKind | undefined;
  if (match?.end !== part.end || piece === undefined || piece === 'unspecified') return undefined;
  if (p !== undefined && q !== undefined && p.means['piece'] !== q.means['piece']) return undefined;
  if (isRangeOrChoice(n?.number)) return undefined;
  const role = r?.means['role'];
  const one = role !== undefined && countFor(r?.text ?? '', undefined, false) === 1 && role !== 'bride';
  const count: Unworded = { fact: 'change', what: 'count', ...(n === undefined ? { by: 1 } : { to: Number(n.number?.amount) }), piece };
  const who: Unworded[] = one ? [{ fact: 'wearers', wearers: [{ wearer: nameOf(role, 1), count: 1, piece }] }] : [];
  return found(reader, part.start, part.end, [count, ...who]);
};
