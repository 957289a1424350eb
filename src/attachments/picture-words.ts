// What the calendar picture says, in words: the lines under the grid and the alt text, which leaves nothing out.

import { duration, fullDate, shortDate } from '../reply/words/dates.ts';
import { type DayMarks, markedDays, type PictureInput } from './picture-days.ts';
import { piecesLine } from './piece-count.ts';
import { oneLine } from './plain-text.ts';

/** Everything one day holds: "make 10 buttonholes (2 h 30 min), check the drying". */
export const dayWords = (marks: DayMarks, input: PictureInput): string =>
  oneLine(
    [
      marks.event ? `event: ${input.event}` : '',
      marks.pieces.length > 0 ? `make ${piecesLine(marks.pieces)}${marks.minutes > 0 ? ` (${duration(marks.minutes)})` : ''}` : '',
      ...marks.steps.map((step) => `${step.title.toLowerCase()}${step.late ? ' (late)' : ''}`),
      marks.closed === undefined ? '' : marks.closed.toLowerCase() === 'closed' ? 'closed' : `closed, ${marks.closed}`,
    ]
      .filter((words) => words !== '')
      .join(', '),
  );

/** The alt text: the event, then every marked day in order. */
export const calendarPictureAlt = (input: PictureInput): string => {
  const style = { dayFirst: input.dayFirst };
  const days = markedDays(input).map((marks) => `${shortDate(marks.day, style)}: ${dayWords(marks, input)}.`);
  return [`Calendar for ${oneLine(input.event)}, ${fullDate(input.eventDay, style)}, ${oneLine(input.studio)}.`, ...days].join(' ');
};
