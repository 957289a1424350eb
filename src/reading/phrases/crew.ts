// Who is at the bench and how fast: "2 of us fri, 5 hrs each", "two freelancers at R150 p/h", "takes me 7 mins per buttonhole".

import { withoutOrder } from '../crew/beside-order.ts';
import { companyFed } from '../crew/company-fed.ts';
import { speedAhead } from '../crew/crew-forms.ts';
import { dayOff } from '../crew/day-off.ts';
import { withoutDayWage } from '../crew/day-wage.ts';
import { daysApart, shareHours } from '../crew/days-apart.ts';
import { agreed, daysSummed } from '../crew/days-summed.ts';
import { withoutAbsent } from '../crew/hands.ts';
import { withHours } from '../crew/hours-behind.ts';
import { onlyHeld } from '../crew/only-held.ts';
import { onlyUs } from '../crew/only-us.ts';
import { endsEither } from '../crew/open-hours.ts';
import { ownShift } from '../crew/own-shift.ts';
import { hoursOf, pace } from '../crew/pace.ts';
import { pairHours } from '../crew/pair-hours.ts';
import { readShift } from '../crew/read-shift.ts';
import { rotas } from '../crew/rota.ts';
import { shiftsTold } from '../crew/shifts-told.ts';
import { speaksOfHands } from '../crew/speaks-of-hands.ts';
import { askWhichWeek } from '../crew/which-week.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { onClockLine } from '../text/clock-lines.ts';
import type { Part } from '../text/message.ts';

const readPart = (reader: Reader, part: Part): Finding[] => {
  if (part.end - part.start > 40) return [];
  const us = onlyUs(reader, part);
  if (us !== undefined) return [us];
  if (!speaksOfHands(reader, part)) return [];
  if (endsEither.in(reader.tokens, part.start, part.end) !== undefined) return [{ start: part.start, end: part.end, held: true }];
  // "timed myself, 6 in 45 min": neither hands nor their hours.
  if (speedAhead.in(reader.tokens, part.start, part.end) !== undefined && pace(reader, part) === undefined)
    return [{ start: part.start, end: part.end, held: true }];
  const own = ownShift(reader, part) ?? shiftsTold(reader, part) ?? pairHours(reader, part);
  if (own !== undefined) return [own];
  const off = dayOff(reader, part);
  if (off !== undefined) {
    const held = { start: off.start, end: off.end, held: true };
    const behind = reader.tokens[off.end]?.text === ',' ? off.end + 1 : off.end;
    const rest = [
      { ...part, end: off.start },
      { ...part, start: behind },
    ].filter(({ start, end }) => end - start > 1);
    return [held, ...rest.flatMap((each) => readPart(reader, each))];
  }
  if (companyFed(reader, part)) return [];
  if (onlyHeld(reader, part)) return [{ start: part.start, end: part.end, held: true }];
  const timed = reader.tokens.slice(part.start, part.end).some((token) => hoursOf(token) !== undefined);
  const stretches = daysApart(reader, part);
  const summed = stretches === undefined ? undefined : daysSummed(reader, stretches);
  const days = (summed?.days ?? stretches)?.map((day, at) => readShift(reader, day, at > 0, timed, true));
  if (days?.every((finding) => finding?.facts !== undefined)) {
    const read = shareHours(days.flatMap((finding) => finding ?? []));
    return summed === undefined ? read : [...agreed(read, part, summed)];
  }
  const there = withoutAbsent(reader, part);
  const finding = readShift(reader, there ?? part);
  if (finding === undefined) return [];
  return there === undefined ? [{ start: part.start, end: part.end, held: true }] : withoutDayWage(reader, finding);
};

const find = (reader: Reader): Finding[] => {
  const listed = rotas(reader);
  const apart = (part: Part): boolean => listed.every(({ start, end }) => end <= part.start || start >= part.end);
  const parts = reader
    .untouched()
    .filter(({ start }) => !onClockLine(reader.tokens, start))
    .slice(0, 40)
    .filter(apart);
  const read = withHours(reader, parts).flatMap((whole) => readPart(reader, withoutOrder(reader, whole)));
  return askWhichWeek(reader, [...listed, ...read]);
};

export const crew: Phrase = {
  name: 'crew',
  examples: ['2 of us fri, 5 hrs each', 'two freelancers at 15 an hour, 8 hours each', 'takes me 7 mins per buttonhole'],
  find,
};
