// One line of a rota: its day, then who is in and for how long. "Thu – Meg 6h, Oli 6h", "Fri 5 Feb – 5 hands, 7 hrs each", "Tue – closed",
// "Sat 30 Jan – Asha, Babu – 10 am to 6 pm, 8 hours each".

import { decimal } from '../../values/decimal.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { tagsOf } from '../text/means.ts';
import type { Part } from '../text/message.ts';
import { isNameless, isSingle, type Token } from '../text/token.ts';
import { usualWords } from '../words/usual-words.ts';
import { notSomeone } from './hours-apart.ts';
import { hoursOf } from './pace.ts';
import { clockSpan } from './shift-hours.ts';

export interface RotaLine {
  readonly day: DateRead;
  readonly people: number;
  readonly hours?: number; // each, where they are alike
  readonly total: number;
  readonly names: readonly string[];
}

const mark = /^[:,-]$/;
const closed = pattern("(we are|we're|studio)? (closed|shut|off|day off|nobody|nobody in|no one|no one in|noone|none|no staff)");
const counted = pattern(
  '(the)? (same)? <n:count> (<bench>) (again)? (,|-|:|for|x|at|doing|@){0,2} <d:duration> (<each>|a head|per person|apiece)? (again)? (\\.)?',
);
const joint = /^(,|and|&|n|\+|;|plus)$/;
const does = /^(:|,|-|for|does|doing|is|in|on|\(|will|do)$/;
const each = pattern('(<d:duration>) (<each>|a head|per person|apiece) (again)?');
const longest = 14;

const isName = (token: Token | undefined): token is Token =>
  token?.kind === 'word' &&
  token.number === undefined &&
  !notSomeone.test(token.text) &&
  !usualWords.has(token.text) &&
  (isNameless(token) || tagsOf(token.means).every((tag) => tag === 'role')) &&
  token.text.length > 1;
const isOne = (token: Token | undefined): token is Token => /^(me|i|myself)$/.test(token?.text ?? '') || isName(token);

const within = (hours: number | undefined): hours is number => hours !== undefined && hours >= 0.5 && hours <= longest;

type Said = Omit<RotaLine, 'day'>;

// "Meg 6h, Oli 6h, Suki 9-1"
const hoursByName = ({ tokens }: Reader, start: number, end: number): Said | undefined => {
  const names: string[] = [];
  const told: number[] = [];
  let index = start;
  while (index < end) {
    const who = tokens[index];
    if (!isOne(who) || names.includes(who.text)) return undefined;
    index += 1;
    while (index < end && does.test(tokens[index]?.text ?? '')) index += 1;
    const span = clockSpan(tokens, index, end);
    const hours = hoursOf(tokens[index]) ?? span?.hours;
    if (!within(hours)) return undefined;
    names.push(who.text);
    told.push(hours);
    index = hoursOf(tokens[index]) === undefined ? (span?.end ?? index) : index + 1;
    while (index < end && (joint.test(tokens[index]?.text ?? '') || tokens[index]?.text === ')')) index += 1;
  }
  const total = told.reduce((sum, hours) => sum.plus(hours), decimal(0)).toNumber();
  const alike = told.every((hours) => hours === told[0]) && told[0] !== undefined ? { hours: told[0] } : {};
  return names.length === 0 ? undefined : { people: names.length, names, total, ...alike };
};

// "Asha, Babu – 10 am to 6 pm, 8 hours each": the clock says the same hours, or with a break in them.
const namesThenHours = ({ tokens }: Reader, start: number, end: number): Said | undefined => {
  const names: string[] = [];
  let index = start;
  while (index < end && (isOne(tokens[index]) || (names.length > 0 && joint.test(tokens[index]?.text ?? '')))) {
    const token = tokens[index] as Token;
    if (isOne(token)) names.push(token.text);
    index += 1;
  }
  while (index < end && mark.test(tokens[index]?.text ?? '')) index += 1;
  const span = clockSpan(tokens, index, end);
  index = span?.end ?? index;
  while (index < end && mark.test(tokens[index]?.text ?? '')) index += 1;
  const match = each.at(tokens, index, end);
  const hours = hoursOf(match?.kept['d']);
  const fits = span === undefined || (hours !== undefined && span.hours >= hours);
  if (match?.end !== end || !within(hours) || !fits || names.length === 0 || new Set(names).size !== names.length) return undefined;
  return { people: names.length, names, hours, total: names.length * hours };
};

const heads = ({ tokens }: Reader, start: number, end: number): Said | undefined => {
  const match = counted.at(tokens, start, end);
  const [people, hours] = [match?.kept['n']?.number, hoursOf(match?.kept['d'])];
  if (match?.end !== end || !isSingle(people) || !within(hours)) return undefined;
  return { people: Number(people.amount), names: [], hours, total: decimal(people.amount).times(hours).toNumber() };
};

/** The day that opens a line, where one does. */
export const dayOfLine = (reader: Reader, part: Part): DateRead | undefined => {
  if (reader.tokens[part.start]?.means['weekday'] === undefined) return undefined;
  const day = dateAt(reader.tokens, part.start, reader.context);
  return day === undefined || day.end >= part.end || day.days.length === 0 || day.past === true ? undefined : day;
};

export const rotaLine = (reader: Reader, part: Part): RotaLine | undefined => {
  const day = dayOfLine(reader, part);
  if (day === undefined || part.asked) return undefined;
  const start = mark.test(reader.tokens[day.end]?.text ?? '') ? day.end + 1 : day.end;
  if (closed.at(reader.tokens, start, part.end)?.end === part.end) return { day, people: 0, total: 0, names: [] };
  const said = heads(reader, start, part.end) ?? hoursByName(reader, start, part.end) ?? namesThenHours(reader, start, part.end);
  return said === undefined ? undefined : { day, ...said };
};
