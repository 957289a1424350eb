// "today I could make five buttonholes only, wire got over", "only able to make 6 corsages today": what was made, and no order of it.
// "i could make 5 bouts today if the wire comes" is an offer of work, and its numbers are held.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { amountOf } from '../progress/made-facts.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';

const then =
  '(today|tonight|yesterday|last night|since (morning|lunch|this morning)|till now|until now|up to now|so far|this (morning|arvo|afternoon|evening)|in the (morning|afternoon|evening))';
const verb = '(make|do|finish|complete|manage|get done|get through|get|box|wire)';
const many =
  '(about|just|only|the|these|a total of|up|another){0,2} <n:count> (more|nos|no|pcs|of the|of them)? (<material>)? (<p:piece>)? (only|nos|pcs|done|made|finished|ready|complete){0,2}';
const only = '(just|only)?';
const able = `(was|were|am|are|been|have been|is)? ${only} (able to|managed to)`;
const forms = [
  `(ok|sorry|so|hi|,|-|but|and|sadly|unfortunately){0,3} ${then}? (,)? (i|we|i've|we've|she|he|they|me and <word>|girls|team|<unlisted>)? ${only} (could|can|cud|${able}) ${only} ${verb} ${only} ${many}`,
].map((source) => pattern(source));
const pastAble = pattern('((was|were|been) (only|just)? (able to|managed to)|only able to|managed to)');
const when = pattern(`(only|itself|,|-){0,2} ${then} (only|itself)?`);
// Why there are no more: "wire got over", "ran out of ribbon".
const reason = pattern(
  "(,|-|as|because|cos|coz|since|so|and|but|\\(|\\.){0,2} (<any>){0,3} (got over|is over|are over|over|got finished|finished|ran out|run out|ran short|running short|ran out of <any>|out of <any>|short|no <any>|none left|was late|were late|came late|didn't come|didnt come|hasn't come|hasnt come|broke down|power cut|power went|rest tomorrow|rest (i'll|we'll|will) (do)? tomorrow|sorry)",
);
const past = /^(only|just)$/;
const offers = pattern(
  '(if|unless|provided|for <any>|tomorrow|tmrw|tmr|tomoz|<weekday>|<month>|by <any>|each|<money>|before <any>|next|her|him|them|you|u|\\?|would|might)',
);
const offer = pattern(
  `(ok|so|hi|,){0,2} (${then})? (i|we) (could|can|cud|might|may) (probably|prob|maybe|easily|also|just)? (make|do|finish|complete|manage|knock out|get through) (about|another)? <n:count> (more)? (<material>)? <p:piece> (today|tonight|tomorrow|tmrw|tomoz|this (arvo|afternoon|evening)|(on)? <weekday>|by <any>|if <any>|before <any>)`,
);

const findIn = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  if (part.asked) return [];
  for (const form of forms) {
    const match = form.at(tokens, part.start, part.end);
    const number = match?.kept['n']?.number;
    if (match === undefined || !isSingle(number)) continue;
    const words = tokens.slice(match.start, match.end).map(({ text }) => text);
    const ending = when.at(tokens, match.end, part.end);
    const end = ending?.end ?? match.end;
    const why = end === part.end || reason.at(tokens, end, part.end) !== undefined;
    const able = pastAble.in(tokens, match.start, match.end) !== undefined;
    const dated = when.in(tokens, match.start, end) !== undefined;
    // "could finish 12 lapels only" may be what she can do by then: a day or a reason says that it is done.
    const told = able || (words.some((word) => past.test(word)) && (dated || end < part.end));
    if (!told || !why || offers.in(tokens, match.start, part.end) !== undefined) continue;
    return [found(reader, part.start, end, [{ fact: 'made', count: amountOf(match.kept['n']), ...kindOf(match.kept['p']) }])];
  }
  const offered = offer.at(tokens, part.start, part.end);
  const priced = tokens.slice(part.start, part.end).some(({ number, means }) => number?.form === 'money' || means['each'] !== undefined);
  return offered === undefined || priced ? [] : [{ start: part.start, end: part.end, held: true }];
};

export const couldOnly: Phrase = {
  name: 'could only make',
  examples: [],
  find: (reader) =>
    [...forms, offer].some((form) => form.might(reader.tokens)) ? reader.untouched().flatMap((part) => findIn(reader, part)) : [],
};
