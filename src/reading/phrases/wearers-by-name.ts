// Who wears them, by name, a line for each person or role: "Dan Reed – best man – buttonhole", "Ushers: Sam, Raj, Tom".

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { linesOf } from '../text/lines.ts';
import type { Stretch } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import { type Line, namedList } from '../wearers/by-name.ts';
import { cellOf, cellsIn } from '../wearers/name-cells.ts';
import { rowOf } from '../wearers/name-rows.ts';
import { piecesOf } from '../wearers/pieces-worn.ts';

const fewest = 2; // names: one alone may be anything
const fewestWorn = 4; // lines without a name: shorter lists are read as sentences
const longest = 24; // tokens in a line

const isOfPeople = (reader: Reader, line: Stretch): boolean => {
  const [first, second] = cellsIn(reader, line);
  const cell = first === undefined ? undefined : cellOf(reader, first);
  const strange = cell?.is === 'strange' && reader.tokens[line.start]?.means.role !== undefined; // "Nana Pat and Koro Bill, …"
  // "Phone: 07700 900123" is a line of a form.
  const labelled = cell?.is === 'names' && reader.tokens[first?.end ?? 0]?.text === ':';
  return second !== undefined && !labelled && (strange || cell?.is === 'role' || (cell?.is === 'names' && cell.sure));
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
const wornBy = ({ told }: Line): boolean => told?.is === 'row' && told.role !== undefined && told.piece !== undefined;
// "Bride: Jess, Groom: Tom, Guests: 90" heads an enquiry: the two alone are no list of who wears them.
const couple = /^(bride|groom|guest|couple)$/;
const withRole = ({ told }: Line): boolean =>
  told?.role !== undefined && (told.piece !== undefined || !couple.test(told.role.means.role ?? ''));

const isList = (lines: readonly Line[]): boolean =>
  lines.some(withRole) && (lines.reduce((sum, line) => sum + namesIn(line), 0) >= fewest || lines.filter(wornBy).length >= fewestWorn);

const heldWhole = (lines: readonly Line[]): readonly Finding[] =>
  lines.filter(({ ofPeople }) => ofPeople).map(({ start, end }) => ({ start, end, held: true, whole: true }));

const summedUp = pattern(
  "(so|thats|that's|that is|should be|that should be|makes|makes that|total|total of|:|=){1,3} <n:count> (pieces|people|wearers|in all|in total|altogether|all up|total|flowers)",
);
/** What is said behind the list of how many they are: "that should be 13 pieces". */
const sumBehind = ({ tokens }: Reader, from: number): (Stretch & { readonly count: number }) | undefined => {
  const match = summedUp.in(tokens, from, tokens.length);
  return match === undefined ? undefined : { start: match.start, end: match.end, count: Number(match.kept['n']?.number?.amount) };
};

const tokensOf = (stretches: readonly Stretch[]): number[] => stretches.flatMap(placesIn);

const find = (reader: Reader): readonly Finding[] => {
  const { tokens } = reader;
  if (!tokens.some(({ means }) => means.role !== undefined)) return [];
  const lines = readLines(reader);
  if (!isList(lines)) return [];
  const [from, to] = [lines.findIndex(({ ofPeople }) => ofPeople), lines.findLastIndex(({ ofPeople }) => ofPeople)];
  const list = namedList(lines.slice(from, to + 1));
  const [first, last] = [list?.read[0], list?.read.at(-1)];
  if (list === undefined || first === undefined || last === undefined) return heldWhole(lines);
  const sum = sumBehind(reader, last.end);
  if (sum !== undefined && sum.count !== list.entries.reduce((all, { count }) => all + count, 0))
    return [...heldWhole(lines), { start: sum.start, end: sum.end, held: true }];
  const facts: Unworded[] = [
    { fact: 'wearers', wearers: list.entries.map(({ at: _, most: __, ...entry }) => entry) },
    ...piecesOf(list.entries, undefined, 0),
  ];
  return [
    found(reader, first.start, last.end, facts, tokensOf([...list.read, ...(sum === undefined ? [] : [sum])])),
    ...list.strange.map(({ start, end }) => ({ start, end, held: true, whole: true })),
  ];
};

export const wearersByName: Phrase = {
  name: 'wearers by name',
  examples: ['Dan Reed – best man – buttonhole\nUshers: Sam, Raj, Tom – buttonholes'],
  find,
};
