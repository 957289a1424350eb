// Days beside the event's: setting up, a rehearsal, a meeting. Which word a day belongs to is told by where the words stand.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { withoutOwner } from '../text/owners.ts';
import { besideOccasions, isOccasion, occasions } from '../words/occasion-words.ts';
import { wordList } from '../words/word-list.ts';
import type { DateRead } from './date-read.ts';
import { namesEvent } from './leads.ts';
import { ofWhat } from './of-what.ts';

// Never the event itself.
const besides = new Set(
  wordList(`
  setup, set-up, bump, bump-in, rehearsal, meeting, meet, consult, consultation, trial, trials, tasting, viewing, walkthrough, walk-through,
  fitting, install, backup, back-up, mockup, mock-up, deposit, balance, deadline, quote, call, zoom, visit, recce, packdown, reminder, prep, conditioning
`),
);
const pairs =
  /^(set up|setting up|back up|load in|bump in|bump out|pack down|mock up|rain date|plan b|site visit|final numbers|sample day|(start|starts|starting|begin|beginning) (drying|wiring|making|boxing|hanging|prepping|pressing)|(drying|wiring|making|boxing|hanging|bench|make) (starts|start|begins|from|day|days))$/;
// "quote 30 bouts for 14 march": a price is asked for, and the day is no quote's.
const quotes = pattern(
  `(quote|quotes) ((<word>|,){0,3} <count> (<any>){0,2} <piece>|(for|on) (<word>){0,3} (${occasions.join('|')}|ball|do))`,
);
// "quote for 2 weddings: 13 march 10 bouts": what is priced stands right behind the day.
const several = '(weddings|brides|couples|clients|events|proms|jobs|parties|orders|dates)';
const quotesDay = pattern(
  `(quote|quotes) (for|on|:|-|,){0,2} (<count>)? (${several})? (:|,|-|on|for|the){0,2} (<weekday>)? (the)? (<plain>|<ordinal>|<month>|of){2,3} (:|,|-|for)? <count> (<any>){0,2} <piece>`,
);
// "hens on 20 feb, wedding the week after": counted from a day that is none of its own.
const dayBehind = pattern(
  `(${occasions.join('|')}) (is|'s|on|will be|then|itself|the|a){0,3} (next day|next weekend|(following|next) (day|week|weekend)|(day|week|weekend|fortnight|month|<weekday>|<duration>) (after|later|following))`,
);
// An event of its own, unless a wedding is named too.
const sideEvents = new Set(besideOccasions);
// The day the work is done or the flowers are there: the event's only where no other day is.
const sideWork =
  /^(by|arrive|arrives|arriving|land|lands|landing|making|wiring|boxing|hang|hanging|drying|marquee|need them|with them|prepping|finish|finishing)$/;
const mainEvents = /^(big day|do|ball|dance|marry|married)$/;
const boundary = /^(,|;|\.|\/|and|then|&|-)$/;

type Said = 'event' | 'side' | 'beside' | undefined;

const saidIn = (reader: Reader, start: number, end: number): Said => {
  let said: Said;
  for (let index = start; index < end; index++) {
    const text = reader.tokens[index]?.text ?? '';
    const both = `${text} ${reader.tokens[index + 1]?.text ?? ''}`;
    if (text === 'rehearsal' && reader.tokens[index + 1]?.text === 'dinner') said = 'side';
    else if ([quotes, quotesDay].some((form) => form.at(reader.tokens, index, reader.tokens.length) !== undefined)) continue;
    else if (besides.has(text) || pairs.test(both) || pairs.test(text)) return 'beside';
    else if (sideEvents.has(withoutOwner(text)) || (said === undefined && (sideWork.test(text) || sideWork.test(both)))) said = 'side';
    else if (said === undefined && (mainEvents.test(text) || isOccasion(text))) said = 'event';
  }
  return said;
};

const stopsBefore = (reader: Reader, reads: readonly DateRead[], read: DateRead): number => {
  let at = read.start;
  while (
    at > 0 &&
    !boundary.test(reader.tokens[at - 1]?.text ?? '') &&
    reader.tokens[at - 1]?.kind !== 'line' &&
    !reads.some((other) => other.end === at)
  )
    at -= 1;
  return at;
};
const stopsAfter = (reader: Reader, reads: readonly DateRead[], read: DateRead): number => {
  let at = read.end;
  while (
    at < reader.tokens.length &&
    !boundary.test(reader.tokens[at]?.text ?? '') &&
    reader.tokens[at]?.kind !== 'line' &&
    !reads.some((other) => other.start === at)
  )
    at += 1;
  return at;
};

// "the wedding is not may 15", "its not on the 15th anymore": whatever the day is, it is not this one. "not till the 15th" names it all the same.
const denied = pattern(
  "(not|isn't|isnt|aint|ain't|never|wasn't|wasnt|won't be|wont be|no longer|instead of|rather than|as opposed to) (going to be|be|happening|a|on|in|for|the|this|that|at|until|till|til){0,3}",
);
const refused = ({ tokens }: Reader, read: DateRead): boolean => {
  for (let index = read.start; index >= 0 && index >= read.start - 5; index--) {
    const match = denied.at(tokens, index, tokens.length);
    if (match === undefined || match.end < read.start || match.start >= read.start) continue;
    return !tokens.slice(match.start, match.end).some(({ text }) => /^(until|till|til)$/.test(text));
  }
  return false;
};

// "it was 14 march, now 21": the day that held before.
const wasThen = pattern(
  '(was|were|used to be|originally|previously|had been|had it as|had it on) (on|for|the|meant to be|going to be|down as|set for|in){0,3}',
);
const heldBefore = ({ tokens }: Reader, read: DateRead): boolean => {
  const after = tokens.slice(read.end, read.end + 4).some(({ text }) => text === 'now');
  return after && [1, 2, 3, 4, 5].some((by) => wasThen.at(tokens, read.start - by, read.start)?.end === read.start);
};

// "need the crowns by friday for the trial": what is wanted that day is for something else.
const forOther = pattern(
  "(for|at|is|is for|it's|its) (the|a|an|her|his|their|our|my|bride's|brides|hair|makeup|make up){0,3} (trial|trials|rehearsal|fitting|mockup|mock up|mock - up|tasting|consult|consultation|meeting|walkthrough|photo test|sample|samples|practice|test run|run through)",
);
const ofOther = ({ tokens }: Reader, read: DateRead): boolean => {
  const match = forOther.at(tokens, read.end, tokens.length);
  return match !== undefined && tokens[match.end]?.text !== 'dinner';
};

// "a week after 14 feb", "day before valentines", "last 14 feb": a day near the one that is named, or one gone by.
const besideNamed = (reader: Reader, read: DateRead): boolean => {
  const at = reader.tokens[read.start - 1]?.text === 'the' ? read.start - 2 : read.start - 1;
  const [word, span] = [reader.tokens[at], reader.tokens[at - 1]];
  if (word?.text === 'last' && read.relative !== true) return true;
  // "off till the 8th" ends something; "postponed till the 8th" is put right elsewhere; "the wedding's not till the 8th" names the day.
  if (/^(till|until|til)$/.test(word?.text ?? '')) return !(/^(not|isn't|isnt)$/.test(span?.text ?? '') && namesEvent(reader.tokens));
  return (
    /^(before|after)$/.test(word?.text ?? '') &&
    (/^(day|week|weekend|night|month|fortnight|days|weeks|saturday|sunday)$/.test(span?.text ?? '') || span?.number?.form === 'duration')
  );
};

/** The days that may be the event's: those of other doings are left out. */
export const eventDays = (reader: Reader, reads: readonly DateRead[]): readonly DateRead[] => {
  const [first] = reads;
  if (first === undefined) return reads;
  const leading = saidIn(reader, stopsBefore(reader, reads, first), first.start) !== undefined;
  const said = reads.map((read): Said => {
    const before = (): Said => saidIn(reader, stopsBefore(reader, reads, read), read.start);
    const after = (): Said => saidIn(reader, read.end, stopsAfter(reader, reads, read));
    return leading ? (before() ?? after()) : (after() ?? (read === first ? undefined : before()));
  });
  const main =
    said.includes('event') || (said.includes('side') && dayBehind.in(reader.tokens, first.end, reader.tokens.length) !== undefined);
  return reads.filter(
    (read, at) =>
      said[at] !== 'beside' &&
      !besideNamed(reader, read) &&
      !refused(reader, read) &&
      !ofOther(reader, read) &&
      !heldBefore(reader, read) &&
      !(said[at] === 'side' && main && ofWhat(reader, read) !== 'hand over'),
  );
};
