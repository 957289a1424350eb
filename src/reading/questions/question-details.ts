// What a question is about: the piece, the item, numbers, prices and the day it names.

import type { PieceKind } from '../../handbook/pieces.ts';
import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isSingle, type NumberRead } from '../text/token.ts';

// "can 3 of us get 60 bouts done": the number of the pieces is the one asked about.
const counted = pattern('<plain> (x|nos|no)? (<material>|dried|more|extra)? <piece>');

// "can 2 of us finish 45 today": how many hands is not what is asked about.
const handsOf = pattern(
  '<plain> (more|extra|other)? (<bench>|of you|of them|of us) (make|do|at|on|finish|get|have|turn|churn|manage|knock|cope|through|done|complete|wire|be (enough|ok|plenty)|enough|by|for <weekday>|on <weekday>)',
);

// "50 instead of 40", "50 not 40 lapels": the number behind is the one there is.
const ofBefore = pattern('(not|instead of|rather than|up from|down from) (the|our)? <n:amount>');
// "if i do 8 an hr how long for 50": how quickly they are made, and asked about only where no other number is.
const ofPace = pattern('<amount> (<piece>|of them)? (an|per|a|each|every|/) (hr|hour|hrs)');
const numbered = pattern('<amount>');
export const oldNumbers = (reader: Reader, start: number, end: number): ReadonlySet<number> => {
  const old = new Set<number>();
  for (let index = start + 1; index < end; index++) {
    const match = ofBefore.at(reader.tokens, index, end);
    if (match === undefined) continue;
    const other = numbered.in(reader.tokens, start, index) ?? numbered.in(reader.tokens, match.end, end);
    if (other !== undefined) old.add(match.end - 1);
  }
  return old;
};

export const details = (reader: Reader, start: number, end: number) => {
  const { tokens } = reader;
  let piece: PieceKind | undefined;
  let item: string | undefined;
  let number: number | undefined;
  let numberMax: number | undefined;
  let price: NumberRead | undefined;
  let span: NumberRead | undefined;
  let date: string | undefined;
  let people: number | undefined;
  let pace: number | undefined;
  let numberOfPieces = false;
  const old = oldNumbers(reader, start, end);
  for (let index = start; index < end; index++) {
    const token = tokens[index];
    if (token === undefined) continue;
    const kind = token.means['piece'] as PieceKind | undefined;
    if (kind !== undefined && kind !== 'unspecified') piece ??= kind;
    if (token.means['each'] !== undefined && /lapel/.test(token.text)) piece ??= 'buttonhole';
    item ??= token.means['ingredient'];
    const read = date === undefined ? dateAt(tokens, index, reader.context) : undefined;
    if (
      read !== undefined &&
      read.days.length >= 1 &&
      (read.days.length === 1 || read.dayOnly !== undefined) &&
      read.end <= end &&
      (read.relative === true || read.end > index + 1 || token.number?.form === 'slashed')
    ) {
      date = read.days.find((day) => day > reader.context.today || read.days.length === 1);
      index = read.end - 1;
      continue;
    }
    if (handsOf.at(tokens, index, end) !== undefined) {
      if (isSingle(token.number)) people ??= Number(token.number.amount);
      continue;
    }
    if (old.has(index)) continue;
    if (ofPace.at(tokens, index, end) !== undefined) {
      if (isSingle(token.number)) pace ??= Number(token.number.amount);
      continue;
    }
    if (token.number?.form === 'plain') {
      const priced =
        tokens[index - 1]?.text === 'at' ||
        tokens[index - 1]?.text === '@' ||
        tokens[index + 1]?.means['each'] !== undefined ||
        !/^\d+$/.test(token.number.amount);
      const isEach = tokens[index + 1]?.means['each'] !== undefined; // "stems of 300 each" counts nothing
      const ofPieces = counted.at(tokens, index, end) !== undefined;
      // "what would it come to at 18": a price alone, and no number of pieces beside it.
      const isPrice = /^(at|@)$/.test(tokens[index - 1]?.text ?? '') && !ofPieces && isSingle(token.number);
      if (!isPrice && (number === undefined || (ofPieces && !numberOfPieces)) && !isEach && /^\d+$/.test(token.number.amount)) {
        numberOfPieces = ofPieces;
        number = Number(token.number.amount);
        if (token.number.max !== undefined && /^\d+$/.test(token.number.max)) numberMax = Number(token.number.max);
      }
      if (priced) price ??= token.number;
      else if (token.number.max !== undefined) span ??= token.number;
    } else if (token.number?.form === 'money') price ??= token.number;
  }
  // "20 to 24 bouts at 7.50 each": the span is of the pieces, where a price is said.
  const money = price ?? span;
  const amountMax = money?.max ?? money?.or?.at(-1);
  return { piece, item, number: number ?? pace, numberMax, amount: money?.amount, amountMax, date, people };
};
