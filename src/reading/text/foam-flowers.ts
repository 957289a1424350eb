// "35 lapels, foam ones", "12 foam bouts", "all foam": flowers cut from foam, which are artificial. A brick of foam, and what a corsage is
// built on, are goods.

import { meansOf } from './means.ts';
import { changed, type Token } from './token.ts';

const flowers = /^(ones|one|blooms|bloom|flower|type|kind|version|versions)$/;
const built =
  /^(base|bases|backing|backings|back|backs|holder|holders|cage|cages|board|boards|pad|pads|disc|discs|tape|pin|pins|box|boxes)$/;

export const withFoamFlowers = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => text === 'foam') || !tokens.some(({ means }) => means['piece'] !== undefined)) return tokens;
  return tokens.map((token, index) => {
    const [before, next, second] = [tokens[index - 1], tokens[index + 1], tokens[index + 2]];
    if (token.text !== 'foam') return token;
    const ofPieces = before?.number !== undefined && next?.means['piece'] !== undefined && !built.test(second?.text ?? '');
    const ofAll = before?.text === 'all' && (next === undefined || next.kind !== 'word');
    return ofPieces || ofAll || flowers.test(next?.text ?? '') ? changed(token, { means: meansOf({ material: 'artificial' }) }) : token;
  });
};
