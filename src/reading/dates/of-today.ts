// "everything's late today", "could only make 5 today": what is said of today is the talk of a working day, unless an event is named or something is for it.

import { namesPieces } from '../names-pieces.ts';
import type { Reader } from '../phrase.ts';
import type { DateRead } from './date-read.ts';
import { isCompound, isLed } from './leads.ts';

const today = /^(today|today's|tonight|tonight's|this (morning|arvo|afternoon|evening))$/;
const wanted = /^(for|by|due|need|needs|needed|want|wants|wanted|deliver|delivery|collect|collecting|collected|pickup|order|date)$/;

/** Whether the day is today and nothing says that the event is. */
export const isOfToday = (reader: Reader, read: DateRead): boolean => {
  if (read.days.length !== 1 || read.days[0] !== reader.context.today) return false;
  const said = reader.tokens.slice(read.start, read.end).map(({ text }) => text);
  // "9 will do for today"
  if (
    /^(do|enough|it|all|done|me|us|off|finished|that|that's|thats)$/.test(reader.tokens[read.start - 2]?.text ?? '') &&
    reader.tokens[read.start - 1]?.text === 'for'
  )
    return true;
  if (!said.some((text) => today.test(text)) && !/this (morning|arvo|afternoon|evening)/.test(said.join(' '))) return false;
  return (
    !isLed(reader, [read]) &&
    !isCompound(reader.tokens) &&
    !(reader.tokens.some(({ text }) => wanted.test(text)) && namesPieces(reader.tokens))
  );
};
