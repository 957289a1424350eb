// The recipes of several kinds in one sentence: "bout 1 rose 2 wax, corsage 3 rose 4 wax", "1 rose 2 wax bout, 3 rose 4 wax corsage".

import type { PieceKind } from '../../handbook/pieces.ts';
import { quantity } from '../goods/quantity.ts';
import { linesIn, separates } from '../goods/recipe-lines.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';

// "bout 1 rose 2 wax, corsage 3 rose 4 wax": a new kind begins a new stretch.
const pieceHeading = pattern(
  '(for)? (the|our|each)? <p:piece> (recipe)? (:|=|-|,|gets|get|has|have|takes|take|needs|need|uses|use|is|are|with){0,2}',
);
export const byPiece = (reader: Reader, { start, end }: Stretch): Stretch[] => {
  const goods = (index: number): boolean => {
    const head = pieceHeading.at(reader.tokens, index, end);
    const behind = head === undefined ? undefined : reader.tokens[head.end];
    if (head === undefined || behind === undefined || head.end >= end) return false;
    if (behind.means['ingredient'] !== undefined) return true;
    const amount = quantity(reader.tokens, head.end);
    return (
      amount !== undefined && reader.tokens.slice(amount.next, amount.next + 2).some((token) => token.means['ingredient'] !== undefined)
    );
  };
  const starts = [start];
  if (goods(start))
    for (let index = start + 2; index < end; index++) if (separates(reader.tokens[index - 1]) && goods(index)) starts.push(index);
  return starts.map((from, at) => ({ start: from, end: starts[at + 1] ?? end }));
};

/** Each kind behind what goes into it; read only when the whole sentence is made of such. */
export const pieceLast = (reader: Reader, { start, end }: Stretch): Finding | undefined => {
  const { tokens } = reader;
  const facts: Unworded[] = [];
  let from = start;
  for (let index = start; index < end; index++) {
    const piece = tokens[index]?.means['ingredient'] === undefined ? (tokens[index]?.means['piece'] as PieceKind | undefined) : undefined;
    if (piece === undefined) continue;
    // "2 bouts" are counted; "2 wax bout" says what goes into one.
    if (
      piece === 'unspecified' ||
      /s$/.test(tokens[index]?.text ?? '') ||
      tokens[index - 1]?.means['ingredient'] === undefined ||
      (index + 1 < end && !separates(tokens[index + 1]))
    )
      return undefined;
    const lines = linesIn(reader, from, index) ?? [];
    if (lines.length < 2 || lines.some(({ known, line }) => !known || (line.stems ?? line.length) === undefined || (line.stems ?? 1) > 30))
      return undefined;
    facts.push({ fact: 'recipe', lines: lines.map(({ line }) => line), piece });
    from = index + 1;
  }
  return facts.length === 0 || from < end ? undefined : found(reader, start, end, facts);
};
