// "roses 14 a bunch, 20 in each": in each bunch. Of so few as two a piece may be meant, and that stays as it is said.

import { changed, type Token } from './token.ts';

const fewest = 5;
const links = /^(in|on|to)$/;
const whole = /^(each|it|one|them|every)$/;
const counted = /^(stem|stems|pcs|pieces|heads|pins|blooms|sheets|m|of)$/;
const opens = /^(a|an|per|\/|the|each)$/;

interface InEach {
  readonly at: number; // "each"
  readonly pack: Token;
}

// Behind a price for one pack and a pause: "a bunch, 20 in each".
const inEach = (tokens: readonly Token[], index: number): InEach | undefined => {
  const pack = tokens[index];
  if (pack?.means['pack'] === undefined || !opens.test(tokens[index - 1]?.text ?? '') || tokens[index - 2]?.number === undefined)
    return undefined;
  const number = index + (/^[,;(-]$/.test(tokens[index + 1]?.text ?? '') ? 2 : 1);
  const many = tokens[number]?.number;
  if (many === undefined || !/^(plain|length)$/.test(many.form) || many.max !== undefined || many.unit === 'cm' || many.unit === 'mm')
    return undefined;
  if (Number(many.amount) < fewest) return undefined;
  const link = number + (counted.test(tokens[number + 1]?.text ?? '') ? 2 : 1);
  if (!links.test(tokens[link]?.text ?? '') || !whole.test(tokens[link + 1]?.text ?? '')) return undefined;
  return tokens[link + 2]?.means['piece'] === undefined ? { at: link + 1, pack } : undefined;
};

/** The tokens with the pack in place of "each". */
export const withPackForEach = (tokens: readonly Token[]): readonly Token[] => {
  const found = tokens.flatMap((_, index) => inEach(tokens, index) ?? []);
  if (found.length === 0) return tokens;
  return tokens.map((token, index) => {
    const told = found.find(({ at }) => at === index);
    if (told !== undefined) return changed(token, { text: told.pack.text, means: told.pack.means });
    return found.some(({ at }) => at === index + 1) ? changed(token, { text: 'per' }) : token;
  });
};
