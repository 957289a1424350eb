// Numbers that stand behind their piece in a row of such pairs: "buttonholes 10 corsage 22", ", bouts 14 corsages 32".

import type { Reader } from '../phrase.ts';
import { isNumber } from '../text/token.ts';

const link = /^(,|and|&|\/|\+|-|;|@|at)$/;
const opens = /^(,|:|-|;|at|@|\()$/;

/** Piece token to number token, for every row of two pairs or more. */
export const nameFirstPairs = (reader: Reader): ReadonlyMap<number, number> => {
  const pairs = new Map<number, number>();
  for (const part of reader.message.parts) {
    for (let start = part.start; start < part.end; start++) {
      if (reader.tokens[start]?.means['piece'] === undefined) continue;
      if (start > part.start && !opens.test(reader.tokens[start - 1]?.text ?? '')) continue;
      const { row, end } = rowAt(reader, start, part.end);
      if (row.size < 2) continue;
      for (const [piece, number] of row) pairs.set(piece, number);
      start = end - 1;
    }
  }
  return pairs;
};

const rowAt = (reader: Reader, start: number, end: number): { row: Map<number, number>; end: number } => {
  const row = new Map<number, number>();
  let index = start;
  while (index < end) {
    const token = reader.tokens[index];
    if (token === undefined || link.test(token.text)) index += 1;
    else if (
      token.means['piece'] !== undefined &&
      reader.free(index) &&
      isNumber(reader.tokens[index + 1], 'plain') &&
      reader.tokens[index + 2]?.means['ingredient'] === undefined && // "crowns 12 roses"
      reader.free(index + 1)
    ) {
      row.set(index, index + 1);
      index += 2;
    } else break;
  }
  return { row, end: Math.max(index, start + 1) };
};
