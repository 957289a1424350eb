// "3 corsages today": so many made today, or so many to make? It is asked; the day is none of the event's.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { firstAt, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import { isSingle } from '../text/token.ts';

const day = '(today|tonight|yesterday|last night|this (morning|arvo|afternoon|evening))';
const forms = [
  `(ok|so|just|only|hi|,){0,3} <n:count> (<material>)? <p:piece> (only)? ${day} (only)?`,
  `(ok|so|hi|,){0,2} ${day} (,|:|-)? (only|just)? <n:count> (<material>)? <p:piece> (only)?`,
  `(ok|so|hi|,){0,2} <p:piece> ${day} (,|:|-)? (only|just)? <n:count> (only)?`,
].map((source) => pattern(source));

const find = (reader: Reader): Finding[] => {
  if (!forms.some((form) => form.might(reader.tokens))) return [];
  return reader.untouched().flatMap((part): Finding[] => {
    const match = part.asked ? undefined : firstAt(forms, reader.tokens, part.start, part.end);
    const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
    const number = match?.kept['n']?.number;
    if (match?.end !== part.end || piece === undefined || !isSingle(number)) return [];
    const words = reader.words(part.start, part.end);
    const count = Number(number.amount);
    const of = ofKind(piece);
    const choices: { words: string; facts: Fact[] }[] = [
      { words: `${count} made`, facts: [{ fact: 'made', count, ...of, words }] },
      { words: `an order of ${count}`, facts: [{ fact: 'pieces', piece, count, words }] },
    ];
    return [{ start: part.start, end: part.end, asks: [{ about: 'count', why: 'which number', words, choices }] }];
  });
};

export const countToday: Phrase = { name: 'so many today', examples: [], find };
