// As many pieces as there are people to wear one: "40 people all getting a lapel flower", "one buttonhole for each of the 14 jurors", "6 bridesmaids with combs at 24".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { changed, type Token } from '../text/token.ts';

interface Counted {
  readonly count: Token;
  readonly countIndex: number;
  readonly start: number;
}

const folk =
  '(<role>|<bench>|people|ppl|folk|folks|guests|men|women|ladies|gents|guys|lads|kids|children|staff|members|players|dancers|heads|of them|of us)';
const wearing =
  '(with|in|wearing|having|have|has|getting|get|gets|needing|need|needs|wanting|want|wants|to have|to get|to wear|will have|will wear)';
const before = pattern(
  `<n:count> (<unlisted>)? ${folk} (all|each|are|is|who are|that are|are all|will all){0,2} ${wearing} (the same (thing|one|piece)? (,|-|:)?)? (a|an|one|their|matching|the)? (<material>)? (<ingredient>)? <piece>`,
);
const behind = pattern(
  '(a|an|one|1) (<material>)? <piece> ((each|apiece)? (<each>|for|per|to) (<each>|each|every|all)? (one)? (of)? (the|our|those)? <n:count>|(per|a|<each>) (guest|person|head)? (,|-|:|for|x)? (about)? <n:count> (guests|people|pax|heads|of them|in all))',
);
// "party of 12, each gets a bh"
const group = pattern(
  `(party|group|team|crew|squad|class|choir|band|line up|bridal party|wedding party) of <n:count> (<unlisted>)? (,|-|and|who|so){0,2} (all|each|everyone|every one|they all|they each) (person|guest|one|of them|is|are|will)? ${wearing} (a|an|one|their|matching|the)? (<material>)? <piece>`,
);
// "12 guests, each gets a bout"
const thenEach = pattern(
  `<n:count> (<unlisted>)? ${folk} (,|-|and|so) (all|each|everyone|they all|they each) (person|guest|one|of them|is|are|will|getting)? ${wearing} (a|an|one) (<material>)? <piece>`,
);
// "80 seats but only 35 want a lapel flower": the people are not named again.
const wantOne = pattern(
  '<n:count> (are|will|would|actually|definitely|of them|of those){0,2} (want|wanting|need|needing|getting|having|wearing|after|like|be wearing|be having|ordered) (a|an|one) (<material>)? <piece>',
);
// "180 guests, one lapel flower each": all who are named, so nobody may stand before them.
const oneApiece = pattern(
  `<n:count> (<unlisted>)? ${folk} (,|-|:|;|so|and|with|=){0,2} (just)? (a|an|one|1) (<material>)? <piece> (each|apiece|for each|each one|per guest|per person|per head)`,
);
const goesOn = /^(at|@|for|inc|incl|including|plus|\+|ex|excl|and|please|pls|all|total|so|on|by|no|with)$/;
const opensCount = /^(only|just|but|so|and|about|around|say|probably|,|;|:|-|\(|\.)$/;
const wantedByAll = ({ tokens, free }: Reader, start: number, index: number): Counted | undefined => {
  const match = wantOne.at(tokens, start, index + 1);
  const [count, before, next] = [match?.kept['n'], tokens[start - 1], tokens[index + 1]];
  if (match?.end !== index + 1 || count === undefined || !free(start) || count.number?.max !== undefined) return undefined;
  if (Number(count.number?.amount) < 2 || (before !== undefined && before.kind !== 'line' && !opensCount.test(before.text)))
    return undefined;
  return next?.kind === 'word' && !goesOn.test(next.text) && next.number === undefined ? undefined : { count, countIndex: start, start };
};
const alone = ({ tokens }: Reader, start: number): boolean => {
  for (let at = start - 1; at >= 0 && tokens[at]?.kind !== 'line' && tokens[at]?.text !== '.'; at--)
    if (tokens[at]?.number !== undefined || ['role', 'owner', 'piece'].some((tag) => tokens[at]?.means[tag] !== undefined)) return false;
  return true;
};
const apieceAt = (reader: Reader, start: number, index: number): (Counted & { end: number }) | undefined => {
  const { tokens } = reader;
  const match = oneApiece.at(tokens, start, tokens.length);
  const count = match?.kept['n'];
  const next = tokens[match?.end ?? 0];
  if (match === undefined || count === undefined || index >= match.end || index < match.end - 3) return undefined;
  if (next?.kind === 'word' && !goesOn.test(next.text) && ['material', 'included', 'onTop'].every((tag) => next.means[tag] === undefined))
    return undefined;
  const countIndex = tokens.indexOf(count, start);
  if (tokens[countIndex - 1]?.text === 'of') return undefined; // "tables of 8 guests"
  const told = reader.free(countIndex) && count.number?.max === undefined ? withOneBefore(tokens, { count, countIndex, start }) : undefined;
  return told !== undefined && alone(reader, told.start) ? { ...told, end: match.end } : undefined;
};
// "the groom and his five groomsmen": six.
const oneBefore = pattern('(<r:role>|<r:owner>) (and|&|n|+|plus) (his|her|the|their|all|our|all his|all the)?');
const withOneBefore = (tokens: readonly Token[], told: Counted): Counted | undefined => {
  const { count, countIndex } = told;
  for (const from of [countIndex - 3, countIndex - 2]) {
    const match = from < 0 ? undefined : oneBefore.at(tokens, from, countIndex);
    if (match?.end !== countIndex || count.number === undefined) continue;
    if (/(s|men|women|folk|children)$/.test(match.kept['r']?.text ?? 's')) return undefined;
    return {
      ...told,
      start: from,
      count: changed(count, { number: { ...count.number, amount: String(Number(count.number.amount) + 1) } }),
    };
  }
  return told;
};
const reach = 16;

/** The number of people, where the piece at this place is said to be one for each of them. */
export const peopleBefore = (reader: Reader, index: number): (Counted & { readonly end?: number }) | undefined => {
  const { tokens } = reader;
  for (let start = Math.max(0, index - reach); start < index; start++) {
    const apiece = apieceAt(reader, start, index);
    if (apiece !== undefined) return apiece;
    const wanted = wantedByAll(reader, start, index);
    if (wanted !== undefined) return wanted;
    const match = before.at(tokens, start, index + 1) ?? thenEach.at(tokens, start, index + 1) ?? group.at(tokens, start, index + 1);
    const count = match?.kept['n'];
    const countIndex = count === undefined ? -1 : tokens.indexOf(count, start);
    // "10 tables of 8, each guest gets a bout": eight at every table.
    if (tokens[countIndex - 1]?.text === 'of' && match !== undefined && tokens[match.start] === count) continue;
    if (match?.end === index + 1 && count !== undefined && reader.free(countIndex))
      return withOneBefore(tokens, { count, countIndex, start });
  }
  return undefined;
};

/** The same, with the people behind: "a corsage each for the 6 aunts". */
export const peopleBehind = (reader: Reader, index: number): { count: Token; countIndex: number; end: number } | undefined => {
  const { tokens } = reader;
  for (const start of [index - 2, index - 1]) {
    const match = behind.at(tokens, start, tokens.length);
    const count = match?.kept['n'];
    if (match === undefined || count === undefined || match.end <= index) continue;
    const each = tokens
      .slice(index + 1, match.end)
      .some((token) => /^(each|every|apiece|all|for each|each one|per( guest| person| head)?|a (head|person))$/.test(token.text));
    const countIndex = tokens.indexOf(count, index);
    if (each && reader.free(countIndex)) return { count, countIndex, end: match.end };
  }
  return undefined;
};
