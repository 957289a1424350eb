// How many are at the bench, by the clock or by the hour, and who is away.

import { dateOutcome } from '../dates/date-facts.ts';
import { clausesOf } from '../held/clauses.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import { tagsOf } from '../text/means.ts';
import type { Part, Stretch } from '../text/message.ts';
import { withoutOwner } from '../text/owners.ts';
import { firstWhere, isNameless, isSingle } from '../text/token.ts';
import { awayWord, helping, meAnd, pairForms, peopleForms } from './crew-forms.ts';
import { dateIn } from './days-at-bench.ts';
import { handsTogether } from './hands-together.ts';
import { nobodyIn } from './nobody-in.ts';
import { hoursOf } from './pace.ts';
import { shiftHours } from './shift-hours.ts';
import { tillThenOnly } from './till-then.ts';
import { wagesDiffer } from './wages-differ.ts';

// "2 seniors 1 junior": all the hands that are named.
const named = pattern('<n:count> (extra|more|other|good|new)? <bench>');
// "2 of us or 3 of us", "not 3 of us, 2 of us": only one of the numbers is meant.
const either = pattern('(or|not|no|instead|rather|maybe|actually)');
const summedHands = (reader: Reader, part: Part): number | undefined => {
  let [sum, times] = [0, 0];
  for (let index = part.start; index < part.end; index++) {
    const match = named.at(reader.tokens, index, part.end);
    if (match?.kept['n']?.number === undefined || match.kept['n'].number.max !== undefined) continue;
    sum += Number(match.kept['n'].number.amount);
    times += 1;
    index = match.end - 1;
  }
  if (times > 1 && either.in(reader.tokens, part.start, part.end) !== undefined) return Number.NaN;
  return times > 1 ? sum : undefined;
};

export const peopleIn = (reader: Reader, part: Part): number | undefined => {
  const together = handsTogether(reader, part);
  if (together !== undefined) return together;
  const others = meAnd.in(reader.tokens, part.start, part.end);
  // "5 hours for me and 3 for meg": the three are hours.
  const more = others === undefined || reader.tokens[others.end]?.text === 'for' ? undefined : others.kept['n']?.number;
  if (more !== undefined) return isSingle(more) ? 1 + Number(more.amount) : undefined;
  const hands = summedHands(reader, part);
  if (hands !== undefined) return Number.isNaN(hands) ? undefined : hands;
  for (const form of peopleForms) {
    const match = form.in(reader.tokens, part.start, part.end);
    // "freelancers 30 for 4 hours": what they are paid, by common practice, no source
    if (match?.kept['ahead'] !== undefined && Number(match.kept['n']?.number?.amount) >= 15) return undefined;
    if (match !== undefined && match.kept['n']?.number?.max === undefined) return Number(match.kept['n']?.number?.amount);
  }
  const none = nobodyIn(reader, part);
  if (none !== undefined) return none === 'others' ? undefined : none;
  for (const [form, people] of pairForms) {
    const match = form.in(reader.tokens, part.start, part.end);
    // "staff cost me 16 an hour" tells of no one alone.
    if (match !== undefined && !/^(costs?|charges?|charging|costing|owes?)$/.test(reader.tokens[match.start - 1]?.text ?? ''))
      return people;
  }
  return undefined;
};

// "add another pair of hands", "one junior 4 hours and me all day": more than are here, or not all for as long, so no number is sure.
const oneMore = pattern('(add|adding|get|getting|plus|need|want|find|grab|do with) (in|us|me)? (an|one|1)? (another|extra|more) (<bench>)');
// "need 2 extra hands sat", "we lost a junior for friday", "freelancer cancelled for sat": who is wanting, not who is there.
const wanting = [
  pattern(
    '(need|needs|needing|do with|looking for|want|find|short|down|lost|losing|lose|minus|missing|without) (to find|of|about|by)? (a|an|one|our|the|my|another|<count>) (extra|more|other|good)? <bench>',
  ),
  pattern(
    "<bench> (has|have|'s|just|all|both|for <weekday>|on <weekday>){0,2} (cancelled|canceled|pulled out|pulling out|dropped out|bailed|bailed on us|quit|let us down|isn't coming|isnt coming|aren't coming|not coming|can't come|cant come|can't make it|cant make it|can't make|cant make|can't do|cant do|unavailable)",
  ),
  pattern(
    "(we are|we're|were|im|i'm|be|running|still)? (a|an|one|<count>) (man|hand|person|body|people|pair of hands|head)? (short|down) (on|for|this|next)? (the)? <weekday>",
  ),
];
/** Whether the sentence tells of hands that are wanting. */
export const handsWanting = (reader: Reader, { start, end }: Part): boolean =>
  wanting.some((form) => form.in(reader.tokens, start, end) !== undefined);
const unlike = pattern(
  '(and|&|\\+|,|n) (me|<bench>|<word>) (for)? (all day|half a day|half day|the morning|the afternoon|mornings|afternoons)',
);
// "takes 2 of us 3 hours for 30 bouts" is a pace of them together, and no shift.
const fewerBy = pattern(
  '((minus|except|except for|apart from) (<unlisted>|me|the <bench>|my <bench>)|without (me|the <bench>|my <bench>))',
); // "team of 3 minus jo"
const pieceworkOfSome = pattern('(takes|take|took) (about)? <count> <bench> (about|around)? <duration>');
// "kirra in fri 8 til 12, me all day": not all of them for as long.
const wholeDay = pattern('(all day|half a day|half day|full day|whole day|mornings|afternoons|the morning|the afternoon|mornings only)');
const morning = pattern('<weekday> (morning|am)');
// "me sat all day, two juniors after lunch"
const fromLunch = pattern('(,|and|&|n|then) (the|our|my|a)? (<any>){1,2} (after|before|from|till|til|until) (lunch|noon|midday|school)');
const daysUnlike = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const all = wholeDay.in(tokens, start, end);
  const first = all ?? (fromLunch.might(tokens) ? morning.in(tokens, start, end) : undefined);
  if (first === undefined || !tokens.slice(start, end).some(({ text }) => /^(,|and|&|n)$/.test(text))) return false;
  if (fromLunch.in(tokens, first.end, end) !== undefined) return true;
  if (all === undefined) return false;
  return (
    wholeDay.in(tokens, first.end, end) !== undefined ||
    shiftHours({ tokens } as Reader, { start, end, asked: false }) !== undefined ||
    tokens.slice(start, end).some(({ number }) => number?.max !== undefined)
  );
};
// "Bo 3hrs + me 5hrs", "Tess 24/hr and Bo 22/hr": not alike, and only one of the numbers would be read.
const summedUp = pattern('(=|total|in total|altogether|all up|combined|in all|<all>|between|break|lunch)');
const hoursDiffer = ({ tokens }: Reader, { start, end }: Part): boolean =>
  summedUp.in(tokens, start, end) === undefined &&
  new Set(tokens.slice(start, end).flatMap((token) => (token.number?.unit === 'hour' ? (hoursOf(token) ?? []) : []))).size > 1;
// "jo's got 5 hrs, the rest 3": hours of others, beside those that would be read as the hours of them all.
const hoursOfOthers = pattern(
  "<duration> (<any>){0,3} (,|and|&|n|but|;|-|while|whereas|then){1,2} (the|my|our)? (<count>|<any>)? (<any>)? (does|do|can do|can|could|got|has|have|for|only|just|'s|doing|in for) (only|just|do|about)? <h:count> (,|and|-|hrs|max|tops|only|each|<each>|a head|\\)|today|tomorrow|<weekday>)?",
);
// "one girl 4 hrs at 12 an hour, the other 6 at 14"
const hoursOfOther = pattern('<duration> (<any>){0,6} (other|others|the rest|rest) (<any>){0,2} (<count>|<duration>)');
const readsOthers = ({ tokens }: Reader, { start, end }: Part): boolean => {
  if (hoursOfOther.in(tokens, start, end) !== undefined) return true;
  const match = hoursOfOthers.in(tokens, start, end);
  const [hours, next] = [match?.kept['h']?.number, match === undefined || match.end >= end ? undefined : tokens[match.end]];
  if (match === undefined || !(Number(hours?.amount) <= 14)) return false;
  return match.end === end || !(tokens[match.end - 1] === match.kept['h'] && next !== undefined);
};
const slower = pattern('(twice|half|double) as (long|fast|slow|quick|quickly|many)');
export const unsureHands = (reader: Reader, { start, end }: Part): boolean =>
  daysUnlike(reader, { start, end, asked: false }) ||
  hoursDiffer(reader, { start, end, asked: false }) ||
  wagesDiffer(reader, { start, end, asked: false }) ||
  readsOthers(reader, { start, end, asked: false }) ||
  slower.in(reader.tokens, start, end) !== undefined ||
  oneMore.in(reader.tokens, start, end) !== undefined ||
  pieceworkOfSome.in(reader.tokens, start, end) !== undefined ||
  fewerBy.in(reader.tokens, start, end) !== undefined ||
  tillThenOnly(reader.tokens, start, end) ||
  (unlike.in(reader.tokens, start, end) !== undefined && reader.tokens.slice(start, end).some((token) => hoursOf(token) !== undefined));

// "jo is off friday"
const offForm = pattern(
  "<who:word> (is|'s|will be|are|s)? (both)? (not|away|off|out|sick|on) (in|work|holiday|leave|sick)? (this|on|next|all)? (<weekday>|tomorrow|today)",
);
const notPeople =
  /^(not|isn't|isnt|no|never|on|in|drop|drops|dropping|pick|picking|set|setting|take|taking|kick|sign|write|log|clock|knock|start|head|turn|switch|show|send|sending|cut|get|put|carry|ring|back|time|money|finish|finishing|lift|hand|load|pack|packing|bring|collect|i'd|he|she|they|you|order|see|the|power|water|heating|van|market|shop|everything|it|that|wedding|event|party|phones|internet|wifi|fridge|cooler|is|are|moved|what|date|due|rent|ceremony|bench|lights|road|train|trains|bus|buses|school|bins|studio|we're|were|we|closed|day|all|heat|gas|that's|thats|its|it's|delivery|sale|stems|ribbon|one|us|who|someone|anything|nothing|going|heading|eating|coming|goes|go|boxes|orders|flowers|pieces)$/;

const sickCall = pattern("<who:word> (has|have|'s)? (just)? (called|phoned|rang|rung|texted|messaged) in sick (for|on)?");

export const away = (reader: Reader, part: Part): Finding | undefined => {
  const match = sickCall.in(reader.tokens, part.start, part.end) ?? offForm.in(reader.tokens, part.start, part.end);
  const name = match?.kept['who'];
  const words = reader.tokens.slice(match?.start ?? 0, match?.end ?? 0).map((token) => token.text);
  if (
    match === undefined ||
    name === undefined ||
    notPeople.test(withoutOwner(name.text)) ||
    awayWord.test(name.text) ||
    !words.some((word) => awayWord.test(word) || word === 'not')
  )
    return undefined;
  if (!isNameless(name) || /^(the|our|my)$/.test(reader.tokens[match.start - 1]?.text ?? '') || part.end - part.start > 9) return undefined;
  const date = dateIn(reader, part);
  if (date === undefined) return undefined;
  // "tim and jo are both off friday"
  let people = 1;
  for (let at = match.start - 1; at > part.start && /^(and|&|n|,)$/.test(reader.tokens[at]?.text ?? ''); at -= 2) people += 1;
  return dateOutcome(reader, date, (day) => ({ fact: 'crew', people, date: day, away: true }), part.start, part.end);
};

// "2 of us are off fri", "one of the juniors is away sat"
const countedAway = pattern(
  "(<n:count> (of us|of the <bench>|of my <bench>|of our <bench>|of them|<bench>)|both (of us|the <bench>|<bench>|the girls|the lads)?) (are|is|will be|'s|both|all){0,2} (not in|not here|not available|not working|away|off sick|off|out sick|out|sick|ill|missing|absent|unavailable|on leave|on holiday|on hols)",
);
const when = /^(on|this|next|all|for|from|until|till|til|tomorrow|tmrw|tmr|today|the|over|again|,|and|-|cos|as|because|with)$/;

/** How many are said to be away; 0 where a word for it speaks of none who are counted. */
export const countAway = ({ tokens }: Reader, { start, end }: Part): number => {
  const match = countedAway.in(tokens, start, end);
  const next = match === undefined || match.end >= end ? undefined : tokens[match.end];
  if (match === undefined || (next !== undefined && next.means['weekday'] === undefined && !when.test(next.text))) return 0;
  return match.kept['n'] === undefined ? 2 : Number(match.kept['n'].number?.amount);
};

// "jo's sick so only 2 of us": why there are no more.
const reason = /^(as|because|cos|coz|cuz|since|with)$/;
// "i can knock out 9 an hour if noone talks to me": no one is out.
const turnsOut = /^(knock|bang|churn|crank|smash|pump|turn|bash|hammer|whack|put|get|sort|find|make)(s|ing|ed|es)?$/;
const saysAway = ({ tokens }: Reader, { start, end }: Stretch): boolean =>
  tokens
    .slice(start, end)
    .some(({ text }, at, words) => awayWord.test(text) && !(text === 'out' && turnsOut.test(words[at - 1]?.text ?? ''))) &&
  !tokens.slice(start, end).some((token) => reason.test(token.text));

/** "niamh's out sick so it's 3 of us": two clauses, with nothing between them. */
export const apartAtSo = ({ tokens }: Reader, { start, end }: Stretch): Stretch[] => {
  const at = firstWhere(tokens, start + 1, end - 1, ({ text }) => text === 'so');
  return at < 0
    ? [{ start, end }]
    : [
        { start, end: at },
        { start: at + 1, end },
      ];
};

/** "only 2 of us sat, jo's sick": who is away is why; the rest of the sentence tells who is there. Nothing where that is not plain. */
export const withoutAbsent = (reader: Reader, part: Part): Part | undefined => {
  if (!saysAway(reader, part) || countAway(reader, part) > 0 || peopleIn(reader, part) === undefined) return part;
  const clauses = clausesOf(reader, part).flatMap((clause) => apartAtSo(reader, clause));
  const there = clauses.filter((clause) => !saysAway(reader, clause));
  const [first] = there;
  const last = there.at(-1);
  if (first === undefined || last === undefined || there.length === clauses.length) return undefined;
  if (clauses.slice(clauses.indexOf(first), clauses.indexOf(last)).some((clause) => saysAway(reader, clause))) return undefined;
  const rest = { ...part, start: reader.tokens[first.start]?.text === ',' ? first.start + 1 : first.start, end: last.end };
  return peopleIn(reader, rest) === undefined ? undefined : rest;
};

/** "mum's helping saturday, 4 hours" */
export const someoneHelps = (reader: Reader, part: Part): boolean => {
  const match = helping.at(reader.tokens, part.start, part.end);
  const who = match?.kept['who'];
  if (who === undefined || tagsOf(who.means).some((tag) => tag !== 'role' && tag !== 'owner')) return false;
  return !notPeople.test(withoutOwner(who.text)) && reader.tokens.slice(part.start, part.end).some((token) => hoursOf(token) !== undefined);
};
