// How long a shift is, by the hours of the clock it begins and ends: "9 til 3", "half eight to half twelve", "thurs arvo 1 til 5".

import { decimal } from '../../values/decimal.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';

const till = '(-|to|til|till|until|thru|through)';
const tillWord = /^(-|to|til|till|until|thru|through)$/;
const one = (hour: string, time: string): string => `(half|quarter)? (past|to)? (<${hour}:count>|<${time}:time>|noon|midday)`;
// "from 7am saturday til 11"
const clock = pattern(`(from)? ${one('c', 'a')} ((on|this)? (<weekday>|tomorrow|today))? ${till} ${one('e', 'b')}`);
/** "thurs arvo 1 til 5", "half 7 to 11": two hours of the clock, read as a range. */
const clockRange = pattern(
  '((from|arvo|afternoon|morning|night|evening|avo|lunchtime|<weekday>|tomorrow|,|at) <r:range>|(from|at)? (half|quarter past|quarter to) <r:range>)',
);

// The hour a stretch names, in minutes: "half eight" is half past eight, as it is said in English.
const minutesAt = (tokens: readonly Token[], bare: Token | undefined, time: Token | undefined): number | undefined => {
  const texts = tokens.map((token) => token.text);
  if (texts.some((text) => /^(noon|midday)$/.test(text))) return texts.length === 1 ? 12 * 60 : undefined;
  const parts = time?.number?.parts;
  const hour = parts === undefined ? Number(bare?.number?.amount) : (parts[0] ?? 0);
  const minute = parts?.[1] ?? 0;
  if (!(hour <= 24) || !Number.isInteger(hour) || bare?.number?.max !== undefined) return undefined;
  const [share, way] = texts;
  if (share !== 'half' && share !== 'quarter') return hour * 60 + minute;
  if (minute !== 0 || hour > 12) return undefined;
  if (share === 'half') return way === 'to' ? undefined : hour * 60 + 30;
  return way === 'past' ? hour * 60 + 15 : way === 'to' ? hour * 60 - 15 : undefined;
};

// "7.30 to 11": the digits behind the point are minutes.
const minutesIn = (said: string, amount: string): number => {
  const clocked = /^(\d{1,2})[.:]([0-5]\d)$/.exec(said);
  return clocked === null ? Number(amount) * 60 : Number(clocked[1]) * 60 + Number(clocked[2]);
};
/** "3 of us 8-12 fri": right behind the hands, with nothing further that it could count. */
const rangeOfHands = pattern('(<bench>|me|for|:|,|-|<weekday>|in) (,|:|-)? <r:range>');
const closesRange = /^(,|-|\)|on|at|this|next|tomorrow|tmrw|today|each|all of us|both)$/;
const behindHands = (tokens: readonly Token[], part: Part): Match | undefined => {
  const match = rangeOfHands.in(tokens, part.start, part.end);
  const next = match === undefined || match.end >= part.end ? undefined : tokens[match.end];
  return next === undefined || next.means['weekday'] !== undefined || closesRange.test(next.text) ? match : undefined;
};
const hoursOfRange = ({ tokens }: Reader, part: Part): number | undefined => {
  const match = clockRange.in(tokens, part.start, part.end) ?? behindHands(tokens, part);
  const token = match?.kept['r'];
  const range = token?.number;
  if (match === undefined || range?.form !== 'plain' || range.or !== undefined) return undefined;
  const [said = '', ...behind] = (token?.text ?? '').split(' ');
  const words = tokens.slice(match.start, match.end).map((each) => each.text);
  const share = words.includes('half')
    ? 30
    : !words.some((word) => word.startsWith('quarter'))
      ? 0
      : words.some((word) => /to$/.test(word))
        ? -15
        : 15;
  const [first, last] = [minutesIn(said, range.amount) + share, minutesIn(behind.at(-1) ?? '', range.max ?? '')];
  return first >= 60 && last <= 12 * 60 && last > first ? (last - first) / 60 : undefined;
};

export const shiftHours = (reader: Reader, part: Part): number | undefined => {
  const { tokens } = reader;
  let match = clock.in(tokens, part.start, part.end);
  // "team of 2 - 9-1": the first number counts hands.
  while (match !== undefined && /^(of|plus|\+|and|&)$/.test(tokens[match.start - 1]?.text ?? '') && match.kept['c'] === tokens[match.start])
    match = clock.in(tokens, match.start + 1, part.end);
  if (match === undefined) return hoursOfRange(reader, part);
  const { a, b, c, e } = match.kept;
  const opening = match.start + (tokens[match.start]?.text === 'from' ? 1 : 0);
  const begins = a ?? c;
  const split = begins === undefined ? opening + 1 : tokens.indexOf(begins, opening) + 1;
  const from = minutesAt(tokens.slice(opening, split), c, a);
  // The day may stand between: "from 7am saturday til 11".
  const rest = tokens.slice(split, match.end);
  const to = minutesAt(rest.slice(rest.findIndex(({ text }) => tillWord.test(text)) + 1), e, b);
  if (from === undefined || to === undefined) return undefined;
  const minutes = to > from ? to - from : to + 12 * 60 - from;
  return minutes > 0 && minutes <= 14 * 60 ? minutes / 60 : undefined;
};

/** The hours of the clock that begin at `index`: "9-1", "9am til 3pm", "9-12". Bare hours from the small ones of the day round to the next are none: "3-1". */
export const clockSpan = (tokens: readonly Token[], index: number, end: number): { hours: number; end: number } | undefined => {
  const range = tokens[index]?.number;
  if (range?.form === 'plain' && range.max !== undefined && range.or === undefined) {
    const [said = '', ...behind] = (tokens[index]?.text ?? '').split(' ');
    const [first, last] = [minutesIn(said, range.amount), minutesIn(behind.at(-1) ?? '', range.max)];
    return first >= 60 && last <= 12 * 60 && last > first ? { hours: (last - first) / 60, end: index + 1 } : undefined;
  }
  const match = clock.at(tokens, index, end);
  if (match === undefined) return undefined;
  const { c, e } = match.kept;
  const hours = shiftHours({ tokens } as Reader, { start: index, end: match.end, asked: false });
  const round = c?.number !== undefined && e?.number !== undefined && Number(e.number.amount) <= Number(c.number.amount);
  return hours === undefined || (round && Number(c?.number?.amount) < 6) ? undefined : { hours, end: match.end };
};

/** 15 hours between 3 are 5 each; what does not come out in quarters is left as the total. */
export const evenly = (total: number, people: number): number | undefined => {
  const each = decimal(total).dividedBy(people);
  return each.times(4).isInteger() ? each.toNumber() : undefined;
};

const beside = /^(and|&|n|\+|plus|then)$/;
const atBeside = ({ tokens }: Reader, { start, end }: Stretch): Stretch[] => {
  const at = firstWhere(tokens, start + 1, end, ({ text }) => beside.test(text));
  return at < 0 ? [{ start, end }] : [{ start, end: at }, ...atBeside({ tokens } as Reader, { start: at + 1, end })];
};

/** "me 9-5 fri, casual 9-1", "me 9-1 and the girls 9-3": two shifts that are not alike. */
export const shiftsDiffer = (reader: Reader, clauses: readonly Stretch[]): boolean => {
  const stretches = clauses.flatMap((clause) => atBeside(reader, clause));
  const shifts = stretches.map(({ start, end }) => shiftHours(reader, { start, end, asked: false })).filter((hours) => hours !== undefined);
  return new Set(shifts).size > 1;
};
