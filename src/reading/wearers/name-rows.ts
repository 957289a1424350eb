// One line of a list of wearers by name: a person with a role, a role with its people, or a heading for the lines below it.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { type Cell, cellOf, cellsIn } from './name-cells.ts';
import { isPlural } from './role-counts.ts';

export interface Row {
  readonly is: 'row';
  readonly names: readonly string[];
  readonly role?: Token;
  readonly called?: string; // a role nobody knows, as typed
  readonly piece?: PieceKind;
  readonly count?: number;
  readonly note?: string;
}

/** "Ushers", "Buttonholes (5):", "Groom's side": what is said of it holds for the lines below. */
export interface Heading {
  readonly is: 'heading';
  readonly role?: Token;
  readonly piece?: PieceKind;
  readonly count?: number;
}

const ofAll = /\b(all|both|each|everyone)\b/i; // "Sam, Raj, Tom (hay fever)" is said of Tom
const side = /\b(side|family|party|guests|wearers|names|list)\b/;

const headingOf = (reader: Reader, line: Stretch, cells: readonly Cell[]): Heading | undefined => {
  const { tokens } = reader;
  const words = tokens.slice(line.start, line.end);
  if (cells.length === 1 && side.test(words.map(({ text }) => text).join(' ')) && words.every(({ number }) => number === undefined))
    return words.some(({ means }) => means.piece !== undefined) ? undefined : { is: 'heading' };
  const [first, second, third] = cells;
  const count = second?.is === 'number' ? second.number : undefined;
  if (third !== undefined || (second !== undefined && count === undefined)) return undefined;
  if (first?.is === 'role' && first.names.length === 0 && (first.piece === undefined || isPlural(first.role.text))) {
    const { role, piece } = first;
    return { is: 'heading', role, ...(piece === undefined ? {} : { piece }), ...numbered(first.count ?? count) };
  }
  if (first?.is === 'piece' && first.many) return { is: 'heading', piece: first.piece, ...numbered(first.count ?? count) };
  return undefined;
};

const numbered = (count: number | undefined): { readonly count?: number } => (count === undefined ? {} : { count });

/** What a line says; undefined where it says anything else as well. `place`: which line of the list it is, for those that number them. */
export const rowOf = (reader: Reader, line: Stretch, place: number): Row | Heading | undefined => {
  const all = cellsIn(reader, line).map((cell) => cellOf(reader, cell));
  const cells = all[0]?.is === 'number' && all[0].number === place && all.length > 2 ? all.slice(1) : all;
  const heading = headingOf(reader, line, cells);
  if (heading !== undefined) return heading;
  let [role, called, piece, count]: [Token | undefined, string | undefined, PieceKind | undefined, number | undefined] = [
    undefined,
    undefined,
    undefined,
    undefined,
  ];
  const [names, notes]: [string[], string[]] = [[], []];
  const nameFirst = cells[0]?.is === 'names';
  let listed = 0; // cells with names
  let made: number | undefined; // "3 buttonholes"
  for (const cell of cells) {
    switch (cell.is) {
      case 'role':
        if (role !== undefined || (cell.names.length > 0 && names.length > 0)) return undefined;
        role = cell.role;
        count = cell.count ?? count;
        piece = cell.piece ?? piece;
        names.push(...cell.names);
        break;
      case 'piece':
        if (piece !== undefined) return undefined;
        [piece, made] = [cell.piece, cell.count];
        break;
      case 'names':
        // "Groom: Thistle" is what he wears; "Rose, mother of the bride" is who she is.
        if (!cell.sure && !(nameFirst && listed === 0)) return undefined;
        names.push(...cell.names);
        listed += 1;
        break;
      case 'number':
        if (role === undefined || count !== undefined || !isPlural(role.text)) return undefined;
        count = cell.number;
        break;
      case 'age':
        notes.push(cell.words);
        break;
      case 'words':
        if (nameFirst && role === undefined && called === undefined && piece === undefined) called = cell.words;
        else notes.push(names.length > 1 && !ofAll.test(cell.words) ? `${names.at(-1)}: ${cell.words}` : cell.words);
        break;
      case 'strange':
        return undefined;
    }
  }
  // "Reed, Dan, groom" is one man.
  if (listed > 1 && role !== undefined && !isPlural(role.text)) return undefined;
  if (names.length === 0 && role === undefined) return undefined;
  const people = count ?? Math.max(names.length, 1);
  if (people < names.length || (made ?? people) !== people) return undefined;
  return {
    is: 'row',
    names,
    ...(role === undefined ? {} : { role }),
    ...(called === undefined || role !== undefined ? {} : { called }),
    ...(piece === undefined ? {} : { piece }),
    ...numbered(count),
    ...(notes.length + (role !== undefined && called !== undefined ? 1 : 0) === 0
      ? {}
      : { note: [...(role !== undefined && called !== undefined ? [called] : []), ...notes].join('; ') }),
  };
};
