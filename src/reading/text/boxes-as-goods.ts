// Boxes and bags that are bought themselves: "magnets C$32 for a pack of 50, boxes C$1.10 each", "presentation boxes are 95p each now".

import { formOf } from '../pattern.ts';
import { meansOf } from './means.ts';
import { changed, isNameless, type Token } from './token.ts';

const goods: ReadonlyMap<string, string> = new Map([
  ['boxes', 'box'],
  ['bags', 'bag'],
  ['trays', 'tray'],
  ['tubes', 'tube'],
  ['cartons', 'carton'],
  ['sleeves', 'sleeve'],
  ['baskets', 'basket'],
]);
const priced = formOf(
  "<any> ((and|&|\\+|n) (the|gift|paper|kraft)? <pack>)? (are|is|now|at|@|:|-|cost|costs|have|has|just|gone|went|go|going|up|down|dearer|cheaper|to|from|<upTo>|'re){0,5} (<plain> (pk|pack|pcs|ct)|(pk|pack|pkt) (of)? <plain>)? <amount> (to <amount>)? (<each>)",
);
const joins = /^(,|;|and|&|\+|the|those|our|also|plus|new|-|:)$/;
const small = /^(in|of|by|per|x|from|with|for|at|some|how|many|two|few|need|needs|got|have|want|order|buy)$/;
// "roses, 3 boxes £14 each" prices roses; "pins in boxes £4 each" pins.
const opens = (tokens: readonly Token[], index: number): boolean => {
  const [before, ahead] = [tokens[index - 1], tokens[index - 2]];
  if (before === undefined || before.kind === 'line' || joins.test(before.text)) return true;
  const described = before.kind === 'word' && before.number === undefined && (isNameless(before) || before.text === 'gift');
  if (!described || small.test(before.text)) return false;
  return ahead?.number === undefined || !tokens.slice(0, index).some(({ means }) => means['ingredient'] !== undefined);
};

// "organza bags 50 for R120": what the bags are made of or meant for, and no organza by the bag.
const cloth = /^(organza|tulle|kraft|paper|hessian|jute|muslin|velvet|burlap|cotton|lace|corsage|buttonhole|boutonniere|boutonnière)$/;
const bought = formOf(
  '<any> (are|is|now|at|@|:|-|x|cost|just|from|,|pack of){0,2} (<plain> (pack|pk|pcs|pieces)? (for|at|@|:|=|-|,)? <money>|<money> (<each>|(for|per|\\/) (a|pack of|bag of)? <plain>))',
);
const held = new Set(['bag', 'bags', 'sleeves', 'baskets']);
const ofCloth = (tokens: readonly Token[], index: number): boolean =>
  held.has(tokens[index]?.text ?? '') &&
  cloth.test(tokens[index - 1]?.text ?? '') &&
  !/^(of|with|in)$/.test(tokens[index + 1]?.text ?? '') &&
  bought.at(tokens, index, tokens.length) !== undefined;

// A plain word ahead of a name is dropped, and paper says what the bag is.
const clothName = (tokens: readonly Token[], index: number): string => {
  const text = tokens[index]?.text ?? '';
  const one = goods.get(text) ?? text;
  return tokens[index - 1]?.text === 'paper' ? `paper ${one}` : one;
};

/** The tokens with such boxes as goods of their own. */
export const boxesAsGoods = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => goods.has(text) || text === 'bag')) return tokens;
  return tokens.map((token, index) => {
    if (ofCloth(tokens, index)) return changed(token, { means: meansOf({ ingredient: clothName(tokens, index) }) });
    const one = goods.get(token.text);
    return one !== undefined && opens(tokens, index) && priced.at(tokens, index, tokens.length) !== undefined
      ? changed(token, { means: meansOf({ ingredient: one }) })
      : token;
  });
};
