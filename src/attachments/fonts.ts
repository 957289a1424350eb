// The one typeface of everything printed or drawn, taken from its package, so that a picture looks the same on every machine.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);

export type Face = 'regular' | 'bold';

const file: Readonly<Record<Face, string>> = { regular: 'DejaVuSansCondensed.ttf', bold: 'DejaVuSansCondensed-Bold.ttf' };

export const fontPath = (face: Face): string => require.resolve(`dejavu-fonts-ttf/ttf/${file[face]}`);

const read = new Map<Face, Uint8Array>();

/** The font's bytes, read once. */
export const fontBytes = (face: Face): Uint8Array => {
  const bytes = read.get(face) ?? new Uint8Array(readFileSync(fontPath(face)));
  read.set(face, bytes);
  return bytes;
};
