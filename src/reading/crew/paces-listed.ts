// How long each of several kinds takes: "lapels 5 mins, corsages 12 mins", "lapels take 5 mins and corsages 12".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { roughWords } from './roughly.ts';

const between =
  /^(takes?|taking|eats?|eats up|eat up|up|wants?|take us|me|us|i|we|it|you|each|a|an|the|our|per|is|are|for|:|-|=|to|do|make|making|need|needs|at|one|every|allow|and|or|so|tops|max|now|on|average|~|\(|\)|ea|apiece|a piece|for each)$/;
const around = (text: string): boolean => between.test(text) || roughWords.has(text);
const joint = /^(,|and|&|n|\/|\+|but|then|while)$/;

interface Timed {
  readonly piece: PieceKind;
  readonly minutes: number;
}

const timed = (reader: Reader, start: number, end: number, unit: string | undefined): (Timed & { unit: string }) | undefined => {
  let piece: PieceKind | undefined;
  let minutes: number | undefined;
  let own = unit;
  for (let index = start; index < end; index++) {
    const token = reader.tokens[index];
    const kind = token?.means['piece'] as PieceKind | undefined;
    const number = token?.number;
    if (number?.form === 'duration' || (number?.form === 'plain' && unit !== undefined)) {
      if (minutes !== undefined || number.max !== undefined || !/^(min|hour)$/.test(number.unit ?? unit ?? '')) return undefined;
      own = number.unit ?? unit;
      minutes = Number(number.amount) * (own === 'hour' ? 60 : 1);
    } else if (number !== undefined && !(number.amount === '1' && reader.tokens[index + 1]?.means['piece'] !== undefined)) return undefined;
    else if (kind !== undefined && number === undefined && !around(token?.text ?? '')) {
      if (piece !== undefined || kind === 'unspecified') return undefined;
      piece = kind;
    } else if (number === undefined && !around(token?.text ?? '')) return undefined;
  }
  return piece === undefined || minutes === undefined || own === undefined ? undefined : { piece, minutes, unit: own };
};

/** Read only when the whole part is made of a kind and its time, twice or more. */
export const pacesListed = (reader: Reader, part: Part): Unworded[] | undefined => {
  const paces: Timed[] = [];
  let unit: string | undefined;
  let from = part.start;
  for (let index = part.start; index <= part.end; index++) {
    if (index < part.end && !joint.test(reader.tokens[index]?.text ?? '')) continue;
    if (index > from) {
      const pace = timed(reader, from, index, unit);
      if (pace === undefined || paces.some((each) => each.piece === pace.piece)) return undefined;
      unit = pace.unit;
      paces.push(pace);
    }
    from = index + 1;
  }
  return paces.length < 2 ? undefined : paces.map(({ piece, minutes }) => ({ fact: 'crew', minutesPerPiece: minutes, piece }));
};

/** Whether another kind stands behind the one that is read, with a number of its own. */
export const anotherTimed = (words: readonly Token[], piece: PieceKind | undefined): boolean => {
  if (piece === undefined) return false;
  const at = words.findIndex(({ means }) => means['piece'] === piece);
  const other = words.findIndex(
    ({ means }, index) => index > at && (means['piece'] ?? 'unspecified') !== 'unspecified' && means['piece'] !== piece,
  );
  return other > 0 && words.slice(other).some(({ number }) => number !== undefined && number.form !== 'money');
};
