// Text made fit for the one typeface we draw with: what has no shape in it (most emoji) is left out; widths are measured with it, never guessed.

import { newPdf, type Pdf } from './drawing.ts';
import { canDraw } from './font-coverage.ts';
import { type Face, fontBytes } from './fonts.ts';
import { oneLine } from './plain-text.ts';

/** One line of drawable characters: a letter or figure the typeface lacks shows as an empty square, any other is dropped, and so are invisible marks. */
export const printable = (text: string): string =>
  oneLine(
    [...oneLine(text).replace(/\p{Cf}/gu, '')]
      .map((character) => (canDraw(character) ? character : /[\p{L}\p{N}]/u.test(character) ? '□' : ''))
      .join(''),
  );

let ruler: Pdf | undefined;

/** Width in units of the size given. */
export const widthOf = (text: string, size: number, face: Face): number => {
  ruler ??= newPdf({ autoFirstPage: false })
    .registerFont('regular', Buffer.from(fontBytes('regular')))
    .registerFont('bold', Buffer.from(fontBytes('bold')));
  return ruler.font(face).fontSize(size).widthOfString(text);
};

/** Shortens to fit, ending in "…". */
export const fitted = (text: string, width: number, size: number, face: Face): string => {
  if (widthOf(text, size, face) <= width) return text;
  const letters = [...text];
  const shortened = (keep: number): string => `${letters.slice(0, keep).join('').trimEnd()}…`;
  let fits = 0;
  let tooMany = letters.length;
  while (tooMany - fits > 1) {
    const middle = Math.floor((fits + tooMany) / 2);
    if (widthOf(shortened(middle), size, face) <= width) fits = middle;
    else tooMany = middle;
  }
  return shortened(fits);
};

/** Breaks at spaces into lines that fit; a single word too long for a line is shortened. Never empty. */
export const wrapped = (text: string, width: number, size: number, face: Face): readonly string[] => {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (lines.length > 0 && widthOf(longer, size, face) <= width) lines[lines.length - 1] = longer;
    else lines.push(fitted(word, width, size, face));
  }
  return lines;
};
