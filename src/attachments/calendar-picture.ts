// The plan as one picture for a phone: a month view with large marks, and below it every day in words. Only the fonts we ship are used, so its bytes are stable.

import { fullDate, shortDate } from '../reply/words/dates.ts';
import { newPicture } from './drawing.ts';
import { fontPath } from './fonts.ts';
import { type DayMarks, holdsWork, markedDays, type PictureInput, pictureMonths } from './picture-days.ts';
import { type Drawn, drawMonth, margin, pageWidth } from './picture-grid.ts';
import { benchPill, diamond, flower, hatch, hatchPattern, paint, words } from './picture-shapes.ts';
import { dayWords } from './picture-words.ts';
import { fitted, printable, wrapped } from './printable.ts';

const inner = pageWidth - 2 * margin;

const heading = (input: PictureInput): Drawn => {
  const title = wrapped(printable(input.event), inner - 78, 38, 'bold').slice(0, 2);
  const parts = title.map((line, index) => words(margin + 4, 56 + index * 44, line, { size: 38, bold: true }));
  const y = 56 + (title.length - 1) * 44 + 36;
  const under = `${fullDate(input.eventDay, { dayFirst: input.dayFirst })} · ${printable(input.studio)}`;
  parts.push(words(margin + 4, y, fitted(under, inner - 8, 25, 'regular'), { size: 25, fill: paint.soft }));
  parts.push(flower(pageWidth - margin - 36, 48, 34));
  return { svg: parts.join(''), height: y + 18 };
};

const key = (top: number): Drawn => {
  const y = top + 22;
  const label = (x: number, text: string) => words(x, y + 8, text, { size: 21, fill: paint.soft });
  return {
    svg: [
      benchPill(margin + 26, y, 46, 32, '9'),
      label(margin + 56, 'pieces to make'),
      diamond(margin + 232, y, 13, false),
      label(margin + 252, 'a step'),
      diamond(margin + 344, y, 14, true),
      label(margin + 366, 'late'),
      flower(margin + 446, y, 18),
      label(margin + 472, 'the event'),
      hatch(margin + 582, y - 14, 30, 28),
      label(margin + 620, 'closed'),
    ].join(''),
    height: 56,
  };
};

const listMark = (marks: DayMarks, y: number): string => {
  const x = margin + 172;
  if (marks.event) return flower(x, y, 16);
  if (marks.pieces.length > 0) return benchPill(x, y, 26, 17, '');
  return diamond(
    x,
    y,
    10,
    marks.steps.some((step) => step.late),
  );
};

/** The days in words, the date in bold; closed days are left to the grid and the alt text unless something is due on them. */
const dayList = (input: PictureInput, top: number): Drawn => {
  const parts: string[] = [];
  let y = top;
  for (const marks of markedDays(input).filter(holdsWork)) {
    const lines = wrapped(printable(dayWords(marks, input)), inner - 204, 24, 'regular');
    const date = shortDate(marks.day, { dayFirst: input.dayFirst }).replace(/(\p{L}{3})\p{L}+( \d+)?$/u, '$1$2'); // "Thu 4 Mar"
    parts.push(`<line x1="${margin}" y1="${y}" x2="${pageWidth - margin}" y2="${y}" stroke="${paint.line}" stroke-width="1.5"/>`);
    parts.push(words(margin + 4, y + 32, date, { size: 24, bold: true }), listMark(marks, y + 24));
    lines.forEach((line, index) => {
      parts.push(words(margin + 200, y + 32 + index * 30, line, { size: 24 }));
    });
    y += 16 + lines.length * 30;
  }
  return { svg: parts.join(''), height: y - top };
};

/** The picture as SVG text, 720 wide and as tall as the plan is long. */
export const calendarDrawing = (input: PictureInput): string => {
  const top = heading(input);
  const parts = [top.svg];
  let y = top.height;
  for (const month of pictureMonths(input)) {
    const drawn = drawMonth(month, y, input.dayFirst);
    parts.push(drawn.svg);
    y += drawn.height;
  }
  for (const draw of [key, (from: number) => dayList(input, from)]) {
    const drawn = draw(y);
    parts.push(drawn.svg);
    y += drawn.height;
  }
  const height = Math.ceil(y + margin);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${pageWidth}" height="${height}" viewBox="0 0 ${pageWidth} ${height}" font-family="DejaVu Sans Condensed, DejaVu Sans">${hatchPattern}<rect width="${pageWidth}" height="${height}" fill="${paint.paper}"/>${parts.join('')}</svg>`;
};

/** The picture as PNG. Its alt text is `calendarPictureAlt`. */
export const calendarPicture = (input: PictureInput): Uint8Array => {
  const image = newPicture(calendarDrawing(input), {
    font: { loadSystemFonts: false, fontFiles: [fontPath('regular'), fontPath('bold')], defaultFontFamily: 'DejaVu Sans' },
  }).render();
  return new Uint8Array(image.asPng());
};
