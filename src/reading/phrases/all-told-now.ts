// "31 bouts all told now": so many made so far, or so many wanted in all? It is asked; "31 bouts all told so far" is made. A number alone
// ("31 all told now") may be the price of the lot as well.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import { isSingle } from '../text/token.ts';

const all = '<a:all>';
const sums = /^(all told|all up|in total|in all|altogether|all together|overall|total|grand total|ttl|tot)$/; // "31 for the lot now" is a price
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
const most = 99; // pieces: a bare number above it is what the lot costs

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  if (![...nows, ...soFars].some((form) => form.might(tokens))) return [];
  return reader.untouched().flatMap((part): Finding[] => {
    if (part.asked) return [];
    const far = firstAt(soFars, tokens, part.start, part.end);
    const match = far?.end === part.end ? far : firstAt(nows, tokens, part.start, part.end);
    const number = match?.kept['n']?.number;
    if (match?.end !== part.end || !sums.test(match.kept['a']?.text ?? '') || !isSingle(number)) return [];
    const kind = match.kept['p']?.means['piece'] as PieceKind | undefined;
    const count = Number(number.amount);
    if (kind === undefined && count > most) return [];
    const piece = ofKind(kind);
    if (match === far) return [found(reader, part.start, part.end, [{ fact: 'made', count, total: true, ...piece }])];
    const words = reader.words(part.start, part.end);
    const choices: { words: string; facts: Fact[] }[] = [
      { words: `${count} made so far`, facts: [{ fact: 'made', count, total: true, ...piece, words }] },
      { words: `${count} pieces`, facts: [{ fact: 'change', what: 'count', to: count, ...piece, words }] },
    ];
    if (kind === undefined)
      choices.push({ words: `${count} for all of it`, facts: [{ fact: 'change', what: 'price', to: String(count), per: 'all', words }] });
    return [{ start: part.start, end: part.end, asks: [{ about: 'count', why: 'which number', words, choices }] }];
  });
};

export const allToldNow: Phrase = { name: 'all told now', examples: [], find };
