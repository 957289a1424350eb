// A rota in lines, a day each: "Mon – Meg 4h", "Tue – closed", "Wed – Meg 4h, Oli 5h", with what it comes to behind it. The days go on in order, and a
// sum that is said has to be theirs: else nothing of it is kept.

import type { Day } from '../../values/day.ts';
import { decimal } from '../../values/decimal.ts';
import { comingWeekday, weekdayNumber } from '../dates/calendar-sums.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { Fact, FactOf } from '../fact.ts';
import { firstIn, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isSingle } from '../text/token.ts';
import { hoursOf, wageIn } from './pace.ts';
import { dayOfLine, type RotaLine, rotaLine } from './rota-line.ts';

const weekOf = pattern('(w / (c|b)|week (commencing|beginning|of|starting|from)|wk (of|commencing|beginning)|wc|wb|from)');
const namedWeek = pattern('(this|next|the coming|coming) (week|wk)');
const totals = [
  pattern(
    '<d:duration> (of work|of labour|of bench time)? (<all>|total|in total|altogether|combined|overall|between (you|us|them|all of us))',
  ),
  pattern(
    "(total|altogether|<all>|makes|making|makes it|comes to|adds up to|that's|thats|sum|grand total) (of|:|is|=|hours|-)? <d:duration>",
  ),
];
const heads = pattern('<n:count> (of (you|us|them)|persons|people|staff|hands|heads|pairs of hands|on the bench)');

interface Week {
  readonly monday?: Day;
  readonly takes: readonly Finding[];
}

// "Rota w/c Monday 25 January", "hours for next week"
const weekBefore = (reader: Reader, parts: readonly Part[]): Week => {
  const { tokens, context } = reader;
  for (const part of [...parts].reverse()) {
    const named = namedWeek.in(tokens, part.start, part.end);
    const match = named ?? weekOf.in(tokens, part.start, part.end);
    if (match === undefined) continue;
    const read = dateAt(tokens, named?.start ?? match.end, context) ?? dateAt(tokens, match.start, context);
    const [first] = read?.within ?? (read?.days.length === 1 ? read.days : []);
    if (read === undefined || first === undefined) continue;
    return { monday: first, takes: [{ start: match.start, end: Math.max(match.end, read.end) }] };
  }
  return { takes: [] };
};

const isBare = ({ day }: RotaLine): boolean => day.end - day.start === 1;
// "Thu … Fri … Mon": each is the next such day behind the one before.
const datesFrom = (lines: readonly RotaLine[], start: Day): readonly Day[] => {
  const dates: Day[] = [];
  for (const line of lines) {
    const said = line.day.days[0] as Day;
    dates.push(isBare(line) ? comingWeekday(dates.at(-1) ?? start, weekdayNumber(said), true) : said);
  }
  return dates;
};

const factsOf = (lines: readonly RotaLine[], dates: readonly Day[]): Unworded[] =>
  lines.map(({ people, hours, total }, at) => ({
    fact: 'crew',
    people,
    ...(hours === undefined ? {} : { hours }),
    ...(total === 0 ? {} : { totalHours: total }),
    date: dates[at] as Day,
  }));

interface Sum {
  readonly part: Part;
  readonly fact: Omit<FactOf<'crew'>, 'words'>;
}
// "That's three of you and 56 hours all told, at £13.20 an hour"
const sumBehind = (reader: Reader, parts: readonly Part[]): Sum | undefined => {
  const { tokens } = reader;
  for (const part of parts) {
    const hours = hoursOf(firstIn(totals, tokens, part.start, part.end)?.kept['d']);
    if (hours === undefined || part.asked) continue;
    const people = heads.in(tokens, part.start, part.end)?.kept['n']?.number;
    const said = isSingle(people) ? { people: Number(people.amount) } : {};
    return { part, fact: { fact: 'crew', ...said, totalHours: hours, ...(wageIn(reader, part) ?? {}) } };
  }
  return undefined;
};

const agrees = (lines: readonly RotaLine[], { fact }: Sum): boolean => {
  const total = lines.reduce((sum, line) => sum.plus(line.total), decimal(0)).toNumber();
  const names = new Set(lines.flatMap((line) => line.names)).size;
  const most = Math.max(names, ...lines.map(({ people }) => people));
  const named = lines.every(({ people, names: own }) => people === own.length);
  return total === fact.totalHours && (fact.people === undefined || (named ? fact.people === names : fact.people >= most));
};

const readBlock = (reader: Reader, parts: readonly Part[], from: number, to: number): Finding[] | undefined => {
  const block = parts.slice(from, to);
  const lines = block.flatMap((part) => rotaLine(reader, part) ?? []);
  const [first, last] = [block[0] as Part, block.at(-1) as Part];
  const sum = sumBehind(reader, parts.slice(to, to + 3));
  const held = (): Finding[] => [...block, ...(sum === undefined ? [] : [sum.part])].map(({ start, end }) => ({ start, end, held: true }));
  // A line that is not understood may hold hours of which the others are only a part.
  if (lines.length < block.length) return lines.length > 1 && sum !== undefined ? held() : undefined;
  const week = weekBefore(reader, reader.message.parts.filter(({ end }) => end <= first.start).slice(-2));
  const starts = week.monday === undefined ? (lines[0] as RotaLine).day.days : [week.monday];
  const ways = starts.map((start) => factsOf(lines, datesFrom(lines, start)));
  const twice = ways.some((facts) => new Set(facts.map((fact) => (fact as FactOf<'crew'>).date)).size < facts.length);
  const unsure = lines.slice(1).some((line) => !isBare(line) && line.day.days.length > 1);
  if (twice || unsure || (sum !== undefined && !agrees(lines, sum))) return held();
  const summed = sum === undefined ? [] : [found(reader, sum.part.start, sum.part.end, [sum.fact])];
  const [facts = [], other] = ways;
  if (other === undefined) return [...summed, ...week.takes, found(reader, first.start, last.end, facts)];
  const words = reader.words(first.start, last.end);
  const choices = ways.map((way) => ({
    words: `from ${(way[0] as FactOf<'crew'>).date}`,
    facts: way.map((fact) => ({ ...fact, words }) as Fact),
  }));
  return [...summed, { start: first.start, end: last.end, asks: [{ about: 'date', why: 'which day', words, choices }] }];
};

// What of a part is free, "so" apart from it, which goes on with the line before: "Sat – 4 hours each, so 64 hours in all".
const freeParts = (reader: Reader): Part[] =>
  reader.message.parts.slice(0, 60).flatMap((part): Part[] => {
    const taken = firstWhere(reader.tokens, part.start, part.end, (_, index) => !reader.free(index));
    const end = taken < 0 ? part.end : taken;
    const so = firstWhere(reader.tokens, part.start, end, ({ text }) => text === 'so');
    if (so <= part.start) return end > part.start ? [{ ...part, end }] : [];
    const before = reader.tokens[so - 1]?.text === ',' ? so - 1 : so;
    return [
      { ...part, end: before },
      { ...part, start: so, end },
    ];
  });

const fewestLines = 2;
/** What the rotas of a message tell, each as a whole. */
export const rotas = (reader: Reader): Finding[] => {
  if (!reader.tokens.some(({ means }) => means['weekday'] !== undefined)) return [];
  const parts = freeParts(reader);
  const findings: Finding[] = [];
  for (let from = 0; from < parts.length; from++) {
    let to = from;
    const goesOn = (part: Part): boolean =>
      dayOfLine(reader, part) !== undefined &&
      (to === from || reader.tokens.slice((parts[to - 1] as Part).end, part.start).every(({ kind }) => kind === 'line'));
    while (to < parts.length && goesOn(parts[to] as Part)) to += 1;
    if (to - from < fewestLines) continue;
    findings.push(...(readBlock(reader, parts, from, to) ?? []));
    from = to - 1;
  }
  return findings;
};
