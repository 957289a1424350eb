// Counted hands whose hours differ: "4 helpers, two can do 6 hrs each and two only 3", "one girl does 4 hrs, the other does 6". Every one of
// them is counted, or the sentence is held: hours of some are never the hours of all.

import { decimal } from '../../values/decimal.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, isSingle, type Token } from '../text/token.ts';
import { dateIn } from './days-at-bench.ts';
import { hoursOf, wageIn } from './pace.ts';

const head = pattern(
  "(ok|so|we have|we've got|weve got|we've|i have|i've got|ive got|got|have|there's|theres|there are|with|,){0,3} <n:count> (extra|more|other|good|new|of my|of the)? (<bench>|hands|friends|mates|gals) (in|on|coming|helping|free|available|at the bench|tomorrow|today|this|next|<weekday>){0,3} (,|:|-|;|but|and|though|\\(){1,2}",
);
const someone = '(<b:bench>|gal|gals|girl|girls|lad|lads|lady|ladies|friend|friends|mate|mates|one|ones|person|others)';
const does =
  "(,|:|-|can|could|will|may|'ll|do|does|doing|give|gives|manage|manages|got|have|has|'s|is|are|in|on|only|just|for|work|works|working|there|here|at the bench|about){0,5}";
const link = '(,|and|&|n|\\+|plus|then|but|while|whereas|;){0,2}';
const share = pattern(
  `${link} (the|an|my|our)? (<o:word>)? (<k:count>)? (new|young|older|extra)? (of (the|my|our)? (them|us|those|${someone})|${someone})? ${does} (<d:duration>|<h:count>) (each|<each>|a head|apiece)? (only|tops|max)?`,
);
const tail = pattern(
  '(,|-|at|on|@|both|all|for|and|they|get|paid|pay|is|are|tomorrow|today|this|next|<weekday>|\\)|each|<each>|a|an|per|/|p|ph|hr|hrs|hour|<money>)',
);
const rest = /^(other|others|another|rest|the rest)$/;
const allTheRest = /^(others|rest|the rest)$/;
const several = /s$|^(people|team|crew|men|women)$/;
const isSomeone = ({ means, text }: Token): boolean => means['bench'] !== undefined || /^(gal|girl|lad|lady|friend|mate)s?$/.test(text);

interface Share {
  readonly people: number;
  readonly hours: number;
  readonly other: boolean;
  readonly named: boolean; // "girls", "of us"
  readonly each: boolean;
  readonly end: number;
}

const shareAt = (tokens: readonly Token[], index: number, end: number, left: number): Share | undefined => {
  const match = share.at(tokens, index, end);
  if (match === undefined) return undefined;
  const { o, b, d, h } = match.kept;
  const k = match.kept['k'] === h ? undefined : match.kept['k'];
  const other = o !== undefined && rest.test(o.text);
  const hours = d === undefined ? Number(h?.number?.amount) : hoursOf(d);
  const unsure = [k, h].some((token) => isRangeOrChoice(token?.number));
  if ((o !== undefined && !other) || (k === undefined && !other) || unsure) return undefined;
  if (hours === undefined || !(hours >= 0.5 && hours <= 14)) return undefined;
  const rests = allTheRest.test(o?.text ?? '') || several.test(b?.text ?? '');
  const words = tokens.slice(match.start, match.end);
  return {
    people: k !== undefined ? Number(k.number?.amount) : rests ? left : 1,
    hours,
    other,
    named: words.some(isSomeone),
    each: words.some(({ means }) => means['each'] !== undefined),
    end: match.end,
  };
};

export const handsShared = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const opening = head.at(tokens, part.start, part.end);
  const number = opening?.kept['n']?.number;
  if (opening !== undefined && !isSingle(number)) return undefined;
  const whole = number === undefined ? undefined : Number(number.amount);
  const shares: Share[] = [];
  let [index, people, total] = [opening?.end ?? part.start, 0, decimal(0)];
  while (index < part.end) {
    const one = shareAt(tokens, index, part.end, whole === undefined ? Number.NaN : whole - people);
    // Hours are said with the first; "two only 3" goes on from there.
    if (one === undefined || (shares.length === 0 && !tokens.slice(index, one.end).some((token) => hoursOf(token) !== undefined))) break;
    shares.push(one);
    people += one.people;
    total = total.plus(decimal(String(one.hours)).times(String(one.people)));
    index = one.end;
  }
  const held = { start: part.start, end: part.end, held: true };
  const [first, ...more] = shares;
  // "4 helpers, two can do 6 hrs": nothing is said of the other two; in "2 juniors, 1 senior, 5 hrs each" all are alike.
  if (first !== undefined && more.length === 0)
    return whole === undefined || whole === people || (first.named && first.each) ? undefined : held;
  if (first === undefined || (whole === undefined && !shares.some(({ named }) => named))) return undefined;
  // "4 of us 6 hrs each, two only 3": two of the four, or two more?
  if (whole === undefined && more.some(({ other, named }) => !other && !named)) return held;
  for (let at = index; at < part.end; ) {
    const match = tail.at(tokens, at, part.end);
    if (match === undefined) return held;
    at = match.end;
  }
  const date = dateIn(reader, part);
  if (!Number.isInteger(people) || (whole !== undefined && whole !== people) || (date !== undefined && date.days.length !== 1)) return held;
  const [day] = date?.days ?? [];
  const wage = wageIn(reader, { ...part, start: index });
  return found(reader, part.start, part.end, [
    { fact: 'crew', people, totalHours: total.toNumber(), ...(day === undefined ? {} : { date: day }), ...(wage ?? {}) },
  ]);
};
