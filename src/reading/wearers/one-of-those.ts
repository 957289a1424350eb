// Somebody who is one of those counted already, and no further wearer: "7 groomsmen (best man is one of the 7)", "6 ushers, 2 of them are
// the bride's brothers".

import { tellsOfHealth } from '../../handbook/hazard-words.ts';
import { firstAt, type Pattern, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { firstWhere, isCount, type Token } from '../text/token.ts';
import { saidAgain } from './himself.ts';
import { nameOf } from './role-counts.ts';
import { tellsWho } from './told-first.ts';
import type { Entry } from './wearers-read.ts';

const before = '(,|-|\\(|:|and|&|n|with|but|where){0,2}';
const is = "(is|'s|are|was|being|will be|would be|counts as|counted as|who is|who's|whos|one is|also|already|just){1,3}";
const those = '(the <n:count> <g:role>|the <n:count>|the <g:role>|the (lads|guys|men|lot|group|boys)|them|those|these|that|it)';
const after = "(too|already|as well|aswell|btw|so (not|no|don't|dont) <any>{1,3})? (\\))?";
const forms: readonly Pattern[] = [
  // "best man is one of the 7", "bm is in the 6 already"
  pattern(
    `${before} (the|his|her|our)? <r:role> ${is} (<count> of|<count> (of)? (from|among)|in with|in|among|amongst|part of) ${those} ${after}`,
  ),
  // "best man 1 of them", "with the best man as one of them"
  pattern(`${before} (the|his|her|our)? <r:role> (,|-|as)? (one|1) of ${those} ${after}`),
  // "bm counted in that", "best man included in the 5"
  pattern(
    `${before} (the|his|her|our)? <r:role> (is|'s|are|already|also){0,2} (already)? (counted|included|incl|<included>) (in|in with|within|among|amongst|as one of) ${those} ${after}`,
  ),
  // "of whom one is the best man", "one of which is the best man", "2 of them are the brides brothers", "one of the ushers is also the ring bearer"
  pattern(
    `${before} of (whom|which|them) <count> (is|are|being|will be) (also)? (the|a|his|her)? (<owner>|<role>|<word>)? <r:role> ${after}`,
  ),
  pattern(
    `${before} <count> of (whom|which|them|those|these|them's|thems|em|em's|' em|the <n:count> <g:role>|the <n:count>|the <g:role>|the (lads|guys|men|lot|boys)) (is|are|being|'s|will be|doubles as|doubling as|acting as|is doubling as|as){0,2} (also)? (the|a|his|her)? (<owner>|<role>)? <r:role> ${after}`,
  ),
];
// "3 brothers, one is the best man": some of those just named, who are as many or more.
const someAre = pattern(`${before} (<k:count> (is|are|being|will be)|one's) (also)? (the|a|his|her)? <r:role> ${after}`);
// "6 ushers, best man included": one of the ushers; a celebrant or a father would be none of them.
const counted = pattern(`${before} (the)? <r:role> (included|incl|<included>|counted|inclusive) ${after}`);
const ofTheMen = /^(groomsmen|ushers|men|boys|attendants|friends)$/;

// "best man (hes the brother too dont count him twice)": somebody by another name.
const noSecond =
  "(,|-|so|and|pls|please){0,2} (don't|dont|do not|no need to|not to) (count|add|list|double count|include) (him|her|them|it)? (twice|again|as two|separately|as well|too|both times|2x)?";
const another = "(the|his|her|my|our|their|a|an)? (<owner>|groom's|bride's)? <role>";
const sameOne = [
  pattern(
    `(\\(|,|-|and){0,2} (he's|hes|he is|she's|shes|she is|who's|whos|who is|that's also|is|its) (also|just|really|both)? ${another} (too|as well|aswell|also)? (${noSecond})? (\\))?`,
  ),
  pattern(`(\\(|,|-)? ${noSecond} (\\))?`),
  pattern('\\( (also|aka|doubles as|doubling as) (the|a|his|her)? <role> (<any>){0,7} \\)'),
];
// "groom, best man is the brother", "bm is his cousin": who the one just named is.
const whoHeIs = pattern(
  "(is|'s|will be|=) (also|just|actually)? (the|his|her|my|our|their|<owner>|groom's|bride's) (<owner>|groom's|bride's)? <role> (too|as well|btw|,|\\)|\\.|;)?",
);
const isWho = (reader: Reader, index: number, end: number, entries: Entry[]): number | undefined => {
  // "is the" may have been read with him.
  const match = [index, index - 1, index - 2].map((at) => whoHeIs.at(reader.tokens, at, end)).find((each) => (each?.end ?? 0) > index);
  const last = reader.tokens[(match?.end ?? 0) - 1];
  if (match === undefined || (match.end < end && !/^(too|as well|btw|,|\)|\.|;)$/.test(last?.text ?? ''))) return undefined;
  // "groom and best man, best man is the brother": named before.
  const named = entries.at(-1);
  if (entries.some((each) => each !== named && each.wearer === named?.wearer)) entries.pop();
  return last?.text === ',' ? match.end - 1 : match.end;
};
// "best man, brother (same person)": the last two are one.
const oneAndSame = pattern(
  '(\\(|,|-){0,2} (the|all|both)? (one and the)? same (person|man|guy|bloke|fella|lad|woman|lady|girl|one|human) (\\))?',
);
const isSameOne = (reader: Reader, index: number, end: number, entries: Entry[]): number | undefined => {
  const [last, other] = [entries.at(-1), entries.at(-2)];
  if (last === undefined || last.count !== 1) return undefined;
  // "brother (same person)" may have been noted with him.
  if (other?.count === 1 && /^(the )?same (person|man|guy|bloke|fella|lad|woman|lady|girl)$/i.test(last.note ?? '')) {
    entries.pop();
    return undefined;
  }
  const both = other?.count === 1 ? oneAndSame.at(reader.tokens, index, end) : undefined;
  if (both !== undefined) entries.pop();
  return (both ?? firstAt(sameOne, reader.tokens, index, end))?.end ?? isWho(reader, index, end, entries);
};

/** "6 ushers including the best man", "11 guests, that's with the two grandads": who follows is one of those counted. */
export const countedWithin = (tokens: readonly Token[], index: number): boolean => {
  const [before, token] = [tokens[index - 1]?.text ?? '', tokens[index]?.text ?? ''];
  return /^(including|incl|inc|counting|includes)$/.test(token) || (token === 'with' && /^(that's|thats|that is|that)$/.test(before));
};

/** Where the words about one of those end; the list is given what they tell of it. */
export const oneOfThose = (reader: Reader, index: number, end: number, entries: Entry[]): number | undefined => {
  const same = saidAgain(reader, index, end, entries) ?? isSameOne(reader, index, end, entries);
  if (same !== undefined) return same;
  const match = firstAt(forms, reader.tokens, index, end);
  const role = match?.kept['r']?.means['role'];
  if (match === undefined || role === undefined) return someOfLast(reader, index, end, entries);
  const { n, g } = match.kept;
  // "groom, best man, 5 groomsmen, bm is one of the 5": he was named by himself before.
  const alone = entries.findIndex((each) => each.wearer === nameOf(role, 1));
  if (alone >= 0 && g?.means['role'] !== role) entries.splice(alone, 1);
  const group = g?.means['role'];
  if (group !== undefined && n !== undefined && isCount(n) && !entries.some((each) => each.wearer === nameOf(group, 2))) {
    const count = Number(n.number?.amount);
    entries.push({ at: match.start, wearer: nameOf(group, count), count });
  }
  return match.end;
};

// "4 ushers, 1 of them left handed": what is said of some, kept as a note.
const someWith = pattern(`${before} <count> of (them|those|whom|which) (is|are|wants|want|needs|need|has|have)? (a|an|the)?`);
const ends = /^(,|;|\)|\.|and|plus|\+|&)$/;
const noted = (reader: Reader, index: number, end: number, last: Entry): number | undefined => {
  const match = someWith.at(reader.tokens, index, end);
  if (match === undefined) return undefined;
  let to = match.end;
  while (to < end && !ends.test(reader.tokens[to]?.text ?? '') && reader.tokens[to]?.kind !== 'line') to += 1;
  const said = reader.tokens.slice(match.end, to);
  if (
    said.length === 0 ||
    said.length > 5 ||
    said.some(({ number, means }) => number !== undefined || means['piece'] !== undefined || means['role'] !== undefined)
  )
    return undefined;
  const from = firstWhere(reader.tokens, index, to, (token) => token.number !== undefined);
  const note = reader.words(from, to);
  if (tellsOfHealth(note)) return undefined; // an implant or an allergy is read as a care of its own
  last.note ??= note;
  return reader.tokens[to]?.text === ')' ? to + 1 : to;
};

const someOfLast = (reader: Reader, index: number, end: number, entries: Entry[]): number | undefined => {
  const last = entries.at(-1);
  if (last === undefined) return undefined;
  const some = someAre.at(reader.tokens, index, end);
  const many = some?.kept['k'];
  const few = many === undefined ? 1 : isCount(many) ? Number(many.number?.amount) : undefined;
  if (some !== undefined && few !== undefined && !tellsWho(entries) && few <= last.count) return some.end;
  const remark = noted(reader, index, end, last);
  if (remark !== undefined) return remark;
  const match = counted.at(reader.tokens, index, end);
  return match?.kept['r']?.means['role'] === 'best man' && ofTheMen.test(last.wearer) ? match.end : undefined;
};
