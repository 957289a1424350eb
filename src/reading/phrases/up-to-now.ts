// "crowns are up to 65 now": so many made, so many wanted, or what one costs? It is asked.

import type { PieceKind } from '../../handbook/pieces.ts';
import { countOrPrice } from '../changes/now-count-or-price.ts';
import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { isSingle } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';

const form = pattern(
  "(ok|so|and|the|our|fyi|,){0,3} <p:piece> (now|(are|is|'s) (now)?) <u:upTo> <n:count> (now|today|already|so far)? (please|pls|thanks|ta|lads|team|x)?",
);

const find = (reader: Reader): Finding[] => {
  if (!form.might(reader.tokens)) return [];
  return reader.untouched().flatMap((part): Finding[] => {
    const match = part.asked ? undefined : form.at(reader.tokens, part.start, part.end);
    const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
    const number = match?.kept['n']?.number;
    if (match?.end !== part.end || piece === undefined || !isSingle(number)) return [];
    if (!/^(up to|upto)$/.test(match.kept['u']?.text ?? '') || /^so far$/.test(reader.tokens[part.end - 1]?.text ?? '')) return [];
    const words = reader.words(part.start, part.end);
    const count = Number(number.amount);
    const made: Fact = { fact: 'made', count, total: true, piece, words };
    const priced = countOrPrice(reader, match, piece, number.amount);
    const wanted: Fact = { fact: 'change', what: 'count', to: count, piece, words };
    const others = priced?.choices ?? [{ words: soMany(number.amount), facts: [wanted] }];
    const choices = [...others, { words: `${number.amount} made so far`, facts: [made] }];
    return [{ start: part.start, end: part.end, asks: [{ about: 'count', why: 'which number', words, choices }] }];
  });
};

export const upToNow: Phrase = { name: 'up to now', examples: [], find };
