// How fast and at what wage: "7 mins per buttonhole", "8 an hour", "casuals are 28 an hour".

import { decimal } from '../../values/decimal.ts';
import { pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isCount, isNameless, type Token } from '../text/token.ts';
import { hourlyPiece, oneInAll, paceAsSpeed, paceForms, paceIn, paceOfSome, rateForms, strongHand, wageForms } from './crew-forms.ts';

export const hoursOf = (token: Token | undefined): number | undefined => {
  const number = token?.number;
  if (number?.form !== 'duration' || number.max !== undefined || number.or !== undefined) return undefined;
  if (number.unit === 'hour') return Number(number.amount);
  return number.unit === 'min' ? Number(decimal(number.amount).dividedBy(60).toFixed()) : undefined;
};
const minutesOf = (token: Token | undefined): number | undefined => {
  const hours = hoursOf(token);
  return hours === undefined ? undefined : token?.number?.unit === 'min' ? Number(token.number.amount) : hours * 60;
};

const someTake = (reader: Reader, part: Part): Unworded | undefined => {
  for (const form of [...paceAsSpeed, ...paceOfSome]) {
    const match = form.in(reader.tokens, part.start, part.end);
    const [pieces, minutes] = [Number(match?.kept['n']?.number?.amount), minutesOf(match?.kept['d'])];
    if (
      match === undefined ||
      minutes === undefined ||
      !(pieces > 1) ||
      match.kept['p'] === undefined ||
      match.kept['n']?.number?.max !== undefined
    )
      continue;
    return match.kept['d']?.number?.unit === 'hour'
      ? {
          fact: 'crew',
          piecesPerHour: Number(decimal(pieces).times(60).dividedBy(String(minutes)).toDecimalPlaces(2)),
          ...kindOf(match.kept['p']),
        }
      : {
          fact: 'crew',
          minutesPerPiece: Number(decimal(String(minutes)).dividedBy(pieces).toDecimalPlaces(2)),
          ...kindOf(match.kept['p']),
        };
  }
  return undefined;
};

const notWork = /^(way|old|late|early|away|from|behind|left|to go|ago)$/;
// "a crown is 25 min for jess": not the bench's own.
const ofAnother = ({ tokens }: Reader, index: number, end: number): boolean => {
  const name = tokens[index + 1];
  return tokens[index]?.text === 'for' && index + 2 === end && name !== undefined && isNameless(name) && !ourselves.test(name.text);
};
const ourselves = /^(me|us|now|it|them|each|one|everyone|both|all|starters|sure|ages|real|once)$/;

// "7 mins per buttonhole", "8 an hour".
export const pace = (reader: Reader, part: Part): Unworded | undefined => {
  const some = someTake(reader, part);
  if (some !== undefined) return some;
  for (const form of paceForms) {
    const first = form.in(reader.tokens, part.start, part.end);
    // "3 of us, 4 hrs each, 6 mins per bout": the hours of each are no pace.
    const ofEach = first !== undefined && first.kept['p'] === undefined && first.kept['d']?.number?.unit === 'hour';
    const match = (ofEach ? form.in(reader.tokens, first.end, part.end) : undefined) ?? first;
    const minutes = minutesOf(match?.kept['d']);
    if (match === undefined || minutes === undefined || minutes > 600) continue;
    if (match.kept['o'] !== undefined && !/'s$/.test(match.kept['o'].text)) continue; // "a crown 25 min before"
    if (match.kept['h'] !== undefined && match.kept['d']?.number?.unit === 'hour') continue; // "2 on bouts 5 hrs each"
    if (notWork.test(reader.tokens[match.end]?.text ?? '')) continue; // "half an hour each way"
    if (ofAnother(reader, match.end, part.end)) continue;
    // "40 bouts = 6 hrs" is what so many take together.
    const many = reader.tokens[match.start - 1];
    const together =
      match.kept['p'] !== undefined && reader.tokens[match.start] === match.kept['p'] && isCount(many) && many?.number?.amount !== '1';
    if (together && (match.kept['d']?.number?.unit === 'hour' || /^[=:]$/.test(reader.tokens[match.start + 1]?.text ?? ''))) continue;
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
  // "crown 50mins start to finish": one piece and its time, and nothing else.
  const one = oneInAll.at(reader.tokens, part.start, part.end);
  const whole = minutesOf(one?.kept['d']);
  if (one?.end === part.end && whole !== undefined && !/s$/.test(one.kept['p']?.text ?? 's'))
    return { fact: 'crew', minutesPerPiece: whole, ...kindOf(one.kept['p']) };
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

// "2 of us do 8 an hour", "me and Tui can each do about 6 bouts an hour": how many they are is said beside the pace of each.
const pair = pattern('((me|i|myself) (and|&|n|\\+) <word>|<word> (and|&|n|\\+) (me|i|myself))');
const pairEach = pattern(
  "((me|i|myself) (and|&|n|\\+) <word>|<word> (and|&|n|\\+) (me|i|myself)) (can|could|will|should|'ll|usually|normally){0,2} (both|each)",
);
export const countedHands = ({ tokens }: Reader, { start, end }: Part): boolean =>
  tokens
    .slice(start, end)
    .some(
      ({ text, means }, at, words) =>
        text === 'of us' || (at === words.length - 1 && means['each'] !== undefined && pair.in(tokens, start, end) !== undefined),
    ) || pairEach.in(tokens, start, end) !== undefined;

// "jo does 12 an hour, me 8": two paces, and neither is the bench's.
const another = pattern(
  "(an|a|per|/|p) (hour|hr|h) (,|and|&|but|n|-){1,2} (me|i|i'm|mine|the <bench>|my <bench>|<word>) (does|do|can do|is|is on|about|at|only|is at|more like|maybe|just){0,2} <n:count> (an hour|if that|tops|max)?",
);
export const othersPace = (reader: Reader, part: Part): boolean => {
  const match = another.in(reader.tokens, part.start, part.end);
  return match !== undefined && (match.end === part.end || reader.tokens[match.end]?.text === ',');
};

const paid = /^(labour|labor|is|are|at|on|pay|paying|get|gets|@|rate|wage|costs|cost)$/;
// "2 casuals sat, 6 hours each, 28 an hr": a bare number behind the hours of hands is their wage.
const besideHours = (reader: Reader, part: Part, at: number): boolean => {
  const before = reader.tokens.slice(part.start, at);
  return (
    before.some((token) => token.means['bench'] !== undefined) &&
    (reader.tokens[at - 1]?.text === ',' || before.some((token) => strongHand.test(token.text))) &&
    reader.tokens.slice(part.start, part.end).some((token) => token.number?.form === 'duration')
  );
};

// "2 casuals 5 hrs each at 28": behind the hours of each, what an hour costs; "5 hrs at 9" may begin at nine.
const behindHours = pattern('<duration> (each)? (,)? (at|@|on|x) <w:amount> (each|ph|an hour|per hour)?');
const behindTheirHours = (reader: Reader, part: Part): Token | undefined => {
  const match = behindHours.in(reader.tokens, part.start, part.end);
  const token = match?.kept['w'];
  if (match?.end !== part.end || token?.number === undefined || token.number.max !== undefined) return undefined;
  if (!reader.tokens.slice(part.start, match.start).some((each) => each.means['bench'] !== undefined)) return undefined;
  return token.number.form === 'money' || Number(token.number.amount) >= 15 ? token : undefined;
};

// "freelance rate 180 per day": no wage by the hour.
const notHourly = pattern(
  '(per|a|an|each|every|/|p)? (day|days|shift|session|week|weekend|fortnight|month|morning|afternoon|piece|<piece>|pd|daily)',
);

export const wageIn = (reader: Reader, part: Part): { wage: string; currency?: string; symbol?: string } | undefined => {
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
        reader.tokens[match.start] === match.kept['w'] &&
        !paid.test(reader.tokens[match.start - 1]?.text ?? '') &&
        !besideHours(reader, part, match.start)) ||
      (last !== undefined && /^(per|an|a|\/|p)$/.test(last.text)) ||
      notHourly.at(reader.tokens, match.end, part.end) !== undefined
    )
      continue;
    return {
      wage: number.amount,
      ...(number.currency === undefined ? {} : { currency: number.currency }),
      ...(number.symbol === undefined ? {} : { symbol: number.symbol }),
    };
  }
  const told = behindTheirHours(reader, part)?.number;
  if (told === undefined) return undefined;
  return {
    wage: told.amount,
    ...(told.currency === undefined ? {} : { currency: told.currency }),
    ...(told.symbol === undefined ? {} : { symbol: told.symbol }),
  };
};
