// "31 bouts all told now": so many made so far, or so many wanted in all? It is asked; "31 bouts all told so far" is made. A number alone
// ("31 all told now", "wait, that's 31 altogether") may be the price of the lot as well.

import type { PieceKind } from '../../handbook/pieces.ts';
import { askOfSum, mostPieces, sums } from '../changes/so-many-in-all.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import { isSingle } from '../text/token.ts';

const all = '<a:all>';
const opens = "(ok|so|and|just|right|phew|update|we're|i'm|im|,|:){0,3}";
const closes = '(lads|team|girls|folks|boss|thanks|ta|x|yay|woo|lol|,|!){0,2}';
const many = '(about)? <n:count> (<material>)? (<p:piece>)? (,|-)?';
const nows = [`${opens} ${many} ${all} (now|as of now|at this point) ${closes}`, `${opens} now (at)? ${many} ${all} ${closes}`].map(
  (source) => pattern(source),
);
const soFars = [
  `${opens} ${many} ${all} (so far|sofar|to date|up to now|thus far) ${closes}`,
  `${opens} so far (,|:)? ${many} ${all} ${closes}`,
].map((source) => pattern(source));
// "no 18 total", "wait its 18 in all", "that's 18 altogether": nothing in them says of what.
const no = '(no|nope|nah|sorry|soz|oops|whoops|wait|hang on|hold on|actually|correction)';
const itIs = "(it's|its|it is|that's|thats|that is|should be|i mean|i meant|meant|make it|make that)";
const bares = [
  `${no} (,|-|:|wait|sorry|no)? (${itIs})? (only|just)? <n:count> (,)? ${all} (,)? (sorry|soz|not <count>|please|pls)?`,
  `(ok|so|and|,)? ${itIs} (only|just)? <n:count> (,)? ${all} (,)? (sorry|soz|not <count>|please|pls)?`,
].map((source) => pattern(source));

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  if (![...nows, ...soFars, ...bares].some((form) => form.might(tokens))) return [];
  return reader.untouched().flatMap((part): Finding[] => {
    if (part.asked) return [];
    const far = firstAt(soFars, tokens, part.start, part.end);
    const now = far?.end === part.end ? far : firstAt(nows, tokens, part.start, part.end);
    // "morning lot did 18. arvo lot did 14. thats 32 all up" sums what is told before it.
    const alone = reader.message.parts.length === 1;
    const match = now?.end === part.end || !alone ? now : firstAt(bares, tokens, part.start, part.end);
    const number = match?.kept['n']?.number;
    if (match?.end !== part.end || !sums.test(match.kept['a']?.text ?? '') || !isSingle(number)) return [];
    const kind = match.kept['p']?.means['piece'] as PieceKind | undefined;
    const count = Number(number.amount);
    if (kind === undefined && count > mostPieces) return [];
    if (match === far) return [found(reader, part.start, part.end, [{ fact: 'made', count, total: true, ...ofKind(kind) }])];
    return [{ start: part.start, end: part.end, asks: [askOfSum(count, reader.words(part.start, part.end), kind)] }];
  });
};

export const allToldNow: Phrase = { name: 'all told now', examples: [], find };
