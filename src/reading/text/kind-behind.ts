// Which corsages they are, said at the end: "only managed 6 corsages today, wrist ones", "8 corsages at $30, pin-on". The kind belongs to the count.

import { formOf } from '../pattern.ts';
import { meansOf } from './means.ts';
import { isEnd } from './sentence-end.ts';
import { changed, type Token } from './token.ts';

const form = formOf(
  "(,|-|\\() (all|the|both|just|they're|theyre|they are|these are|those are|them are|as in|ie|i mean|all of them|that's|thats){0,2} <b:piece> (type|types|style|kind|sort|ones)? (please|pls|thanks|ta|obvs|obviously|fyi|btw|x|\\)){0,2}",
);
const exact = /^(wrist|pin) corsage$/;
const ofCorsages = ({ means }: Token): boolean => means['piece'] === 'corsage' || exact.test(means['piece'] ?? '');

/** Where the sentence around a place begins and ends. */
const around = (tokens: readonly Token[], index: number): { readonly start: number; readonly end: number } => {
  let [start, end] = [index, index];
  while (start > 0 && tokens[start - 1]?.kind !== 'line' && !isEnd(tokens, start - 1)) start -= 1;
  while (end < tokens.length && tokens[end]?.kind !== 'line' && !isEnd(tokens, end)) end += 1;
  return { start, end };
};

/** The corsages of a sentence called by the kind that stands at its end. */
export const withKindBehind = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ means }) => means['piece'] === 'corsage') || !tokens.some(({ means }) => exact.test(means['piece'] ?? '')))
    return tokens;
  const kept: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const match = form.at(tokens, index);
    const kind = match?.kept['b']?.means['piece'];
    if (match !== undefined && kind !== undefined && exact.test(kind)) {
      const { start, end } = around(tokens, index);
      const named = tokens.slice(start, index).filter(ofCorsages);
      // "6 corsages, wrist ones left" says something else of them; "4 wrist and 2 corsages, pin-on" has kinds enough.
      if (match.end === end && named.length === 1 && named[0]?.means['piece'] === 'corsage') {
        const at = kept.lastIndexOf(named[0]);
        kept[at] = changed(named[0], { means: meansOf({ ...named[0].means, piece: kind }) });
        index = match.end;
        continue;
      }
    }
    kept.push(tokens[index] as Token);
    index += 1;
  }
  return kept;
};
