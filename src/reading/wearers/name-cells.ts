// The cells of a line as lists are pasted: "Dan Reed, best man, buttonhole", "Ushers: Sam, Raj & Tom", parted by commas, colons, dashes, tabs or brackets.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Reader } from '../phrase.ts';
import { columnBefore } from '../text/columns.ts';
import type { Stretch } from '../text/message.ts';
import { isCount, type Token } from '../text/token.ts';

export type Cell =
  | {
      readonly is: 'role';
      readonly role: Token;
      readonly words: string;
      readonly names: readonly string[];
      readonly piece?: PieceKind;
      readonly count?: number;
      readonly note?: string;
    }
  | { readonly is: 'piece'; readonly piece: PieceKind; readonly many: boolean; readonly count?: number; readonly note?: string }
  | { readonly is: 'names'; readonly names: readonly string[]; readonly sure: boolean; readonly age?: string } // sure: no flower, no month
  | { readonly is: 'number'; readonly number: number; readonly inBrackets: boolean }
  | { readonly is: 'words'; readonly words: string }
  | { readonly is: 'size'; readonly words: string } // an age, the measure of a head
  | { readonly is: 'both' } // "Dads (both)"
  | { readonly is: 'none' } // wears none of ours
  | { readonly is: 'nothing' } // "TBC"
  | { readonly is: 'strange' };

const divider = /^[,;:|/()=>]$/;
const noName = /^(tbc|tba|tbd|unknown|yes|ok|x)$/;
const wearsNone = /^(none|nothing|no|nil|n|na)$/;
const nothingElse = /^(thanks|flowers|flower|needed|please|pls|thx)$/; // "no thanks"; "no lilies" is a note
// With a capital because the cell begins with them, and nobody's name.
const plain =
  /^(name|names|role|who|wearer|the|a|an|and|for|with|in|on|one|two|same|all|both|each|small|mini|tiny|large|medium|big|simple|plain|standard|matching|extra|spare|left|right|pin|wrist|lapel|pocket|navy|gr[ae]y|black|white|ivory|cream|blue|green|red|pink|blush|burgundy|sage|gold|silver|champagne|tan|beige|brown|purple|lilac|peach|coral|yellow|orange|table|room|side|family|total)$/;
// What they are dressed in: "Ushers: Tweed, Brown Shoes".
const dress = /^(suits?|kilts?|ties?|shoes|jackets?|tweeds?|waistcoats?|dress(es)?|shirts?|braces|tartan|linen|velvet|trousers|gowns?)$/;
const particle = /^(de|du|da|di|la|le|van|von|der|den|bin|binti|al|el|o|mc|mac|ap|st|ji)$/;
const joint = /^(and|&|n|\+)$/;
const article = /^(the|his|her|our|my|their|a|an|1)$/;

// A hyphen, an apostrophe or a point within a name: "Jean-Luc", "O'Neil", "Ada B."
const within = (tokens: readonly Token[], index: number): boolean => {
  const { text, glued } = tokens[index] as Token;
  if (!glued || tokens[index - 1]?.kind !== 'word') return false;
  if (text === '.') return true;
  return (text === '-' || text === "'") && tokens[index + 1]?.glued === true && tokens[index + 1]?.kind === 'word';
};

/** The stretches between the dividers of a line, those with nothing in them left out. */
export const cellsIn = (reader: Reader, { start, end }: Stretch): readonly Stretch[] => {
  const cells: Stretch[] = [];
  let from = start;
  const close = (at: number): void => {
    if (at > from) cells.push({ start: from, end: at });
  };
  for (let index = start; index < end; index++) {
    const { text, kind } = reader.tokens[index] as Token;
    const divides = kind === 'sign' && (divider.test(text) || (text === '-' && !within(reader.tokens, index)));
    if (divides || columnBefore(reader, index, from)) {
      close(index);
      from = divides ? index + 1 : index;
    }
  }
  close(end);
  return cells;
};

/** The words as they were typed, one blank between them. */
const typedIn = (reader: Reader, start: number, end: number): string => reader.words(start, end).replace(/\s+/g, ' ');
const isCapital = (words: string): boolean => /^\p{Lu}/u.test(words);

/** The names in a stretch: words with a capital each; undefined where there is anything else. */
const namesIn = (reader: Reader, start: number, end: number): { names: readonly string[]; sure: boolean } | undefined => {
  const names: string[] = [];
  let [from, length, sure, last] = [start, 0, false, ''];
  for (let index = start; index <= end; index++) {
    const token = reader.tokens[index];
    if (index === end || token === undefined || joint.test(token.text)) {
      if (length === 0 || length > 4 || (length === 1 && (plain.test(last) || last.length < 2))) return undefined;
      names.push(typedIn(reader, from, index));
      [from, length] = [index + 1, 0];
      continue;
    }
    if (within(reader.tokens, index)) continue;
    const { means } = token;
    if (token.kind !== 'word' || token.number !== undefined || dress.test(token.text)) return undefined;
    for (const tag of ['role', 'piece', 'material', 'weekday', 'all', 'each', 'bench', 'pack'] as const)
      if (means[tag] !== undefined) return undefined;
    const flowerOrMonth = (means['ingredient'] ?? means['month']) !== undefined;
    if (!isCapital(reader.words(index, index + 1)) && !(length > 0 && particle.test(token.text))) return undefined;
    if (!flowerOrMonth && !plain.test(token.text)) sure = true;
    [length, last] = [length + 1, token.text];
  }
  return { names, sure };
};

const countIn = (token: Token | undefined): number | undefined =>
  isCount(token) && token?.number?.max === undefined && token?.number?.or === undefined ? Number(token?.number?.amount) : undefined;

/** "age 4", "aged seven", "6 yrs old", "4yo" */
const ageAt = (tokens: readonly Token[], start: number, end: number): boolean => {
  const words = tokens.slice(start, end);
  const number = words.find((token) => token.number !== undefined);
  const said = words.some(({ text, number: n }) => /^(age|ages|aged|yo|yrs|years|year)$/.test(text) || /^(year|yr|y)/.test(n?.unit ?? ''));
  return (
    number !== undefined &&
    said &&
    words.every((token) => token === number || /^(age|ages|aged|yo|yrs|years|year|old|is|-)$/.test(token.text))
  );
};

const trimming = /^(with|w|in|no|not|without|inc|including|plus)$/; // "buttonhole with fern"
const besidePiece = /^(x|small|mini|tiny|matching|simple|double|single)$/;

const pieceAt = (reader: Reader, start: number, end: number): (Cell & { is: 'piece' }) | undefined => {
  const { tokens } = reader;
  let [index, count] = [start, undefined as number | undefined];
  for (; index < end; index++) {
    const token = tokens[index] as Token;
    const number = countIn(token);
    if (number !== undefined && count === undefined) count = number;
    else if (token.means.material === undefined && !article.test(token.text) && !besidePiece.test(token.text)) break;
  }
  const said = tokens[index];
  const piece = said?.means.piece as PieceKind | undefined;
  if (said === undefined || piece === undefined || piece === 'unspecified') return undefined;
  let next = index + 1;
  if (tokens[next]?.text === 'x' && count === undefined) {
    count = countIn(tokens[next + 1]);
    next += 2;
  }
  if (next < end && tokens[next]?.means.each !== undefined) next += 1;
  if (next < end && !(trimming.test(tokens[next]?.text ?? '') && isTalk(tokens, next, end))) return undefined;
  const many = /s$/.test(said.text) || (count ?? 1) > 1;
  return {
    is: 'piece',
    piece,
    many,
    ...(count === undefined ? {} : { count }),
    ...(next < end ? { note: typedIn(reader, next, end) } : {}),
  };
};

/** Words without numbers, people or pieces. */
const isTalk = (tokens: readonly Token[], start: number, end: number): boolean =>
  tokens
    .slice(start, end)
    .every(({ number, means, kind }) => number === undefined && means.piece === undefined && means.role === undefined && kind !== 'line');

const beforeRole = /^(x|the|his|her|our|my|their|for|little|small|wee)$/;

const roleAt = (reader: Reader, start: number, end: number): (Cell & { is: 'role' }) | undefined => {
  const { tokens } = reader;
  const both = tokens[start]?.text === 'both';
  let [index, count] = [start, both ? 2 : countIn(tokens[start])];
  if (count !== undefined) index += 1;
  while (index < end && (beforeRole.test(tokens[index]?.text ?? '') || tokens[index]?.means.owner !== undefined)) index += 1;
  // "Ciara's mam"
  const whose = /\w's$/.test(tokens[index]?.text ?? '') && isCapital(reader.words(index, index + 1)) && index + 2 === end;
  const role = tokens[whose ? index + 1 : index];
  if (role?.means.role === undefined) return undefined;
  index += whose ? 2 : 1;
  if (tokens[index]?.text === 'x' && count === undefined) {
    count = countIn(tokens[index + 1]);
    index += 2;
  }
  const words = typedIn(reader, start, end);
  const told = { is: 'role' as const, role, words, names: whose ? [words] : [], ...(count === undefined ? {} : { count }) };
  if (index >= end) return told;
  const worn = pieceAt(reader, index, end);
  if (worn !== undefined)
    return (worn.count ?? 1) === 1 ? { ...told, piece: worn.piece, ...(worn.note === undefined ? {} : { note: worn.note }) } : undefined;
  // "Best man Cal", "Grandma Joan"
  const named = namesIn(reader, index, end);
  return named?.sure === true ? { ...told, names: named.names } : undefined;
};

export const cellOf = (reader: Reader, { start, end }: Stretch): Cell => {
  const { tokens } = reader;
  const [first, last] = [tokens[start] as Token, tokens[end - 1] as Token];
  const number = end - start === 1 ? countIn(first) : undefined;
  if (number !== undefined) return { is: 'number', number, inBrackets: tokens[start - 1]?.text === '(' && tokens[end]?.text === ')' };
  if (end - start === 1 && first.text === 'both') return { is: 'both' };
  if (end - start <= 2 && noName.test(first.text)) return { is: 'nothing' };
  if (wearsNone.test(first.text) && (end - start === 1 || (end - start === 2 && nothingElse.test(last.text)))) return { is: 'none' };
  if (ageAt(tokens, start, end) || tokens.slice(start, end).some(({ number: each }) => each?.form === 'length'))
    return { is: 'size', words: typedIn(reader, start, end) };
  const told = roleAt(reader, start, end) ?? pieceAt(reader, start, end);
  if (told !== undefined) return told;
  const from = joint.test(first.text) ? start + 1 : start; // "Ada (6) and Fia (4)"
  const age = end - from > 1 ? countIn(last) : undefined;
  const named = namesIn(reader, from, age === undefined ? end : end - 1);
  if (named !== undefined) return { is: 'names', ...named, ...(age === undefined ? {} : { age: last.text }) };
  return isTalk(tokens, start, end) ? { is: 'words', words: typedIn(reader, start, end) } : { is: 'strange' };
};
