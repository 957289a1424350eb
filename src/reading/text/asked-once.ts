// Answers about a message as a whole: many places in it ask, and each is reckoned once.

import type { Token } from './token.ts';

/** The same answer, kept for the message asked about last. */
export const askedOnce = <Answer>(answer: (tokens: readonly Token[]) => Answer): ((tokens: readonly Token[]) => Answer) => {
  let kept: { readonly tokens: readonly Token[]; readonly answer: Answer } | undefined;
  return (tokens) => {
    if (kept?.tokens !== tokens) kept = { tokens, answer: answer(tokens) };
    return kept.answer;
  };
};
