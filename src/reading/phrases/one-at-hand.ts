// "on bout 13 now", "up to number 13", "im on my 13th": which one is being made. Twelve are, or thirteen: it is asked, and the order is no other.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { firstAt, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import { isSingle } from '../text/token.ts';

const opens =
  "(ok|so|and|right|just|,){0,3} (i'm|im|i am|we're|we are|she's|shes|he's|hes|now)? (only|just|now|already|still|currently|nearly)?";
const at = '(on|onto|on to|up to|<upTo>|starting|started|starting on|working on|doing|making|wiring|taping)';
const nth = '(<p:piece>)? (number|no|nr|#) (\\.)? <n:count>';
const numbered = `(<p:piece> <n:count>|${nth})`;
const behind = '(of (the|my|our)? <m:count>)? (now|already|so far|atm|at the mo|at the moment|!|\\.|x|lol|phew){0,2}';
const forms = [
  `${opens} ${at} (the|my|our)? ${numbered} ${behind}`,
  `${opens} ${nth} (now|atm|at the moment) ${behind}`,
  `${opens} ${at} (the|my|our)? <o:ordinal> <p:piece> ${behind}`,
  `${opens} ${at} my <o:ordinal> (one)? ${behind}`,
].map((source) => pattern(source));
// "just finished bout 13": the thirteenth, or thirteen more.
const finished = pattern(
  "(ok|so|and|right|just|,|i|i've|ive|we){0,3} (finished|done|completed|made|did) (the|my)? <p:piece> (number|no|nr|#)? <n:count> (now|!|\\.|x)?",
);

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  if (![...forms, finished].some((form) => form.might(tokens))) return [];
  return reader.untouched().flatMap((part): Finding[] => {
    if (part.asked) return [];
    const begun = firstAt(forms, tokens, part.start, part.end);
    const match = begun?.end === part.end ? begun : finished.at(tokens, part.start, part.end);
    const { p, n, o, m } = match?.kept ?? {};
    const number = (n ?? o)?.number;
    if (match?.end !== part.end || !isSingle(number)) return [];
    const which = Number.parseInt(number.amount === '' ? ((n ?? o)?.text ?? '') : number.amount, 10);
    // "on bouts 13 now" is a number of them.
    if (/[^s]s$/.test(p?.text ?? '') || !(which > 1)) return [];
    const words = reader.words(part.start, part.end);
    const kind = p?.means['piece'] as PieceKind | undefined;
    const piece = ofKind(kind);
    const of = m?.number === undefined ? {} : { of: Number(m.number.amount) };
    const sofar = (count: number): { words: string; facts: Fact[] } => ({
      words: `${count} made so far`,
      facts: [{ fact: 'made', count, total: true, ...of, ...piece, words }],
    });
    const more = { words: `${which} more made`, facts: [{ fact: 'made' as const, count: which, ...piece, words }] };
    const choices = match === begun ? [sofar(which - 1), sofar(which)] : [sofar(which), more];
    return [{ start: part.start, end: part.end, asks: [{ about: 'made', why: 'which number', words, choices }] }];
  });
};

export const oneAtHand: Phrase = { name: 'the one at hand', examples: [], find };
