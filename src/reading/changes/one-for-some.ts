// "swap 2 bouts for a corsage", "swap a bout for a wrist one": the article counts one, on either side.

import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';
import { kind, numberOf } from './instead-of.ts';
import { priceOfSwapped } from './price-of-added.ts';

const swap = '(swap|swop|switch|exchange|trade|replace|swapping|switching|swapped|change|turn|convert)';
const form = pattern(
  `${swap} (out)? (<f:word>|(the|those|our)? <n:count>) (of)? (the|those|our|her|my)? (<material>|<role>)? <a:piece> (for|with|to|into|over to) (<g:word>|<m:count>) (<material>|<role>)? <b:piece>`,
);
const article = /^(a|an|another|single)$/;

const countOf = (word: Token | undefined, count: Token | undefined): number | undefined =>
  word === undefined ? numberOf(count) : article.test(word.text) ? 1 : undefined;

// Two that become "a corsage" may be a corsage each.
const isOpen = (tokens: readonly Token[], { start }: Match, taken: number): boolean =>
  taken > 1 && /^(change|turn|convert)$/.test(tokens[start]?.text ?? '');

export const oneForSome = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const match = form.in(tokens, part.start, part.end);
  if (match === undefined) return undefined;
  const { f, n, g, m, a, b } = match.kept;
  const [taken, given] = [countOf(f, n), countOf(g, m)];
  const [from, to] = [kind(a), kind(b)];
  if (taken === undefined || given === undefined || (f === undefined && g === undefined)) return undefined;
  if (from === to || from === 'unspecified' || to === 'unspecified' || ![n, m].every((said) => said === undefined || isSingle(said.number)))
    return undefined;
  const each = /^(each|apiece)$/.test(tokens[match.end]?.text ?? '');
  const over = (count: number): Unworded[] => [
    { fact: 'change', what: 'count', by: -taken, piece: from },
    { fact: 'change', what: 'count', by: count, piece: to },
  ];
  const end = each ? match.end + 1 : match.end;
  if (each || !isOpen(tokens, match, taken)) {
    const price = to === undefined ? undefined : priceOfSwapped(reader, end, part.end, to);
    return found(reader, match.start, price?.end ?? end, [...over(each ? taken * given : given), ...(price?.facts ?? [])]);
  }
  const words = reader.words(match.start, end);
  const choice = (count: number) => ({
    words: soMany(count, to),
    facts: over(count).map((fact) => ({ ...fact, words })) as NonNullable<Finding['facts']>,
  });
  return { start: match.start, end, asks: [{ about: 'count', why: 'which number', words, choices: [choice(given), choice(taken)] }] };
};
