// Oneself and one other, each with hours of their own said by "she" and "I": "just me and my sister tomorrow, she can only give 3 hours and
// I've got 6". Only the sum is sure.

import { decimal } from '../../values/decimal.ts';
import { dateOutcome } from '../dates/date-facts.ts';
import { dateAt } from '../dates/date-forms.ts';
import type { DateRead } from '../dates/date-read.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { hoursOf } from './pace.ts';

const pair = pattern(
  "(ok|so|,|just|only|it's|its|it'll be|there's|theres|we have|we've got){0,3} ((me|myself) (and|&|n|\\+|plus) (my|the|our)? <w:word>|(my|the|our)? <w:word> (and|&|n|\\+) (me|myself|i)) (are|is|in|on|both|here|working|this|next){0,3}",
);
const does =
  "(can|could|will|'ll|has|have|have got|'ve|got|do|does|doing|give|gives|giving|manage|manages|spare|work|works|working|in|for|only|just|about|around|up to|probably|free){0,5}";
const many = '(<d:duration>|<n:count>) (hours|hrs|h)? (only|max|tops|each|free|spare)?';
const theirs = pattern(`(she|he|they|she's|he's|shes|hes|she'll|he'll|she's got|he's got) ${does} ${many}`);
const mine = pattern(`(i|i've|ive|i'll|i'm|im|me|myself|i can|i've got) ${does} ${many}`);
const joint = /^(,|and|&|n|but|while|whereas|-|:|;|then|so|on|for)$/;
const severalWord = /s$|^(team|crew|staff|people|girls|lads|us)$/;

const hoursIn = ({ kept }: Match): number | undefined => {
  const hours = kept['n'] === undefined ? hoursOf(kept['d']) : Number(kept['n'].number?.amount);
  const number = (kept['n'] ?? kept['d'])?.number;
  return hours !== undefined && hours >= 0.5 && hours <= 14 && number?.max === undefined && number?.or === undefined ? hours : undefined;
};

/** Both of them and their hours in all, where nothing else is said. */
export const pairHours = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const opened = pair.might(tokens) ? pair.at(tokens, part.start, part.end) : undefined;
  const who = opened?.kept['w'];
  const benchOfMany = who !== undefined && severalWord.test(who.text) && !/^(sis|boss)$/.test(who.text);
  if (opened === undefined || part.asked || benchOfMany) return undefined;
  const told: Match[] = [];
  let day: DateRead | undefined;
  let index = opened.end;
  while (index < part.end) {
    const match = firstAt([theirs, mine], tokens, index, part.end);
    const read = match === undefined && day === undefined ? dateAt(tokens, index, reader.context) : undefined;
    if (match !== undefined) told.push(match);
    else if (read !== undefined && read.end <= part.end && read.days.length > 0) day = read;
    else if (!joint.test(tokens[index]?.text ?? '')) return undefined;
    index = match?.end ?? read?.end ?? index + 1;
  }
  const [first, second, more] = told;
  // "me and my sister tomorrow, she can do 3 hours": those are hers alone.
  if (first !== undefined && second === undefined && hoursIn(first) !== undefined) return { start: part.start, end: part.end, held: true };
  if (first === undefined || second === undefined || more !== undefined) return undefined;
  const [own, other] = [hoursIn(first), hoursIn(second)];
  const isMine = (match: Match): boolean => mine.at(tokens, match.start, part.end) !== undefined;
  if (own === undefined || other === undefined || isMine(first) === isMine(second) || first.kept['d'] === undefined) return undefined;
  const fact = (date?: string): Unworded => ({
    fact: 'crew',
    people: 2,
    ...(own === other ? { hours: own } : {}),
    totalHours: decimal(own).plus(other).toNumber(),
    ...(date === undefined ? {} : { date }),
  });
  return day === undefined ? found(reader, part.start, part.end, [fact()]) : dateOutcome(reader, day, fact, part.start, part.end);
};
