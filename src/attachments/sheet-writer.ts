// A page that is written from the top down and turned over before anything would be cut: the only place that knows paper sizes and the PDF library.
// Black on white, rules and boxes only, so that any printer will do. Units are points; y grows downwards.

import { newPdf } from './drawing.ts';
import { type Face, fontBytes } from './fonts.ts';
import { fitted, printable, wrapped } from './printable.ts';

export const pageMargin = 42; // 15 mm: inside what office printers can reach
const footerHeight = 22;
const leading = 1.28;

export interface TextStyle {
  readonly size: number;
  readonly face?: Face;
  readonly x?: number; // from the left margin
  readonly width?: number;
}

export interface SheetWriter {
  readonly width: number; // between the margins
  /** Where the next line goes. */
  y(): number;
  /** Points left above the foot of the page. */
  room(): number;
  /** Begins a sheet on a new page; its header is written again on each page it runs to. */
  sheet(title: string, under: string, repeat?: () => void): void;
  /** Turns the page unless this height fits; true if it turned. */
  ensure(height: number): boolean;
  /** Wrapped text; moves down. */
  text(words: string, style: TextStyle): void;
  /** The height `text` would take. */
  heightOf(words: string, style: TextStyle): number;
  /** One line at a place, shortened to its width; doesn't move. */
  put(words: string, x: number, y: number, style: TextStyle): void;
  rule(weight?: number): void;
  box(x: number, y: number, width: number, height: number, look?: 'dashed' | 'plain'): void;
  down(points: number): void;
  bytes(): Uint8Array;
}

export interface SheetFile {
  readonly paper: 'A4' | 'Letter';
  readonly title: string;
  readonly author: string;
  readonly stamp: number; // epoch milliseconds
  readonly compress?: boolean; // true unless a test wants to read the streams
}

export const sheetWriter = (file: SheetFile): SheetWriter => {
  const doc = newPdf({
    size: file.paper === 'A4' ? 'A4' : 'LETTER',
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    compress: file.compress ?? true,
    lang: 'en',
    info: {
      Title: printable(file.title),
      Author: printable(file.author),
      Creator: 'Benchbell',
      Producer: 'Benchbell',
      // biome-ignore lint/style/noRestrictedGlobals: the library takes a Date; the instant is passed in, so the bytes are stable
      CreationDate: new Date(file.stamp),
    },
  });
  doc.registerFont('regular', Buffer.from(fontBytes('regular'))).registerFont('bold', Buffer.from(fontBytes('bold')));
  const [pageWide, pageHigh] = file.paper === 'A4' ? [595.28, 841.89] : [612, 792];
  const width = pageWide - 2 * pageMargin;
  const bottom = pageHigh - pageMargin - footerHeight;
  let at = pageMargin;
  let header = { title: '', under: '', repeat: (): void => {} };
  const footers: string[] = [];

  const draw = (words: string, x: number, y: number, size: number, face: Face): void => {
    if (words !== '') doc.font(face).fontSize(size).fillColor('black').text(words, x, y, { lineBreak: false });
  };
  const linesOf = (words: string, style: TextStyle): readonly string[] =>
    wrapped(printable(words), style.width ?? width - (style.x ?? 0), style.size, style.face ?? 'regular');

  const turn = (continued: boolean): void => {
    doc.addPage();
    footers.push(`${printable(file.title)} · ${header.title}`);
    at = pageMargin;
    const title = continued ? `${header.title} (continued)` : header.title;
    writer.text(title, { size: 20, face: 'bold' });
    if (header.under !== '') writer.text(header.under, { size: 11 });
    at += 6;
    writer.rule(1.2);
    at += 8;
    header.repeat();
  };

  const writer: SheetWriter = {
    width,
    y: () => at,
    room: () => bottom - at,
    sheet: (title, under, repeat = () => {}) => {
      header = { title, under, repeat };
      turn(false);
    },
    ensure: (height) => {
      if (at + height <= bottom) return false;
      turn(true);
      return true;
    },
    text: (words, style) => {
      for (const line of linesOf(words, style)) {
        if (at + style.size * leading > bottom) turn(true);
        draw(line, pageMargin + (style.x ?? 0), at, style.size, style.face ?? 'regular');
        at += style.size * leading;
      }
    },
    heightOf: (words, style) => linesOf(words, style).length * style.size * leading,
    put: (words, x, y, style) => {
      const face = style.face ?? 'regular';
      draw(fitted(printable(words), style.width ?? width - x, style.size, face), pageMargin + x, y, style.size, face);
    },
    rule: (weight = 0.6) => {
      doc
        .moveTo(pageMargin, at)
        .lineTo(pageMargin + width, at)
        .lineWidth(weight)
        .strokeColor('black')
        .undash()
        .stroke();
    },
    box: (x, y, wide, high, look = 'plain') => {
      doc.lineWidth(0.8).strokeColor('black');
      if (look === 'dashed') doc.dash(4, { space: 3 });
      else doc.undash();
      doc
        .rect(pageMargin + x, y, wide, high)
        .stroke()
        .undash();
    },
    down: (points) => {
      at += points;
    },
    bytes: () => {
      footers.forEach((footer, index) => {
        doc.switchToPage(index);
        const page = `${index + 1} of ${footers.length}`;
        draw(fitted(footer, width - 90, 9, 'regular'), pageMargin, bottom + 10, 9, 'regular');
        draw(page, pageMargin + width - 60, bottom + 10, 9, 'regular');
      });
      doc.end();
      const all: unknown = doc.read(); // the library writes everything at once, so it is all there
      if (!(all instanceof Uint8Array)) throw new Error('the PDF library left no bytes to read');
      return new Uint8Array(all);
    },
  };
  return writer;
};
