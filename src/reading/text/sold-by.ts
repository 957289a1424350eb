// What goods are sold by behind their price: "wire $6.49/lb", "rajnigandha 12 per stick", "ribbon 80p/m". Elsewhere these words are verbs or stand beside a number of their own.

import { meansOf } from './means.ts';
import { changed, type Token } from './token.ts';

const units: ReadonlyMap<string, string> = new Map([
  ['lb', 'lb'],
  ['lbs', 'lb'],
  ['oz', 'oz'],
  ['m', 'metre'],
  ['mt', 'metre'],
  ['mtr', 'metre'],
  ['ft', 'foot'],
  ['foot', 'foot'],
  ['stick', 'stick'],
  ['sticks', 'stick'],
]);
const joins = /^(a|an|per|each|\/)$/;

const isSoldBy = (tokens: readonly Token[], index: number): boolean => {
  const [price, join] = [tokens[index - 2], tokens[index - 1]];
  // "4 sticks of tuberose"
  if (tokens[index]?.text === 'sticks') return join?.number?.form === 'plain' && tokens[index + 1]?.text === 'of';
  return joins.test(join?.text ?? '') && /^(plain|money)$/.test(price?.number?.form ?? '');
};

/** The tokens with such words as packs. */
export const withSoldBy = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text, means }) => units.has(text) && means['pack'] === undefined)) return tokens;
  return tokens.map((token, index) => {
    const unit = token.kind === 'word' && token.means['pack'] === undefined ? units.get(token.text) : undefined;
    return unit !== undefined && isSoldBy(tokens, index) ? changed(token, { means: meansOf({ ...token.means, pack: unit }) }) : token;
  });
};
