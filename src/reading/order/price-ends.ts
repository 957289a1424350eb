// Whether what is said of a price ends with its number: "the lot for $450", "two corsages for $70 for Kiri".

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const namesPiece = [pattern('for (the|each|all|all the|every|a|an|one|both)? <word>{0,2} <piece>'), pattern('for (each|all|one|both)')];
/** Whether nothing behind the number says more of it. */
export const endsThere = (tokens: readonly Token[], end: number): boolean => {
  const next = tokens[end];
  return (
    next === undefined ||
    next.kind !== 'word' ||
    ['included', 'onTop', 'material', 'taxName', 'taxWord'].some((tag) => next.means[tag] !== undefined) ||
    (next.text === 'and' && tokens[end + 1]?.number !== undefined) ||
    // "two corsages for $70 for Kiri"
    (next.text === 'for' && tokens[end + 1]?.number === undefined && !namesPiece.some((form) => form.at(tokens, end, tokens.length)))
  );
};
