// Who is at the bench and how fast: "2 of us fri, 5 hrs each", "two freelancers at R150 p/h", "takes me 7 mins per buttonhole".

import type { PieceKind } from '../../handbook/pieces.ts';
import { decimal } from '../../values/decimal.ts';
import {
  awayWord,
  clock,
  eachHours,
  hand,
  hourlyPiece,
  meAnd,
  paceForms,
  paceIn,
  pairForms,
  peopleForms,
  perDay,
  rateForms,
  talk,
  totalHours,
  wageForms,
} from '../crew/crew-forms.ts';
import { askDay, dateOutcome } from '../dates/date-facts.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import type { FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const hoursOf = (token: Token | undefined): number | undefined => {
  const number = token?.number;
  if (number?.form !== 'duration' || number.max !== undefined) return undefined;
  if (number.unit === 'hour') return Number(number.amount);
  return number.unit === 'min' ? Number(decimal(number.amount).dividedBy(60).toFixed()) : undefined;
};
const minutesOf = (token: Token | undefined): number | undefined => {
  const hours = hoursOf(token);
  return hours === undefined ? undefined : token?.number?.unit === 'min' ? Number(token.number.amount) : hours * 60;
};
const kindOf = (token: Token | undefined): { piece?: PieceKind } => {
  const kind = token?.means['piece'] as PieceKind | undefined;
  return kind === undefined || kind === 'unspecified' ? {} : { piece: kind };
};

const peopleIn = (reader: Reader, part: Part): number | undefined => {
  for (const form of peopleForms) {
    const match = form.in(reader.tokens, part.start, part.end);
    if (match !== undefined && match.kept['n']?.number?.max === undefined) return Number(match.kept['n']?.number?.amount);
  }
  const others = meAnd.in(reader.tokens, part.start, part.end);
  if (others !== undefined) return 1 + Number(others.kept['n']?.number?.amount);
  for (const [form, people] of pairForms) {
    const match = form.in(reader.tokens, part.start, part.end);
    if (match !== undefined) return people;
  }
  return undefined;
};

// "casuals are 31.19 an hr, got 2 sat for 5": beside a wage a bare number of hands and of hours is plain enough.
const gotSome = pattern('(got|have|need|with|want|booked|had) <n:count>');
const forHours = pattern('for <n:count> (each)?');
// "i only have 2.5 hours tomorrow", "i can do 3 hrs sat"
const alone = pattern(
  "(i|i've|ive|i'll|ill|i'm|im) (only|just|can|have|got|could|might|free|'ve|do|am|for|in){1,4} (about|in)? <d:duration>",
);
// "jo is off friday"
const offForm = pattern(
  "<who:word> (is|'s|will be|are|s)? (not|away|off|out|sick|on) (in|work|holiday|leave|sick)? (this|on|next|all)? (<weekday>|tomorrow|today)",
);
const notPeople =
  /^(the|power|water|heating|van|market|shop|everything|it|that|wedding|event|party|phones|internet|wifi|fridge|cooler|is|are|moved|what|date|due|rent|ceremony|bench|lights|road|train|trains|bus|buses|school|bins|studio|we're|were|we|closed|day|all|heat|gas|that's|thats|its|it's|delivery|sale|stems|ribbon|one|us|who|someone)$/;

const hoursByClock = (reader: Reader, part: Part): number | undefined => {
  const match = clock.in(reader.tokens, part.start, part.end);
  if (match === undefined) return undefined;
  const at = (time: Token | undefined, bare: Token | undefined): number =>
    time?.number?.parts === undefined ? Number(bare?.number?.amount) : (time.number.parts[0] ?? 0) + (time.number.parts[1] ?? 0) / 60;
  const from = at(match.kept['a'], match.kept['c']);
  const to = at(match.kept['b'], match.kept['e']);
  if (!(from <= 24 && to <= 24)) return undefined;
  const hours = to > from ? to - from : to + 12 - from;
  return hours > 0 && hours <= 14 ? hours : undefined;
};

const dateIn = (reader: Reader, part: Part): DateRead | undefined => {
  for (let index = part.start; index < part.end; index++) {
    const read = dateAt(reader.tokens, index, reader.context);
    if (read !== undefined && read.end <= part.end && read.days.length > 0) return read;
  }
  return undefined;
};

// "7 mins per buttonhole", "8 an hour".
const pace = (reader: Reader, part: Part): Unworded | undefined => {
  for (const form of paceForms) {
    const match = form.in(reader.tokens, part.start, part.end);
    const minutes = minutesOf(match?.kept['d']);
    if (match === undefined || minutes === undefined || minutes > 600) continue;
    const each = match.kept['p'] === undefined;
    const long = match.kept['d']?.number?.unit === 'hour';
    if (
      each &&
      (long ||
        reader.tokens
          .slice(part.start, part.end)
          .some((token) => token.means['bench'] !== undefined && token.number === undefined && !/^(us|of us|me)$/.test(token.text)))
    )
      continue;
    const known = kindOf(
      match.kept['p'] ??
        reader.tokens
          .slice(part.start, part.end)
          .find((token) => token.means['piece'] !== undefined && token.means['piece'] !== 'unspecified'),
    );
    return { fact: 'crew', minutesPerPiece: minutes, ...known };
  }
  const habit = paceIn.in(reader.tokens, part.start, part.end);
  const spent = habit?.kept['d'] === undefined ? 1 : hoursOf(habit.kept['d']);
  if (habit !== undefined && spent !== undefined && !/day/.test(reader.tokens[habit.end - 1]?.text ?? '')) {
    const each = decimal(habit.kept['n']?.number?.amount ?? '0').dividedBy(String(spent));
    return { fact: 'crew', piecesPerHour: Number(each.toDecimalPlaces(2)), ...kindOf(habit.kept['p']) };
  }
  const hourly = hourlyPiece.in(reader.tokens, part.start, part.end);
  if (hourly?.kept['p'] !== undefined) return { fact: 'crew', minutesPerPiece: 60, ...kindOf(hourly.kept['p']) };
  for (const form of rateForms) {
    const match = form.in(reader.tokens, part.start, part.end);
    if (match === undefined || match.kept['n']?.number?.max !== undefined) continue;
    return {
      fact: 'crew',
      piecesPerHour: Number(match.kept['n']?.number?.amount),
      ...kindOf(match.kept['p'] ?? reader.tokens.slice(part.start, part.end).find((token) => token.means['piece'] !== undefined)),
    };
  }
  return undefined;
};

const paid = /^(is|are|at|on|pay|paying|get|gets|@|rate|wage|costs|cost)$/;
const wageIn = (reader: Reader, part: Part): { wage: string; currency?: string } | undefined => {
  for (const form of wageForms) {
    const match = form.in(reader.tokens, part.start, part.end);
    const number = match?.kept['w']?.number;
    const last = reader.tokens[(match?.end ?? 1) - 1];
    if (
      match === undefined ||
      number === undefined ||
      number.max !== undefined ||
      (number.form === 'plain' &&
        !/[.]/.test(match.kept['w']?.text ?? '') &&
        match.start === part.start + reader.tokens.slice(part.start, match.end).indexOf(match.kept['w'] as Token) &&
        !paid.test(reader.tokens[match.start - 1]?.text ?? '')) ||
      (last !== undefined && /^(per|an|a|\/|p)$/.test(last.text))
    )
      continue;
    return { wage: number.amount, ...(number.currency === undefined ? {} : { currency: number.currency }) };
  }
  return undefined;
};

const away = (reader: Reader, part: Part): Finding | undefined => {
  const match = offForm.in(reader.tokens, part.start, part.end);
  const name = match?.kept['who'];
  const words = reader.tokens.slice(match?.start ?? 0, match?.end ?? 0).map((token) => token.text);
  if (
    match === undefined ||
    name === undefined ||
    notPeople.test(name.text) ||
    awayWord.test(name.text) ||
    !words.some((word) => awayWord.test(word) || word === 'not')
  )
    return undefined;
  if (Object.keys(name.means).length > 0 || /^(the|our|my)$/.test(reader.tokens[match.start - 1]?.text ?? '') || part.end - part.start > 9)
    return undefined;
  const date = dateIn(reader, part);
  if (date === undefined) return undefined;
  return dateOutcome(reader, date, (day) => ({ fact: 'crew', people: 1, date: day, away: true }), part.start, part.end);
};

const read = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const words = tokens.slice(part.start, part.end);
  const speed = pace(reader, part);
  const wage = wageIn(reader, part);
  const wagedPeople = wage === undefined ? undefined : gotSome.in(tokens, part.start, part.end)?.kept['n']?.number?.amount;
  const myself = alone.in(tokens, part.start, part.end);
  const people = peopleIn(reader, part) ?? (wagedPeople === undefined ? (myself === undefined ? undefined : 1) : Number(wagedPeople));
  const off = away(reader, part);
  if (off !== undefined) return off;
  const gone =
    words.some((token) => awayWord.test(token.text)) && people !== undefined && words.some((token) => /^(of us|us)$/.test(token.text));
  if (speed !== undefined && speed.fact === 'crew' && !words.some((token) => talk.test(token.text))) {
    return found(reader, part.start, part.end, [
      {
        ...speed,
        ...(wage ?? {}),
        ...(people === undefined || speed.minutesPerPiece !== undefined || words.every((token) => token.text !== 'of us')
          ? {}
          : { people }),
      },
    ]);
  }
  const totals = totalHours.map((form) => form.in(tokens, part.start, part.end)).find((match) => match !== undefined);
  const total = hoursOf(totals?.kept['d']);
  const duration = totals === undefined ? eachHours.in(tokens, part.start, part.end) : undefined;
  const bare =
    wage === undefined || people === undefined ? undefined : forHours.in(tokens, part.start, part.end)?.kept['n']?.number?.amount;
  const hours =
    hoursOf(duration?.kept['d']) ??
    (bare === undefined ? undefined : Number(bare)) ??
    (people !== undefined && total === undefined ? hoursByClock(reader, part) : undefined);
  const date = dateIn(reader, part);
  const atBench = words.some((token) => hand.test(token.text)) || words.some((token) => token.text === 'of us');
  const ours = total !== undefined && words.some((token) => /^(us|of us|bench|labour|labor)$/.test(token.text));
  const enough = ours
    ? true
    : gone
      ? date !== undefined
      : wage !== undefined
        ? true
        : people !== undefined &&
          ((hours !== undefined && (total !== undefined || !words.some((token) => talk.test(token.text)))) ||
            total !== undefined ||
            perDay.in(tokens, part.start, part.end) !== undefined ||
            (date !== undefined && atBench && words.some((token) => token.means['bench'] !== undefined)));
  if (
    !enough ||
    words.some((token) => /^(invoice|course|dentist|flight|parking|workshop)$/.test(token.text)) ||
    words.some((token) => token.means['piece'] !== undefined && wage === undefined && hours === undefined)
  )
    return undefined;
  const fact = (day?: string): Unworded =>
    ({
      fact: 'crew',
      ...(people === undefined ? {} : { people }),
      ...(hours === undefined ? {} : { hours }),
      ...(total !== undefined ? { totalHours: total } : people !== undefined && hours !== undefined ? { totalHours: people * hours } : {}),
      ...(day === undefined ? {} : { date: day }),
      ...(wage ?? {}),
      ...(gone ? { away: true } : {}),
    }) satisfies Omit<FactOf<'crew'>, 'words'>;
  if (date === undefined) return found(reader, part.start, part.end, [fact()]);
  if (date.days.length > 1) return { start: part.start, end: part.end, asks: [askDay(reader, date, fact, part.start, part.end)] };
  return dateOutcome(reader, date, fact, part.start, part.end);
};

const find = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, 40)
    .flatMap((part) => (part.end - part.start > 40 ? [] : (read(reader, part) ?? [])));

export const crew: Phrase = {
  name: 'crew',
  examples: ['2 of us fri, 5 hrs each', 'two freelancers at 15 an hour, 8 hours each', 'takes me 7 mins per buttonhole'],
  find,
};
