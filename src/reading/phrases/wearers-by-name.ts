// Who wears them, by name, a line for each person or role: "Dan Reed – best man – buttonhole", "Ushers: Sam, Raj, Tom".

import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { linesOf } from '../text/lines.ts';
import type { Stretch } from '../text/message.ts';
import { type Line, namedList } from '../wearers/by-name.ts';
import { cellOf, cellsIn } from '../wearers/name-cells.ts';
import { rowOf } from '../wearers/name-rows.ts';
import { piecesOf } from '../wearers/pieces-worn.ts';

const fewest = 2; // names: one alone may be anything
const longest = 24; // tokens in a line

const isOfPeople = (reader: Reader, line: Stretch): boolean => {
  const [first, second] = cellsIn(reader, line);
  const cell = first === undefined ? undefined : cellOf(reader, first);
  return second !== undefined && (cell?.is === 'role' || (cell?.is === 'names' && cell.sure));
};

const readLines = (reader: Reader): readonly Line[] => {
  let place = 1;
  return linesOf(reader.tokens).map((line) => {
    const told = line.end - line.start > longest ? undefined : rowOf(reader, line, place);
    if (told?.is === 'row') place += 1;
    return { ...line, told, ofPeople: told !== undefined || isOfPeople(reader, line) };
  });
};

const namesIn = ({ told }: Line): number => (told?.is === 'row' ? told.names.length : 0);
const withRole = ({ told }: Line): boolean => told?.role !== undefined;

const find = (reader: Reader): readonly Finding[] => {
  const { tokens } = reader;
  if (!tokens.some(({ means }) => means.role !== undefined)) return [];
  const lines = readLines(reader);
  if (lines.reduce((sum, line) => sum + namesIn(line), 0) < fewest || !lines.some(withRole)) return [];
  const list = namedList(
    lines.slice(
      lines.findIndex(({ ofPeople }) => ofPeople),
      lines.findLastIndex(({ ofPeople }) => ofPeople) + 1,
    ),
  );
  if (list === undefined)
    return lines.filter(({ ofPeople }) => ofPeople).map(({ start, end }) => ({ start, end, held: true, whole: true }));
  const [first, last] = [list.read[0], list.read.at(-1)];
  if (first === undefined || last === undefined) return [];
  const facts: Unworded[] = [
    { fact: 'wearers', wearers: list.entries.map(({ at: _, most: __, ...entry }) => entry) },
    ...piecesOf(list.entries, undefined, 0),
  ];
  const takes = list.read.flatMap(({ start, end }) => Array.from({ length: end - start }, (_, offset) => start + offset));
  return [
    found(reader, first.start, last.end, facts, takes),
    ...list.strange.map(({ start, end }) => ({ start, end, held: true, whole: true })),
  ];
};

export const wearersByName: Phrase = {
  name: 'wearers by name',
  examples: ['Dan Reed – best man – buttonhole\nUshers: Sam, Raj, Tom – buttonholes'],
  find,
};
