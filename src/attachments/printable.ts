// Text made fit for the one typeface we draw with: emoji have no shape in it and are dropped; widths are measured with it, never guessed.

import PDFDocument from 'pdfkit';
import { type Face, fontBytes } from './fonts.ts';
import { oneLine } from './plain-text.ts';

const noShape = /[\u{1F000}-\u{1FAFF}\u{E0000}-\u{E007F}]|[\u{FE00}-\u{FE0F}]|[\u{200B}-\u{200D}]|\u{20E3}/gu;

/** One line without emoji and the marks that only join or colour them. */
export const printable = (text: string): string => oneLine(oneLine(text).replace(noShape, ''));

type Ruler = InstanceType<typeof PDFDocument>;
let ruler: Ruler | undefined;

/** Width in units of the size given. */
export const widthOf = (text: string, size: number, face: Face): number => {
  ruler ??= new PDFDocument({ autoFirstPage: false })
    .registerFont('regular', Buffer.from(fontBytes('regular')))
    .registerFont('bold', Buffer.from(fontBytes('bold')));
  return ruler.font(face).fontSize(size).widthOfString(text);
};

/** Shortens to fit, ending in "…". */
export const fitted = (text: string, width: number, size: number, face: Face): string => {
  if (widthOf(text, size, face) <= width) return text;
  const letters = [...text];
  while (letters.length > 0 && widthOf(`${letters.join('').trimEnd()}…`, size, face) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
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
