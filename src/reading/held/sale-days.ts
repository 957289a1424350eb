// A stall or a fair that pieces are made for: "market stall sat 30 jan, 15 crowns at 35". Its day is the order's; without pieces it is everyday talk.

import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';

const sale = /^(wedding fair|wedding expo|trade show|trade stand|market stall|craft fair)$/;
const ordered = pattern('<count> (x)? (<material>)? <piece>');

/** Whether the clause says no more than the day of a sale, beside the pieces for it. */
export const isSaleDay = (reader: Reader, clause: Stretch): boolean => {
  const { tokens, context } = reader;
  if (!tokens.slice(clause.start, clause.end).some(({ text }) => sale.test(text))) return false;
  if (ordered.in(tokens, 0, clause.start) === undefined && ordered.in(tokens, clause.end, tokens.length) === undefined) return false;
  for (let index = clause.start; index < clause.end; index++) {
    const read = dateAt(tokens, index, context);
    if (read === undefined) continue;
    const rest = [...tokens.slice(clause.start, index), ...tokens.slice(read.end, clause.end)];
    return rest.every(({ number }) => number === undefined);
  }
  return false;
};
