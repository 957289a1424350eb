// One stretch that tells of hands: how many there are, when, for how long, what an hour costs and how fast they are.

import { askDay, dateOutcome } from '../dates/date-facts.ts';
import type { FactOf } from '../fact.ts';
import { clausesOf } from '../held/clauses.ts';
import { firstIn } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { besidePace, leavesNumber } from './beside-pace.ts';
import {
  alone,
  benchHours,
  gotSome,
  hand,
  handsBehind,
  hoursNoted,
  longAgo,
  otherMatter,
  payWord,
  perDay,
  shiftSaid,
  strongHand,
  talk,
  thisWeek,
  totalHours,
  weHave,
} from './crew-forms.ts';
import { countBeside } from './days-apart.ts';
import { anotherDay, datesIn, plainPair } from './days-at-bench.ts';
import { namesSpan, spanOf } from './days-span.ts';
import { bareHours, hoursEach, isEach } from './each-hours.ts';
import { finishedAhead } from './finished-ahead.ts';
import { away, countAway, peopleIn, someoneHelps, unsureHands } from './hands.ts';
import { handsBehindPace } from './hands-behind-pace.ts';
import { handsShared } from './hands-shared.ts';
import { hoursApart } from './hours-apart.ts';
import { nobodyIn } from './nobody-in.ts';
import { ofThem } from './of-them.ts';
import { oneIsPaid } from './one-paid.ts';
import { openHours, openRate } from './open-hours.ts';
import { countedHands, hoursOf, othersPace, pace, wageIn } from './pace.ts';
import { anotherTimed, pacesListed } from './paces-listed.ts';
import { askOfRate, askPaidOrMade, doubtfulRate } from './paid-or-made.ts';
import { evenly, shiftHours, shiftsDiffer } from './shift-hours.ts';
import { someOnADay } from './some-on-a-day.ts';
import { namesKinds } from './speaks-of-hands.ts';
import { tillApart } from './till-apart.ts';
import { uncounted } from './uncounted.ts';

/** `behind`: the part stands behind other hands and their day; `timed`: hours are said for all of them. */
export const readShift = (reader: Reader, part: Part, behind = false, timed = false, beside = false): Finding | undefined => {
  const { tokens } = reader;
  const words = tokens.slice(part.start, part.end);
  const apart = tillApart(reader, part) ?? handsShared(reader, part) ?? hoursApart(reader, part);
  if (apart !== undefined) return apart;
  const listed = pacesListed(reader, part);
  if (listed !== undefined) return found(reader, part.start, part.end, listed);
  if (openRate.in(tokens, part.start, part.end) !== undefined) return { start: part.start, end: part.end, held: true };
  const speed = pace(reader, part);
  const wage = wageIn(reader, part);
  const wagedPeople = wage === undefined ? undefined : gotSome.in(tokens, part.start, part.end)?.kept['n']?.number?.amount;
  const myself = alone.in(tokens, part.start, part.end);
  const waged =
    wage !== undefined &&
    (words.some((token) => hoursOf(token) !== undefined) || shiftHours(reader, part) !== undefined) &&
    oneIsPaid(reader, part);
  const them = ofThem(reader, part, wage !== undefined);
  if (Number.isNaN(them)) return { start: part.start, end: part.end, held: true };
  const people =
    them ??
    peopleIn(reader, part) ??
    (waged ? 1 : undefined) ??
    (behind ? countBeside(reader, part) : undefined) ??
    (wagedPeople === undefined ? (myself === undefined && !someoneHelps(reader, part) ? undefined : 1) : Number(wagedPeople));
  // "2 of us mon to wed, 10 hrs": whose day's hours those are is not said.
  const span = people === undefined ? undefined : spanOf(reader, part);
  if (
    (people !== undefined && span === undefined && namesSpan(reader, part)) ||
    unsureHands(reader, part) ||
    someOnADay(reader, part, people) ||
    (people !== undefined && shiftsDiffer(reader, clausesOf(reader, part)))
  )
    return { start: part.start, end: part.end, held: true };
  const off = away(reader, part);
  if (off !== undefined) return off;
  const absent = countAway(reader, part);
  const gone = absent > 0;
  const rate = speed?.fact === 'crew' ? speed.piecesPerHour : undefined;
  // "freelancers at 20 an hour", "jo at 12 an hour": hired hands are paid it; of others it may be either.
  const either = rate !== undefined && rate === Number(wage?.wage);
  const hired = words.some((token) => token.number?.form === 'duration' || strongHand.test(token.text));
  const paced = either && !hired && speed?.fact === 'crew' && speed.piece !== undefined; // "lapels at 12 an hour"
  const pay = words.some((token) => payWord.test(token.text));
  // "10 bouts an hour between us": how many share it is not said.
  if (
    rate !== undefined &&
    (words.some((token) => /^(between|together|combined|altogether|all together|all up|in total)$/.test(token.text)) ||
      othersPace(reader, part))
  )
    return { start: part.start, end: part.end, held: true };
  if (either && !hired && !paced && !pay) return askPaidOrMade(reader, part, rate, wage);
  const shift = people !== undefined && people > 0 && !either && besidePace(reader, part, speed);
  if (speed !== undefined && !shift && (!either || paced) && speed.fact === 'crew' && !words.some((token) => talk.test(token.text))) {
    // "bouts 6 mins, crowns nearer the 30": another kind's time would be lost.
    if (anotherTimed(words, speed.piece)) return { start: part.start, end: part.end, held: true };
    // "one crown takes 45 mins, 2 girls working"
    const atIt = speed.minutesPerPiece === undefined ? undefined : handsBehindPace(reader, part);
    if (Number.isNaN(atIt)) return { start: part.start, end: part.end, held: true };
    return found(reader, part.start, part.end, [
      ...(speed.minutesPerPiece === undefined ? [] : finishedAhead(reader, part)),
      {
        ...speed,
        ...(paced ? {} : (wage ?? {})),
        ...(people === undefined || speed.minutesPerPiece !== undefined || !countedHands(reader, part) ? {} : { people }),
        ...(atIt === undefined ? {} : { people: atIt }),
      },
    ]);
  }
  if (longAgo.in(tokens, part.start, part.end) !== undefined) return undefined;
  const summed = benchHours.in(tokens, part.start, part.end)?.kept['n']?.number;
  const totals = firstIn(totalHours, tokens, part.start, part.end);
  const total = hoursOf(totals?.kept['d']) ?? (summed === undefined ? undefined : Number(summed.amount));
  const shared = totals !== undefined && words.some((token) => /^(between|among|amongst|across|shared|split)$/.test(token.text));
  const duration = totals === undefined ? hoursEach(reader, part, shift) : undefined;
  const bare = wage === undefined || people === undefined || totals !== undefined ? undefined : bareHours(reader, part);
  const noted = people === undefined ? undefined : hoursNoted.in(tokens, part.start, part.end)?.kept['n']?.number;
  if ([noted, bare, summed].some((number) => isRangeOrChoice(number))) return { start: part.start, end: part.end, held: true };
  const hours =
    hoursOf(duration?.kept['d']) ??
    (noted === undefined ? undefined : Number(noted.amount)) ??
    (bare === undefined ? undefined : Number(bare.amount)) ??
    (people !== undefined && people > 0 && total === undefined ? shiftHours(reader, part) : undefined) ??
    (shared && total !== undefined && people !== undefined && people > 0 ? evenly(total, people) : undefined);
  // "20 mins for me to get there": nobody's shift
  if ((hours !== undefined && hours < 0.5) || (people !== undefined && openHours(reader, part, [hours, total])))
    return { start: part.start, end: part.end, held: true };
  // "me jo n mia sat, 5 hrs each": one alone has no hours each.
  if (people === 1 && hours !== undefined && duration !== undefined && !beside && isEach(tokens, duration.end - 1))
    return { start: part.start, end: part.end, held: true };
  const named = span ?? datesIn(reader, part);
  const [date, ...more] = named;
  const atBench = words.some((token) => hand.test(token.text)) || words.some((token) => token.text === 'of us');
  const ours =
    total !== undefined &&
    (words.some((token) => /^(us|of us|bench|labour|labor)$/.test(token.text)) || weHave.in(tokens, part.start, part.end) !== undefined);
  const strong = words.some((token) => token.means['bench'] !== undefined && strongHand.test(token.text));
  const none = people !== undefined && people === nobodyIn(reader, part);
  const pair = plainPair(reader, part);
  const counted = handsBehind.in(tokens, part.start, part.end) !== undefined;
  const enough =
    ours || summed !== undefined || counted || ((timed || beside) && people !== undefined && date !== undefined)
      ? true
      : gone
        ? date !== undefined
        : wage !== undefined
          ? true
          : people !== undefined &&
            ((hours !== undefined && (total !== undefined || !words.some((token) => talk.test(token.text)))) ||
              total !== undefined ||
              perDay.in(tokens, part.start, part.end) !== undefined ||
              shiftSaid.in(tokens, part.start, part.end) !== undefined ||
              (atBench && thisWeek.in(tokens, part.start, part.end) !== undefined) ||
              (date !== undefined &&
                ((atBench && words.some((token) => token.means['bench'] !== undefined || token.text === 'bench')) ||
                  strong ||
                  none ||
                  pair)));
  if (
    !enough ||
    words.some(({ text }) => otherMatter.test(text)) ||
    (namesKinds(words, ours) && !counted && !shift && wage === undefined && hours === undefined)
  )
    return shift ? { start: part.start, end: part.end, held: true } : undefined;
  if (
    (shift && leavesNumber(reader, part, [people, rate, wage?.wage], named)) ||
    uncounted(
      reader,
      part,
      [people, hours, total, wage?.wage, ...(shift ? [rate] : [])],
      named,
      duration === undefined && bare === undefined && hours !== undefined,
    )
  )
    return { start: part.start, end: part.end, held: true };
  // "mon to wed, 5 hrs a day": the sum is each day's or that of them all.
  const overDays =
    span !== undefined ||
    (perDay.in(tokens, part.start, part.end) !== undefined && thisWeek.in(tokens, part.start, part.end) !== undefined) ||
    words.some((token) => token.number?.form === 'duration' && token.number.unit === 'day');
  const fact = (day?: string): Unworded =>
    ({
      fact: 'crew',
      ...(gone ? { people: absent } : people === undefined ? {} : { people }),
      ...(hours === undefined ? {} : { hours }),
      ...(total !== undefined
        ? { totalHours: total }
        : people !== undefined && hours !== undefined && !overDays
          ? { totalHours: people * hours }
          : {}),
      ...(day === undefined ? {} : { date: day }),
      ...(wage ?? {}),
      ...(shift && speed?.fact === 'crew' ? speed : {}),
      ...(gone ? { away: true } : {}),
    }) satisfies Omit<FactOf<'crew'>, 'words'>;
  const doubtful = people === undefined ? undefined : doubtfulRate(reader, part, wage?.wage, shift && speed !== undefined);
  const told = (finding: Finding): Finding => (doubtful === undefined ? finding : askOfRate(reader, finding, doubtful));
  if (date === undefined) return told(found(reader, part.start, part.end, [fact()]));
  if (anotherDay(reader, part, named)) return { start: part.start, end: part.end, held: true };
  if (more.length > 0) {
    const each = [date, ...more].flatMap((day) => (day.days.length === 1 ? [fact(day.days[0])] : []));
    return each.length > more.length ? told(found(reader, part.start, part.end, each)) : undefined;
  }
  if (date.days.length > 1 && doubtful !== undefined) return { start: part.start, end: part.end, held: true };
  if (date.days.length > 1) return { start: part.start, end: part.end, asks: [askDay(reader, date, fact, part.start, part.end)] };
  const dated = dateOutcome(reader, date, fact, part.start, part.end);
  return dated.facts === undefined ? dated : told(dated);
};
