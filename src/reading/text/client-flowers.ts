// A client called like a flower: in "Correction to the Bell quote" and "the Rose wedding" nobody speaks of stems.

import { formOf } from '../pattern.ts';
import { occasions } from '../words/occasion-words.ts';
import type { CleanText } from './clean-text.ts';
import { changed, none, type Token } from './token.ts';

const named = formOf(`<f:ingredient> (quote|job|booking|enquiry|inquiry|do|couple|family|${occasions.join('|')})`);
const before = /^(the|re|for|on|to|with|from)$/;

/** The tokens without a flower's meaning where a capital inside the sentence and what stands behind make it a name. */
export const withClientFlowers = (clean: CleanText, tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    if (token.means['ingredient'] === undefined || token.text.includes(' ') || !before.test(tokens[index - 1]?.text ?? '')) return token;
    const capital = /^[A-Z][a-z]/.test(clean.original.slice(clean.at[token.start] ?? 0).slice(0, 2));
    return capital && named.at(tokens, index, tokens.length) !== undefined ? changed(token, { means: none }) : token;
  });
