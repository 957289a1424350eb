// Days that belong to a mail or a sheet and not to the event: "Sent: 18 January 2027", "issue 3 of 14 Jan", and a day gone by beside the one the event is said to be on.

import { addDays } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { anyOccasion } from '../words/occasion-words.ts';
import type { DateRead } from './date-read.ts';

const article = '(on|of|at|the|:|-|,|<weekday>){0,3}';
const papers =
  '(issue|version|draft|revision|rev|edition|printout|printed|emailed|sent|received|forwarded|posted|dated|updated|revised|issued|written|typed|as)';
const head = pattern(`${papers} (<plain>|<ordinal>|<code>)? (on|of|at|the|from|:|,|-|<weekday>){1,3}`);
const bare = pattern(`(dated|printed|issued|updated|revised) ${article}`);
const dateHead = pattern('date : (<weekday> (,)?)?');
const header = pattern('(from|subject|to|sent|cc|re) :');

const endsAt = ({ tokens }: Reader, form: typeof head, read: DateRead, reach: number): number | undefined => {
  for (let start = Math.max(0, read.start - reach); start < read.start; start++)
    if (form.at(tokens, start, read.start)?.end === read.start) return start;
  return undefined;
};
const opensLine = ({ tokens }: Reader, index: number): boolean => index === 0 || tokens[index - 1]?.kind === 'line';

/** Whether the day is the mail's own. */
const isOfMail = (reader: Reader, read: DateRead): boolean => {
  const { tokens } = reader;
  if (endsAt(reader, bare, read, 4) !== undefined) return true;
  const said = endsAt(reader, head, read, 6);
  // "Sent: …" at the head of a line, "issue 3 of …" anywhere; "flowers sent on 12 june" are the event's.
  if (
    said !== undefined &&
    (opensLine(reader, said) ||
      tokens[said + 1]?.number !== undefined ||
      /^(issue|version|draft|revision|rev|edition)$/.test(tokens[said]?.text ?? ''))
  )
    return true;
  const own = endsAt(reader, dateHead, read, 4);
  return own !== undefined && opensLine(reader, own) && header.in(tokens, 0, tokens.length) !== undefined;
};

const ofEvent = pattern(
  `(${anyOccasion}|wedding|event|function|big day|date) (date|day)? (is|'s|will be|falls|:|-|=|,){0,2} (on|for)? (the)?`,
);
const eitherOf = /^(or|and|&|\/|to|not|now|moved|from|was|changed|sorry|actually)$/;
const justGone = 300; // a day so far ahead, with no year said, was one of the last weeks

const gone = ({ context }: Reader, { days, relative, past, yearAssumed }: DateRead): boolean =>
  relative !== true &&
  days.length > 0 &&
  (past === true || days.every((day) => day < context.today || (yearAssumed === true && day >= addDays(context.today, justGone))));

// "Minutes, phone call with the bride, Tues 19 Jan"
const notes = pattern('(<any>)? (minutes|notes|memo|call|phone call|voicemail|transcript|message) (of|from|with|,|-|:|taken)');
const headsNotes = ({ tokens }: Reader, read: DateRead): boolean => {
  let start = read.start;
  while (start > 0 && tokens[start - 1]?.kind !== 'line') start -= 1;
  return notes.at(tokens, start, read.start) !== undefined;
};

/** The days that may be the event's: none of the mail's own, and none gone by where another is said to be the event's. */
export const withoutMailDays = (reader: Reader, all: readonly DateRead[]): readonly DateRead[] => {
  const reads = all.filter((read) => !isOfMail(reader, read) && !(gone(reader, read) && headsNotes(reader, read)));
  const told = reads.filter((read) => !gone(reader, read) && endsAt(reader, ofEvent, read, 8) !== undefined);
  if (reads.length < 2 || told.length === 0) return reads;
  return reads.filter((read) => {
    const before = reader.tokens[read.start - 1]?.text ?? '';
    return told.includes(read) || !gone(reader, read) || eitherOf.test(before) || eitherOf.test(reader.tokens[read.end]?.text ?? '');
  });
};
