// What tokens are good for, kept for the words and signs met last.

import type { Token } from '../text/token.ts';
import { type Use, useOfKind, useOfWord } from './registry.ts';
import { kindsOf } from './token-kinds.ts';

const usesOf = (token: Token): readonly Use[] => {
  const word = useOfWord.get(token.text);
  const uses = word === undefined ? [] : [word];
  for (const kind of kindsOf(token)) {
    const use = useOfKind.get(kind);
    if (use !== undefined) uses.push(use);
  }
  return uses;
};
// Words and signs are asked for what they are once, as long as no pattern is added: with the meaning they had then, for the vocabulary shares it.
const known = {
  word: new Map<string, { means: Token['means']; uses: readonly Use[] }>(),
  sign: new Map<string, { means: Token['means']; uses: readonly Use[] }>(),
};
const mostKept = 4096;
/** What a token is good for: the words and kinds of patterns that it is one of. */
export const usesKept = (token: Token): readonly Use[] => {
  const { kind, text, number, means, guessed } = token;
  if ((kind !== 'word' && kind !== 'sign') || number !== undefined || guessed !== undefined) return usesOf(token);
  const kept = known[kind].get(text);
  if (kept?.means === means) return kept.uses;
  if (known[kind].size >= mostKept) known[kind].clear();
  const uses = usesOf(token);
  known[kind].set(text, { means, uses });
  return uses;
};

/** Asked anew from here on: a pattern was added. */
export const forgetUses = (): void => {
  known.word.clear();
  known.sign.clear();
};
