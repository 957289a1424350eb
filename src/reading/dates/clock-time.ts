// A time of day beside a date: "4:30 pm", "at 2", "noon", "2 to 6pm". Times said without am or pm are taken as a florist's events run: 1 to 7 are
// afternoon, unless the morning is named.

import { namesPieces } from '../names-pieces.ts';
import { beginsAt, type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { isUnlisted } from '../words/other-things.ts';
import { clippedHour } from './clipped-hours.ts';
import { hourRunTogether } from './run-together.ts';

export interface TimeRead {
  readonly start: number;
  readonly end: number;
  readonly time: string; // HH:MM
}

const forms = pattern('(at|from|@|,)? (<t:time>|(12)? (noon|midday|noonish|middayish)|midnight)');
const between = pattern('(at|from|@|,)? <h:count> (to|-|til|till|until) <t:time>');
const spoken = pattern("(at|@|from|,)? <h:count> (o clock|o ' clock|<m:count> (am|pm))");
const bareHour = pattern(
  '((at|@|from|<from>|before|by|ceremony|vows|starts|starting|start|begins|beginning|commencing|kick off|kicks off|kickoff|kicking off) (at|from|@)? (about|around)? <h:count>|<h:count> (in the (morning|afternoon|evening|arvo)|at night))',
);
/** A bare hour with its part of the day is a time before a date too. */
export const partOfDay = pattern('(half|quarter|<count> (in the (morning|afternoon|evening|arvo)|at night)|<count> (past|to) <count>)');
const minutesPast = pattern('(at|@|,)? (just)? <m:count> (minutes|mins)? (past|after|to) <h:count>');
const halfPast = pattern('(at|@|,)? (half|quarter) (past|to)? (<h:count>|<t:time>)');
const noonWords: Readonly<Record<string, string>> = {
  noon: '12:00',
  midday: '12:00',
  noonish: '12:00',
  middayish: '12:00',
  midnight: '00:00',
};

type Half = 'am' | 'pm' | undefined;
const near = 3; // words between a time and the part of the day
const halfNear = (tokens: readonly Token[], from: number, end: number): Half => {
  for (const token of tokens.slice(Math.max(0, from - near), end + near)) {
    if (/^(morning|am|mornings|brunch|breakfast)$/.test(token.text)) return 'am';
    if (/^(afternoon|arvo|evening|eve|night|pm|tea|tonight|twilight)$/.test(token.text)) return 'pm';
  }
  return undefined;
};

const of24 = (hour: number, half: Half = undefined): number => {
  if (half === undefined) return hour >= 1 && hour <= 7 ? hour + 12 : hour;
  return (hour % 12) + (half === 'pm' ? 12 : 0);
};
const pad = (value: number): string => String(value).padStart(2, '0');
const at = (hour: number, minute: number): string => `${pad(hour % 24)}:${pad(minute)}`;

export const hourOf = (token: Token | undefined): number | undefined => {
  const hour = Number(token?.number?.amount);
  return hour >= 1 && hour <= 12 && token?.number?.max === undefined ? hour : undefined;
};
const textsOf = (tokens: readonly Token[], match: Match): readonly string[] =>
  tokens.slice(match.start, match.end).map((token) => token.text);

const clockParts = (token: Token | undefined, half: Half): readonly [number, number] | undefined => {
  const [hour, minute] = token?.number?.parts ?? [];
  if (hour === undefined || minute === undefined) return undefined;
  return [token?.number?.vague === undefined ? hour : of24(hour, half), minute];
};

// "half two", "half past 2", "half 2 pm", "quarter to 3"
const halfHour = (tokens: readonly Token[], match: Match, besideDate: boolean): string | undefined => {
  const words = textsOf(tokens, match);
  const turned = words.includes('past') || words.includes('to');
  const half = halfNear(tokens, match.start, match.end);
  const bare = hourOf(match.kept['h']);
  const said = clockParts(match.kept['t'], half);
  const hour = bare === undefined ? (said?.[1] === 0 ? said[0] : undefined) : of24(bare, half);
  if (hour === undefined || !(besideDate || turned)) return undefined;
  if (words.includes('half')) return words.includes('to') ? undefined : at(hour, 30);
  return words.includes('to') ? at(hour + 23, 45) : at(hour, 15);
};

// "twenty past two", "ten to three"; "10 to 3" in figures may be a stretch.
const pastHour = (tokens: readonly Token[], index: number): TimeRead | undefined => {
  const match = minutesPast.at(tokens, index, tokens.length);
  const [minute, hour] = [Number(match?.kept['m']?.number?.amount), hourOf(match?.kept['h'])];
  if (match === undefined || hour === undefined || ![5, 10, 20, 25].includes(minute)) return undefined;
  const to = textsOf(tokens, match).includes('to');
  if (to && match.kept['m']?.number?.worded !== true) return undefined;
  const of = of24(hour, halfNear(tokens, index, match.end));
  return { start: index, end: match.end, time: to ? at(of + 23, 60 - minute) : at(of, minute) };
};

// "2 to 6pm" begins at two; "11 to 3pm" before noon.
const opening = (match: Match): string | undefined => {
  const hour = hourOf(match.kept['h']);
  const last = match.kept['t']?.number?.parts?.[0];
  if (hour === undefined || last === undefined) return undefined;
  return at(hour % 12 === 0 ? 12 : hour + 12 <= last ? hour + 12 : hour, 0);
};

export const ofADay = (token: Token | undefined): boolean =>
  token?.means['weekday'] !== undefined || token?.means['month'] !== undefined || token?.number?.form === 'ordinal';

// "open day 14 feb 10-3", "party 13 feb 7 til late": hours, since no count goes down.
const bareHours = pattern('(,)? <h:count> ((-|to|til|till|until) <e:count>|(-|to|til|till|until) late)');
const goingDown = (tokens: readonly Token[], index: number): TimeRead | undefined => {
  const match = bareHours.at(tokens, index, tokens.length);
  const [hour, last] = [hourOf(match?.kept['h']), match?.kept['e']];
  if (match === undefined || hour === undefined) return undefined;
  // "open day 14 feb 10-3, 20 corsages"
  if (!ofADay(tokens[index - 1]) && namesPieces(tokens)) return undefined;
  // "ten to three" is ten minutes before it.
  if (match.kept['h']?.number?.worded === true || (hour % 5 === 0 && textsOf(tokens, match).includes('to'))) return undefined;
  if (last !== undefined && ((hourOf(last) ?? hour) >= hour || !standsAlone(tokens, match.end))) return undefined;
  return { start: index, end: match.end, time: at(of24(hour), 0) };
};

// "from 12 to 4", "from 2 to 6": hours, when no kind of piece is named.
const hours = pattern('from (<h:count> (to|till|til|until|-) <count>|<r:range>)');
const fromHours = (tokens: readonly Token[], index: number): TimeRead | undefined => {
  const match = hours.at(tokens, index, tokens.length);
  const range = match?.kept['r']?.number;
  const small = range?.form === 'plain' && Number(range.max) <= 12;
  const hour = small ? Number(range.amount) : hourOf(match?.kept['h']);
  if (match === undefined || hour === undefined || hour < 1 || namesPieces(tokens)) return undefined;
  return { start: index, end: match.end, time: at(of24(hour), 0) };
};

// What may not follow a bare hour: it would be a count or a price.
const counted = ['each', 'piece', 'included', 'onTop', 'taxName', 'taxWord', 'pack', 'ingredient', 'bench', 'role'];
// "funeral tuesday 11.15 st brendans": a saint, and no stems.
const isSaint = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'st' && tokens[at + 1] !== undefined && isUnlisted(tokens[at + 1] as Token);
const standsAlone = (tokens: readonly Token[], end: number): boolean => {
  const next = tokens[end];
  return next === undefined || isSaint(tokens, end) || (next.number === undefined && !counted.some((tag) => next.means[tag] !== undefined));
};

/** "1400hrs", "0900 hrs": an hour of the day, and no stretch of so many hours. */
export const isHourOfDay = ({ number, text }: Token): boolean =>
  number?.form === 'duration' && number.unit === 'hour' && /^([01]\d|2[0-3])[0-5]\d\D/.test(text);

// Only beside a date: "ceremony 1.30", "3ish", "at 2", "1500hrs".
const besideOnly = (reader: Reader, index: number): TimeRead | undefined => {
  const { tokens } = reader;
  const token = tokens[index];
  const half = halfNear(tokens, index, index + 1);
  const one = (time: string, end = index + 1): TimeRead => ({ start: index, end, time });
  const pieces = namesPieces(tokens);
  const dotted = token?.number?.form === 'plain' ? /^(\d{1,2})[.]([0-5]\d)$/.exec(token.text) : null;
  // "prom night, 8.50 a ticket": what something costs.
  const costs =
    /^(a|an|per)$/.test(tokens[index + 1]?.text ?? '') && tokens[index + 2]?.kind === 'word' && tokens[index + 2]?.text !== 'bit';
  if (token !== undefined && dotted !== null && !costs && standsAlone(tokens, index + 1)) {
    const hour = Number(dotted[1]);
    // "15.30" is a time by the clock of 24 hours.
    if (hour >= 13 && hour <= 23 && !pieces && !tokens.some((each) => each.means['each'] !== undefined || each.number?.form === 'money'))
      return one(at(hour, Number(dotted[2])));
    const led = /^(at|@|ceremony|vows|service|from|starts|starting|start|kickoff|kick-off|time)$/.test(tokens[index - 1]?.text ?? '');
    // "sat: 9 bouts @ 12.50": what a piece costs.
    const priced = led && tokens[index - 2]?.means['piece'] !== undefined && (hour >= 5 || !/^(00|15|30|45)$/.test(dotted[2] ?? ''));
    if (hour >= 1 && hour <= 12 && !priced && (led || half !== undefined || !pieces)) return one(at(of24(hour, half), Number(dotted[2])));
  }
  if (token !== undefined && isHourOfDay(token)) return one(at(Number(token.text.slice(0, 2)), Number(token.text.slice(2, 4))));
  const together = pieces ? undefined : hourRunTogether(tokens, index);
  if (together !== undefined && standsAlone(tokens, together.end)) {
    const { hour, minute, end } = together;
    return one(at(hour > 12 || token?.text.startsWith('0') ? hour : of24(hour, half), minute), end);
  }
  const clipped = pieces ? undefined : clippedHour(tokens, index);
  if (clipped !== undefined && standsAlone(tokens, clipped.end)) return one(at(clipped.hour, clipped.minute), clipped.end);
  const ish = token?.number?.approx === true && !pieces ? hourOf(token) : undefined;
  if (ish !== undefined && standsAlone(tokens, index + 1)) return one(at(of24(ish, half), 0));
  // "by friday, 20 bouts at 12": what each costs.
  if (/^(at|@)$/.test(token?.text ?? '') && tokens[index - 1]?.means['piece'] !== undefined) return undefined;
  const bare = bareHour.at(tokens, index, tokens.length);
  const hour = hourOf(bare?.kept['h']);
  return bare !== undefined && hour !== undefined && standsAlone(tokens, bare.end)
    ? one(at(of24(hour, halfNear(tokens, index, bare.end)), 0), bare.end)
    : undefined;
};

const opens = [forms, between, spoken, bareHour, minutesPast, halfPast, bareHours, hours];
/** Whether an hour could begin here: one look for all that it is told by. */
export const mayBeHour = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.number !== undefined || beginsAt(opens, tokens, index);

/** The time that begins at this token. A bare "at 2" is a time only when `besideDate`. */
export const timeAt = (reader: Reader, index: number, besideDate: boolean): TimeRead | undefined => {
  const { tokens } = reader;
  if (!mayBeHour(tokens, index)) return undefined;
  const span = between.at(tokens, index, tokens.length);
  const first = span === undefined ? undefined : opening(span);
  if (span !== undefined && first !== undefined) return { start: index, end: span.end, time: first };
  const opened = besideDate ? (fromHours(tokens, index) ?? goingDown(tokens, index)) : undefined;
  if (opened !== undefined) return opened;
  const match = forms.at(tokens, index, tokens.length);
  if (match !== undefined) {
    const word = noonWords[tokens[match.end - 1]?.text ?? ''];
    const [hour = 0, minute = 0] = clockParts(match.kept['t'], halfNear(tokens, index, match.end)) ?? [];
    return { start: index, end: match.end, time: word ?? at(hour, minute) };
  }
  const past = besideDate ? pastHour(tokens, index) : undefined;
  if (past !== undefined) return past;
  const told = spoken.at(tokens, index, tokens.length);
  const hour = hourOf(told?.kept['h']);
  const minute = Number(told?.kept['m']?.number?.amount ?? 0);
  if (told !== undefined && hour !== undefined && minute < 60)
    return { start: index, end: told.end, time: at(of24(hour, halfNear(tokens, index, told.end)), minute) };
  const half = halfPast.at(tokens, index, tokens.length);
  const shared = half === undefined ? undefined : halfHour(tokens, half, besideDate);
  if (half !== undefined && shared !== undefined) return { start: index, end: half.end, time: shared };
  return besideDate ? besideOnly(reader, index) : undefined;
};

const until = pattern('(-|to|til|till|until) (<time>|late)');
/** "2pm-6pm": where the hours end that begin with a time. */
export const endOfHours = (tokens: readonly Token[], end: number): number => until.at(tokens, end, tokens.length)?.end ?? end;
