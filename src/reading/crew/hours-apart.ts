// Hands whose hours differ: "me 3 hrs, apprentice 5 hrs", "jo does 5 hours friday, sam does 3". Only the sum is sure.

import { decimal } from '../../values/decimal.ts';
import { dateOutcome } from '../dates/date-facts.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { tagsOf } from '../text/means.ts';
import type { Part } from '../text/message.ts';
import { withoutOwner } from '../text/owners.ts';
import { isNameless, isRangeOrChoice, isSingle } from '../text/token.ts';
import { hoursOf } from './pace.ts';

const opens = "(,|and|&|\\+|plus|then|n){0,2} (the|our|my)? (me|i|i'm|i'll|i've|ive|<b:bench>|<who:word>) (\\()?";
const does = "(:|-|for|does|doing|has|have|got|can do|can|could do|can give|gives|is|is in|in|'s|on|will do|only|just|about){0,3}";
const withHours = pattern(`${opens} ${does} <d:duration> (\\))? (for (this|it|these|them)|free|spare|max|tops)?`);
const withNumber = pattern(`${opens} ${does} <n:plain> (max|tops|only|hrs)?`);
// "5 hours for me and 3 for meg"
const link = "(,|and|&|n|\\+|plus|then|that's|thats|its|it's|so|about){0,2}";
const hoursFor = pattern(`${link} <d:duration> for (the|our|my)? (me|myself|<b:bench>|<who:word>)`);
const numberFor = pattern(`${link} <n:count> for (the|our|my)? (me|myself|<b:bench>|<who:word>)`);
// "fri: sipho 4h, me 6h", "we have anna for 6 hrs and beth for 4"
const ahead = pattern("(:|-|,|we have|we've got|weve got|we've|i have|i've got|we got|got|have|it's|its|there's|theres|will be){1,2}");
const summed = pattern(
  "(,|=|so|-){0,2} (=|that's|thats|is|makes|total|total of|in total|altogether)? (=|:)? (<n:count>|<n:duration>) (hrs|hours|h)? (total|in total|altogether|all up|all in)? (for|on)?",
);
export const notSomeone =
  /ing$|^(lunch|setup|set up|prep|drive|travel|cleanup|install|admin|wedding|ceremony|reception|break|total|design|church|venue|market|shop|van|soak|photos|collection|pickup|parking|order|another|about|around|only|last|first|party|event|job|work|time|est|max|min|roughly|labour|labor|hours|speeches|service|tents?|florals?|flowers|marquee|hair|makeup|bar|music|catering|stage|lighting|lights|site|load|unload|dentist|gym|yoga|college|class|uni|sleep|film|flight|bus|train|walk|buffer|spare|rest|delivery|them|it|that|this|these|those|one|each|everything|the|all|now|free|both|dinner|tea|we|we've|weve|they|they've|you|you've|us|need|needs|needed|want|wants|takes|took|have|plus|minus|maybe|say|or|not|before|after|until|till|including|incl|at|in|on|with|leaves|left)$/; // "2 hours for wiring"
const several = /s$|^(people|team|crew|staff|men|women|folk|ppl)$/;
// People may be called as plants are.
const firstNames = /^(rose|ivy|heather|daisy|jasmine|poppy|rosemary|fern|holly|iris|lily|violet|olive|basil)$/;

const dayAt = (reader: Reader, index: number, end: number): DateRead | undefined => {
  const on = /^(on|this)$/.test(reader.tokens[index]?.text ?? '') ? 1 : 0;
  const read = dateAt(reader.tokens, index, reader.context) ?? dateAt(reader.tokens, index + on, reader.context);
  return read !== undefined && read.end <= end && read.days.length > 0 ? read : undefined;
};

// "me 6 hrs, jess 4 hrs, thurs": a day behind a pause, where it ends the list.
const dayLast = (reader: Reader, index: number, end: number): DateRead | undefined => {
  const read = reader.tokens[index]?.text === ',' ? dayAt(reader, index + 1, end) : undefined;
  return read?.end === end ? read : undefined;
};

// "jo 4 or 5, me 3 hrs": somebody's hours, of which only the other's are sure.
const either = (reader: Reader, { end, kept }: Match, last: number): boolean => {
  const { n, d, who } = kept;
  const number = (n ?? d)?.number;
  if (who === undefined || !isNameless(who) || notSomeone.test(who.text) || isSingle(number)) return false;
  return withHours.at(reader.tokens, end, last) !== undefined;
};

export const hoursApart = (reader: Reader, part: Part): Finding | undefined => {
  const days: DateRead[] = [];
  let index = part.start;
  let total = decimal(0);
  let people = 0;
  let crowd = false;
  let timed = false;
  const titled = dayAt(reader, index, part.end);
  if (titled !== undefined) {
    days.push(titled);
    index = titled.end;
  }
  // "i've got 5 hrs, dana's got 3": one's own hours, where "we've got anna for 6" opens a list.
  if (withHours.at(reader.tokens, index, part.end) === undefined) index = ahead.at(reader.tokens, index, part.end)?.end ?? index;
  while (index < part.end) {
    const match =
      firstAt([hoursFor, withHours], reader.tokens, index, part.end) ?? firstAt([numberFor, withNumber], reader.tokens, index, part.end);
    const who = match?.kept['who'];
    // "me 4, junior 2 and a half hrs": hours are said with the other; "table 4, me 3 hrs" is no one's.
    const opensEither = people === 0 && match !== undefined && either(reader, match, part.end);
    if (opensEither) return { start: part.start, end: part.end, held: true };
    if (people === 0 && match?.kept['n'] !== undefined && (who !== undefined || match.kept['n'].number?.or !== undefined)) break;
    const said = (match?.kept['n'] ?? (people > 0 ? match?.kept['d'] : undefined))?.number;
    if (isRangeOrChoice(said)) return { start: part.start, end: part.end, held: true };
    timed ||= match?.kept['d'] !== undefined;
    const hours = match?.kept['n'] === undefined ? hoursOf(match?.kept['d']) : Number(match.kept['n'].number?.amount);
    // "lapel 5 min, corsage 12 min" is how long they take.
    if (match === undefined || hours === undefined || hours < 0.5 || hours > 14) break;
    if (who !== undefined && notSomeone.test(withoutOwner(who.text))) return undefined;
    // "juniors 3 hrs, me 5": how many juniors is not said.
    crowd ||= several.test(match.kept['b']?.text ?? '');
    if (who !== undefined && !firstNames.test(who.text) && tagsOf(who.means).some((tag) => tag !== 'role')) return undefined;
    total = total.plus(hours);
    people += 1;
    index = match.end;
    const day = dayAt(reader, index, part.end) ?? dayLast(reader, index, part.end);
    if (day !== undefined) {
      days.push(day);
      index = day.end;
    }
  }
  // "Bo 3hrs + me 5hrs = 8 for friday"
  const sum = people < 2 ? undefined : summed.at(reader.tokens, index, part.end);
  if (sum !== undefined && Number(sum.kept['n']?.number?.amount) === total.toNumber()) {
    index = sum.end;
    const day = dayAt(reader, index, part.end);
    if (day !== undefined) days.push(day);
    index = day?.end ?? index;
  }
  if (people < 2 || !timed || index < part.end) return undefined;
  if (crowd) return { start: part.start, end: part.end, held: true };
  const [day, ...others] = days;
  // "me 3 hrs sat, jo 5 hrs sun": no one day's hours.
  if (others.some((other) => other.days.join() !== day?.days.join())) return undefined;
  const fact = (date?: string): Unworded => ({
    fact: 'crew',
    people,
    totalHours: total.toNumber(),
    ...(date === undefined ? {} : { date }),
  });
  return day === undefined ? found(reader, part.start, part.end, [fact()]) : dateOutcome(reader, day, fact, part.start, part.end);
};
