// Several days in one sentence, each with its own hands: "2 of us fri and 3 of us sat, 5 hrs each".

import type { FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { dateIn } from './days-at-bench.ts';
import { peopleIn } from './hands.ts';

const joint = /^(,|and|&|n|then|plus|\+)$/;

// "2 helpers thu, 1 fri": behind hands and their day, a number and a day are hands again.
const countAndDay = pattern('(only|just)? <n:count> (more|others|other)? (on|this|next)? <weekday>');
const dayAndCount = pattern("<weekday> (:|-|it's|its|is)? (only|just)? <n:count> (more|others|other)?");

const mostHands = 12; // "2 of us fri, 40 sat" counts no hands

/** How many a stretch behind the first day names without a word for hands. */
export const countBeside = (reader: Reader, { start, end }: Part): number | undefined => {
  const match = countAndDay.at(reader.tokens, start, end) ?? dayAndCount.at(reader.tokens, start, end);
  const number = match?.kept['n']?.number;
  const closed = match !== undefined && (match.end === end || joint.test(reader.tokens[match.end]?.text ?? ''));
  const count = Number(number?.amount);
  return !closed || number === undefined || number.max !== undefined || count > mostHands ? undefined : count;
};

/** The stretches that tell of a day and its hands each; undefined when there are not several, none where a number may be hands or hours. */
export const daysApart = (reader: Reader, part: Part): Part[] | undefined => {
  const cuts: Part[] = [];
  let from = part.start;
  for (let index = part.start; index <= part.end; index++) {
    if (index < part.end && !joint.test(reader.tokens[index]?.text ?? '')) continue;
    if (index > from) cuts.push({ ...part, start: from, end: index });
    from = index + 1;
  }
  if (cuts.length < 2) return undefined;
  const days: Part[] = [];
  for (const cut of cuts) {
    const before = days.at(-1);
    const own = peopleIn(reader, cut);
    const hands = own ?? (before === undefined ? undefined : countBeside(reader, cut));
    // "me fri 4 hrs, sat 3": three hours or three hands is not said, so nothing is read.
    const [first] = days;
    const alone = first !== undefined && own === undefined && hands !== undefined && peopleIn(reader, first) === 1;
    if (alone && reader.tokens.slice(first.start, first.end).some(({ number }) => number?.form === 'duration')) return [];
    if (hands !== undefined && dateIn(reader, cut) !== undefined) days.push(cut);
    else if (before !== undefined && !reader.tokens.slice(cut.start, cut.end).some((token) => token.means['bench'] !== undefined))
      days[days.length - 1] = { ...before, end: cut.end };
    else return undefined;
  }
  const dates = new Set(days.map((day) => dateIn(reader, day)?.days.join()));
  return days.length > 1 && dates.size === days.length ? days : undefined;
};

type Crew = FactOf<'crew'>;

/** Hours said once, at the end, are those of every day named before. */
export const shareHours = (findings: readonly Finding[]): Finding[] => {
  const last = findings.at(-1)?.facts?.find((fact): fact is Crew => fact.fact === 'crew');
  return findings.map((finding) => ({
    ...finding,
    ...(finding.facts === undefined
      ? {}
      : {
          facts: finding.facts.map((fact) =>
            fact.fact === 'crew' && fact.hours === undefined && fact.totalHours === undefined && last?.hours !== undefined
              ? { ...fact, hours: last.hours, ...(fact.people === undefined ? {} : { totalHours: fact.people * last.hours }) }
              : fact,
          ),
        }),
  }));
};
