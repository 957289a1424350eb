// "moved to 7/3 5pm, ceremony 4:30, pickup 1pm": a new day, and behind it hours that name what they are of. The ceremony's is the event's own; an hour that
// loses to it, or is of something else, is named as unread.

import { type TimeRead, timeAt } from '../dates/clock-time.ts';
import { handsAt, isHandOverHour } from '../dates/hand-over-hour.ts';
import { isRite, ownsHour } from '../dates/main-hour.ts';
import type { Fact } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import { dateChange } from './date-change.ts';

interface Clause {
  readonly start: number; // its first word
  readonly time: TimeRead;
  readonly of: 'rite' | 'event' | 'hand over' | 'other';
}

const joint = /^(,|and|&|-|\+)$/;
const longest = 4; // words before the hour
const takesBack = /^(not|was|were|instead|now|moved)$/;

const clauseAt = (reader: Reader, start: number, end: number): Clause | undefined => {
  const { tokens } = reader;
  for (let index = start; index <= start + longest && index < end; index++) {
    const token = tokens[index];
    const time = index > start ? timeAt(reader, index, true) : undefined;
    if (time !== undefined) {
      if (time.end > end || (time.end < end && !joint.test(tokens[time.end]?.text ?? ''))) return undefined;
      const words = tokens.slice(start, index).map(({ text }) => text);
      const handing = isHandOverHour(reader, time) || words.some((_, at) => handsAt(reader, start + at));
      return { start, time, of: handing ? 'hand over' : words.some(isRite) ? 'rite' : words.some(ownsHour) ? 'event' : 'other' };
    }
    if (token === undefined || token.kind !== 'word' || token.number !== undefined || takesBack.test(token.text)) return undefined;
    if (token.means['piece'] !== undefined || token.means['bench'] !== undefined || token.means['weekday'] !== undefined) return undefined;
  }
  return undefined;
};

// The clauses from the first comma behind which nothing else is said.
const clausesOf = (reader: Reader, { start, end }: Part): { readonly at: number; readonly clauses: readonly Clause[] } | undefined => {
  const { tokens } = reader;
  for (let at = start + 2; at < end - 1; at++) {
    if (!joint.test(tokens[at]?.text ?? '')) continue;
    const clauses: Clause[] = [];
    let from = at + 1;
    while (from < end) {
      const clause = clauseAt(reader, from, end);
      if (clause === undefined) break;
      clauses.push(clause);
      from = clause.time.end + 1;
    }
    if (clauses.length > 0 && from >= end) return { at, clauses };
  }
  return undefined;
};

const hourIn = (reader: Reader, { start, end }: Part, time: string): readonly number[] => {
  for (let index = start; index < end; index++) {
    const read = timeAt(reader, index, true);
    if (read?.time === time && read.end <= end) return placesIn({ start: index, end: read.end });
  }
  return [];
};

/** The day's change with the hours named behind it; the day's alone where none is. */
export const dateAndHours = (reader: Reader, part: Part): readonly Finding[] | undefined => {
  const behind = clausesOf(reader, part);
  const head = behind === undefined ? undefined : { ...part, end: behind.at };
  const moved = (head && dateChange(reader, head)) ?? dateChange(reader, part);
  if (behind === undefined || head === undefined || moved?.facts === undefined || moved.asks !== undefined)
    return moved === undefined ? undefined : [moved];
  const { clauses } = behind;
  const own = clauses.find(({ of }) => of === 'rite') ?? clauses.find(({ of }) => of === 'event');
  const handing = clauses.find(({ of }) => of === 'hand over');
  const words = (clause: Clause): string => reader.words(clause.start, clause.time.end);
  const said = moved.facts.find((fact) => fact.fact === 'change' && fact.what === 'time' && fact.of === undefined);
  const lost = own !== undefined && said?.fact === 'change' && said.to !== own.time.time ? said : undefined;
  const facts: Fact[] = [
    ...moved.facts.filter((fact) => fact !== lost && (own === undefined || fact !== said)),
    ...(own === undefined ? [] : [{ fact: 'change' as const, what: 'time' as const, to: own.time.time, words: words(own) }]),
    ...(handing === undefined
      ? []
      : [{ fact: 'change' as const, what: 'time' as const, to: handing.time.time, of: 'hand over' as const, words: words(handing) }]),
  ];
  const held = [
    ...(lost === undefined ? [] : hourIn(reader, head, String(lost.to))),
    ...clauses.filter((clause) => clause !== own && clause !== handing).flatMap(({ time }) => placesIn(time)),
  ];
  const takes = placesIn(part).filter((index) => !held.includes(index));
  return [{ start: part.start, end: part.end, takes, facts }, ...held.map((index) => ({ start: index, end: index + 1, held: true }))];
};
