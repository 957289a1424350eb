// Which characters our typeface can draw, read from the font's own character map, so that none is printed as an empty box by surprise.
// The layout of the map is in the OpenType specification, "cmap — Character to Glyph Index Mapping Table", format 12 (Microsoft, learn.microsoft.com/typography/opentype/spec/cmap; from memory).

import { type Face, fontBytes } from './fonts.ts';

interface Span {
  readonly first: number;
  readonly last: number;
}

const spansIn = (face: Face): readonly Span[] => {
  const bytes = fontBytes(face);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tableAt = (tag: string): number => {
    for (let at = 12; at < 12 + view.getUint16(4) * 16; at += 16)
      if (String.fromCharCode(...bytes.subarray(at, at + 4)) === tag) return view.getUint32(at + 8);
    throw new Error(`the font has no ${tag} table`);
  };
  const cmap = tableAt('cmap');
  for (let at = cmap + 4; at < cmap + 4 + view.getUint16(cmap + 2) * 8; at += 8) {
    const map = cmap + view.getUint32(at + 4);
    if (view.getUint16(map) !== 12) continue;
    return Array.from({ length: view.getUint32(map + 12) }, (_, index) => ({
      first: view.getUint32(map + 16 + index * 12),
      last: view.getUint32(map + 20 + index * 12),
    }));
  }
  throw new Error('the font has no full character map');
};

let both: readonly (readonly Span[])[] | undefined;
const asked = new Map<string, boolean>();

/** True if the character has a shape in the regular and the bold face. */
export const canDraw = (character: string): boolean => {
  const known = asked.get(character);
  if (known !== undefined) return known;
  both ??= [spansIn('regular'), spansIn('bold')];
  const point = character.codePointAt(0) ?? 0;
  const can = both.every((spans) => spans.some(({ first, last }) => point >= first && point <= last));
  asked.set(character, can);
  return can;
};
