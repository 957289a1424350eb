// A clause that tells of another matter than what stands beside it: the number of an invoice, an old job this one is like, how far away the
// venue is, guests who wear none, other work that stays as it was. Its numbers are nobody's here.

import { type Form, formOf, type Match } from '../pattern.ts';
import { wordList } from '../words/word-list.ts';
import { tagsOf } from './means.ts';
import type { Message } from './message.ts';
import { isEnd } from './sentence-end.ts';
import { changed, cut, type Token } from './token.ts';

const lead = '(see|as per|per|on|under|against|from|its|thats|this is|for)?';
const whose = "(the|our|my|their|your|his|her|supplier|supplier's|wholesaler|wholesaler's|market|client's|that's)?";
// Papers that have a number; "order 100" and "quote 1250" may mean that many, so these need the word for it or a longer number.
const paper =
  '(inv|invoice|po|docket|receipt|statement|delivery note|consignment|acct|account|ref|reference|tracking|waybill|awb|tax invoice|purchase order|credit note)';
const job = '(order|quote|job|booking|enquiry|inquiry|event|ticket|batch|lot|card)';
const numberWord = '(no|nr|num|number|ref|#|:|-|is|was){1,3}';
const dated = '(dated|of|from)? (<slashed>|<plain> <month>|<month> <plain>|<weekday>)?';
const numbered = (form: string): string => `${lead} ${whose} ${form} ${dated}`;

const back = '(in|last|back in|back|for|at|that time|this time last|two|a)';
const likened =
  '(just|exactly|exact|pretty much|basically|more or less|its|this is)? (the)? (same|like|identical|similar|much like) (recipe|design|style|mix|thing|idea|look|as|to|like|with|for){0,3}';
const did = '(did|made|had|sold|sent|supplied|delivered|used|bought|ordered|wired|does|make)';

const road =
  "(drive|drive away|drive from|'s drive|hours drive|away|round trip|return trip|on the road|by road|by car|by train|by ferry|up the road|down the road|up the coast|down the coast|out of town|each way|from here|from us|from the (studio|shop|workshop|bench)|from town)";
const places = 'venue|church|chapel|hotel|farm|winery|vineyard|estate|place|marquee|barn|hall|beach|town|lodge|location|ceremony|reception';
const place = `(the)? (${places})`;
const placeWord = new RegExp(`^(${places})('s)?$`);
const far = '(a|an|about|around|approx|roughly|over|nearly|up to|some|good|only|just){0,2}';

const folk = '(guests|people|folks|cousins|others|kids|friends|colleagues|neighbours|relatives|extras|plus ones|coworkers|workmates)';
const not = "(don't|dont|do not|won't|wont|will not|aren't|arent|are not|isn't|isnt|doesn't|doesnt|not)";
const wear = '(be)? (wear|wears|wearing|get|gets|getting|have|having|need|needs|needing|want|wanting)';

const stays =
  "(are|is|all|still|to|can)? (unchanged|stay|stays|staying|stand|stands|remain|remains|(stay|stays|staying|remain|remains|stand) (the same|same|as is|as they are|as they were|put|at that)|as is|as they are|as they were|as before|as quoted|as agreed|the same|same as before|not changing|don't change|dont change|haven't changed|havent changed)";

const form = (source: string): Form => formOf(source);
/** With a number that must look like one of a paper. */
const papers = [
  form(numbered(`${paper} (${numberWord})? (<word>)? (-|\\/)? <n:number>`)),
  form(numbered(`${job} ${numberWord} <n:number>`)),
  form(numbered(`${job} <l:number>`)),
];
const likes = [
  // "same as the 90 we did in oct", "like the 60 bouts for the Doyle wedding"
  form(
    `${likened} (the|those|that|our|your|her) (lot|batch|set|run)? (of)? <count> (or so|odd)? (of them|ones|pieces|<material>|<piece>|<ingredient>){0,3} (that|which)? (we|i|you|u|us|she|he|they|<word>) (all|both|just)? ${did} (<any>){0,6}`,
  ),
  form(
    `${likened} (the|those|that|our|your|her) (lot|batch|set|run)? (of)? <count> (or so|odd)? (of them|ones|pieces|<material>|<piece>){0,2} ${back} (<any>){1,5}`,
  ),
  // "same as in oct", "like we did for the March one"
  form(`${likened} (what)? (we|i) ${did} (<any>){0,5}`),
  form(`${likened} (as)? (in|back in|last) <month> (last year|<plain>)?`),
];
const noneWorn = [
  // "the table of 10 at the back dont wear any"
  form(
    `(the|that|a|those|all the|our)? (table|tables|row|rows|pew|pews|crowd|back row|back table|other|rest|bus) (of)? <count> ((${folk}|at|in|on|from) (<any>){0,4})? ${not} ${wear} (any|anything|flowers|one|ones|them|a thing)? (though|tho|at all|of them)?`,
  ),
  form(
    `(the|those|all){0,2} (other <count>|<count> (other|evening|day|extra|remaining)) ${folk} (at|in|on|from)? (<any>){0,3} ${not} ${wear} (any|anything|flowers|one|ones|them|a thing)? (though|tho|at all)?`,
  ),
];
const others = [
  // "5 hrs drive from here", "venue's 45 min away", "drive is 3 hrs"
  form(
    `(${place} (is|'s|about)?|it's|its|it is|thats|that's|they're|theyre|which is)? ${far} (<duration>|<length>|<count> (miles|km|kms|kilometres|k)) (of|'s|or so|plus|and a bit)? (a)? ${road} ((from|to|each|and) (<any>){1,4}|each way|away|there|there and back)?`,
  ),
  form(
    `(the)? (drive|trip|journey) (there|out|down|up|over)? (is|takes|takes us|will be|about){0,2} ${far} (<duration>|<length>) (each way|there and back|or so)?`,
  ),
  // "no change to the 14 table arrangements", "the 14 centrepieces stay"
  form(
    `(with)? (no|zero|without) (change|changes|changing) (to|on|in|for|with) (the|our|her|his|their|any of the)? (<count>)? (<filler>)? <other>`,
  ),
  form(`(the|our|her|his|their|and the)? (<count>)? (<filler>)? <other> ${stays}`),
  form(
    `(leave|leaving|keep|keeping) (the|our|her|his|their)? (<count>)? (<filler>)? <other> (alone|as is|as they are|as it is|the same|as before)?`,
  ),
];

const looksNumbered = ({ text, number }: Token, digits: number): boolean =>
  number?.form === 'code' || (number?.form === 'plain' && text.length >= digits && /^\d+$/.test(text));
const isNumbered = (match: Match): boolean => {
  const { n, l } = match.kept;
  return (n !== undefined && looksNumbered(n, 3)) || (l !== undefined && looksNumbered(l, 4) && !l.text.endsWith('00'));
};
// "same as the 90 we did but with 2 roses" tells what is other this time.
const tellsMore = /^(but|except|only|plus|with|without|minus|instead|just|and|at|@|not|price|each)$/;
// "10 in the party, the 2 kids aren't wearing any, so 8": what follows leans on it.
const sumsUp = /^(so|that's|thats|leaves|leaving|makes|making|=|which)$/;
// "12 in the party, the table of 3 at the back don't wear any": whether they are of the twelve is not said.
const ofAll = /^(party|people|ppl|guests|pax|heads|family|total|all|everyone|everybody)$/;
const longest = 18; // tokens

const isPause = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  return token?.text === ',' || (token?.text === '-' && !token.glued && tokens[index + 1]?.glued === false);
};

/** The end of the clause that begins here: at a comma, a bracket or a full stop. */
const clauseEnd = (tokens: readonly Token[], index: number): number => {
  let end = index;
  while (
    end < index + longest &&
    tokens[end] !== undefined &&
    !isEnd(tokens, end) &&
    !/^[()]$/.test(tokens[end]?.text ?? '') &&
    !isPause(tokens, end)
  )
    end += 1;
  return end;
};
const firstWord = new Set(
  wordList(`
  see, ref, as, per, on, under, against, from, its, it's, it, thats, that's, this, for, the, our, my, their, your, his, her, supplier, supplier's,
  wholesaler, wholesaler's, market, client's, inv, invoice, po, docket, receipt, statement, delivery, consignment, acct, account, reference,
  tracking, waybill, awb, tax, purchase, credit, order, quote, job, booking, enquiry, inquiry, event, ticket, batch, lot, card, just, exactly,
  exact, pretty, basically, more, same, like, identical, similar, much, they're, theyre, which, drive, trip, journey, that, a, those, all, other,
  with, no, zero, without, and, leave, leaving, keep, keeping
`),
);
const opens = ({ text, number, means }: Token): boolean =>
  number !== undefined || firstWord.has(text) || means['other'] !== undefined || placeWord.test(text);

/** Where such a clause ends that begins here; undefined where none does. */
export const otherMatterEnd = (tokens: readonly Token[], index: number): number | undefined => {
  const first = tokens[index];
  if (first === undefined || !opens(first)) return undefined;
  const end = clauseEnd(tokens, index);
  if (sumsUp.test(tokens[end + 1]?.text ?? '')) return undefined;
  const whole = (match: Match | undefined): match is Match => match?.end === end;
  const isPaper = papers.some((each) => {
    const match = each.at(tokens, index, end);
    return whole(match) && isNumbered(match);
  });
  if (isPaper || others.some((each) => whole(each.at(tokens, index, end)))) return end;
  if (noneWorn.some((each) => whole(each.at(tokens, index, end))))
    return tokens.slice(0, index).some(({ text }) => ofAll.test(text)) ? undefined : end;
  const more = tokens.slice(index + 1, end).some(({ text, number }) => tellsMore.test(text) || number?.form === 'money');
  return !more && likes.some((each) => whole(each.at(tokens, index, end))) ? end : undefined;
};

// "roses R180 bunch of 20 inv 60231", "12 bouts at 15 same as the 90 we did in oct": the comma nobody typed.
const strong = /^(same|identical|like|as|inv|invoice|po|docket|ref|order|job|quote|booking|venue|its|it's|no|the)$/;
const endsOurs = ({ number, means, text }: Token): boolean =>
  number !== undefined || tagsOf(means).length > 0 || /^(done|made|finished|boxed|ready|left|go|broke|now)$/.test(text);
const unparted = (tokens: readonly Token[], index: number): boolean =>
  (strong.test(tokens[index]?.text ?? '') || /^(duration|length)$/.test(tokens[index]?.number?.form ?? '')) &&
  endsOurs(tokens[index - 1] as Token);

/** The tokens with a full stop where such a clause is parted from the rest, by a comma, by brackets or by nothing. */
export const withMattersApart = (tokens: readonly Token[]): readonly Token[] => {
  const [stops, breaks] = [new Set<number>(), new Set<number>()];
  for (let index = 0; index < tokens.length; index++) {
    const before = tokens[index - 1];
    const begins =
      before === undefined || before.kind === 'line' || isPause(tokens, index - 1) || before.text === '(' || isEnd(tokens, index - 1);
    const end = begins || unparted(tokens, index) ? otherMatterEnd(tokens, index) : undefined;
    if (end === undefined) continue;
    const bracketed = before?.text === '(' && tokens[end]?.text === ')';
    if (before?.text === '(' && !bracketed) continue;
    if (isPause(tokens, index - 1) || bracketed) stops.add(index - 1);
    if (!begins) breaks.add(index);
    if (isPause(tokens, end) || bracketed) stops.add(end);
    index = end - 1;
  }
  if (stops.size + breaks.size === 0) return tokens;
  return tokens.flatMap((token, index) => {
    if (stops.has(index)) return [changed(token, { text: ';', kind: 'sign' })];
    return breaks.has(index) ? [cut({ kind: 'sign', text: ';', start: token.start, end: token.start, glued: true }), token] : [token];
  });
};

/** Whether the token stands in such a clause. */
export const inOtherMatter = ({ tokens, parts }: Pick<Message, 'tokens' | 'parts'>, index: number): boolean =>
  parts.some(({ start, end }) => start <= index && index < end && otherMatterEnd(tokens, start) === end);
