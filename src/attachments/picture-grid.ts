// One month of the calendar picture as SVG: heading, weekdays, squares.

import { monthName, shortDate } from '../reply/words/dates.ts';
import { type Day, dayOfMonth } from '../values/day.ts';
import type { DayMarks, PictureMonth } from './picture-days.ts';
import { benchPill, diamond, flower, hatch, paint, words } from './picture-shapes.ts';
import { piecesInAll } from './piece-count.ts';
import { fitted, printable, wrapped } from './printable.ts';

export const pageWidth = 720;
export const margin = 17;
const square = (pageWidth - 2 * margin) / 7;
const squareHeight = 118;
const quietHeight = 40;
const weekdayNames = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

const small = 20;

/** The words at the foot of a square: at most two lines of what the day is for. */
const footWords = (marks: DayMarks): readonly string[] => {
  const all = [...marks.steps.map((step) => printable(step.title).toLowerCase())];
  if (marks.event) all.unshift('event');
  if (all.length === 0 && marks.pieces.length > 0) return ['to make'];
  if (all.length === 0 && marks.closed !== undefined) return ['closed'];
  const [first = ''] = all;
  const lines = wrapped(first, square - 8, small, 'regular').slice(0, 2);
  if (all.length > 1) return [fitted(lines.join(' '), square - 8, small, 'regular'), `+${all.length - 1} more`];
  return lines;
};

const drawnSquare = (x: number, y: number, marks: DayMarks): string => {
  const middle = x + square / 2;
  const parts: string[] = [];
  const fill = marks.event ? paint.petalPale : marks.pieces.length > 0 ? paint.leafPale : paint.card;
  parts.push(
    `<rect x="${x}" y="${y}" width="${square}" height="${squareHeight}" fill="${fill}" stroke="${paint.line}" stroke-width="1.5"/>`,
  );
  if (marks.closed !== undefined) parts.push(hatch(x + 1, y + 1, square - 2, squareHeight - 2));
  parts.push(
    words(x + 8, y + 25, String(dayOfMonth(marks.day)), { size: 22, bold: marks.event || marks.pieces.length > 0, fill: paint.ink }),
  );
  const feet = footWords(marks);
  const markY = y + (feet.length > 1 ? 42 : 56);
  const late = marks.steps.some((step) => step.late);
  if (marks.event) parts.push(flower(middle + 14, y + 50, 31));
  else if (marks.pieces.length > 0) {
    parts.push(benchPill(middle + 12, markY, 58, feet.length > 1 ? 34 : 38, String(piecesInAll(marks.pieces))));
    if (marks.steps.length > 0) parts.push(diamond(x + 17, markY + (feet.length > 1 ? 4 : 0), 9, late));
  } else if (marks.steps.length > 0) parts.push(diamond(middle + 8, markY - 2, 15, late));
  const ink = late ? paint.late : marks.closed !== undefined && marks.steps.length === 0 && !marks.event ? paint.soft : paint.ink;
  feet.forEach((line, index) => {
    parts.push(words(middle, y + squareHeight - 12 - (feet.length - 1 - index) * 22, line, { size: small, anchor: 'middle', fill: ink }));
  });
  return parts.join('');
};

const emptySquare = (x: number, y: number): string =>
  `<rect x="${x}" y="${y}" width="${square}" height="${squareHeight}" fill="none" stroke="${paint.line}" stroke-width="1" stroke-dasharray="3 5"/>`;

const quietLine = (y: number, from: Day, to: Day, dayFirst: boolean): string => {
  const text =
    from === to
      ? `${shortDate(from, { dayFirst })}: nothing due`
      : `${shortDate(from, { dayFirst })} to ${shortDate(to, { dayFirst })}: nothing due`;
  return `<rect x="${margin}" y="${y}" width="${pageWidth - 2 * margin}" height="${quietHeight}" fill="none" stroke="${paint.line}" stroke-width="1" stroke-dasharray="3 5"/>${words(pageWidth / 2, y + 27, text, { size: small, anchor: 'middle', fill: paint.soft })}`;
};

export interface Drawn {
  readonly svg: string;
  readonly height: number;
}

/** The month drawn from `top` down. */
export const drawMonth = (month: PictureMonth, top: number, dayFirst: boolean): Drawn => {
  const parts = [words(margin + 4, top + 34, `${monthName(month.month)} ${month.year}`, { size: 30, bold: true, fill: paint.leaf })];
  let y = top + 50;
  if (month.weeks.some((week) => week.week === 'drawn')) {
    const names = dayFirst ? weekdayNames : ['Sun', ...weekdayNames.slice(0, 6)];
    names.forEach((name, index) => {
      parts.push(words(margin + square * (index + 0.5), y + 22, name, { size: small, anchor: 'middle', fill: paint.soft }));
    });
    y += 32;
  }
  for (const week of month.weeks) {
    if (week.week === 'quiet') {
      parts.push(quietLine(y, week.from, week.to, dayFirst));
      y += quietHeight;
      continue;
    }
    week.days.forEach((marks, index) => {
      const x = margin + square * index;
      parts.push(marks === undefined ? emptySquare(x, y) : drawnSquare(x, y, marks));
    });
    y += squareHeight;
  }
  return { svg: parts.join(''), height: y - top + 18 };
};
