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
  readonly wearsNone?: true; // "MC: nothing"
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

/** "Corsages, pin" */
const closer = (piece: PieceKind | undefined, words: readonly string[]): PieceKind | undefined => {
  if (piece !== 'corsage') return piece;
  if (words.some((each) => /^pins?$/i.test(each))) return 'pin corsage';
  return words.some((each) => /^wrists?$/i.test(each)) ? 'wrist corsage' : piece;
};

const headingOf = (reader: Reader, line: Stretch, cells: readonly Cell[]): Heading | undefined => {
  const { tokens } = reader;
  const words = tokens.slice(line.start, line.end);
  if (cells.length === 1 && side.test(words.map(({ text }) => text).join(' ')) && words.every(({ number }) => number === undefined))
    return words.some(({ means }) => means.piece !== undefined) ? undefined : { is: 'heading' };
  const [first, second, third] = cells;
  const count = second?.is === 'number' ? second.number : undefined;
  if (first?.is === 'piece' && first.many && second?.is === 'words' && third === undefined) {
    const piece = closer(first.piece, [second.words]);
    return piece === first.piece ? undefined : { is: 'heading', ...given('piece', piece), ...given('count', first.count) };
  }
  if (third !== undefined || (second !== undefined && count === undefined)) return undefined;
  if (first?.is === 'role' && first.names.length === 0 && (first.piece === undefined || isPlural(first.role.text))) {
    const { role, piece } = first;
    return { is: 'heading', role, ...(piece === undefined ? {} : { piece }), ...given('count', first.count ?? count) };
  }
  if (first?.is === 'piece' && first.many) return { is: 'heading', piece: first.piece, ...given('count', first.count ?? count) };
  return undefined;
};

const ofChild = /flower girl|page boy|ring bearer|bridesmaid|niece|nephew|child/;

/** What the cells of a line come to while they are gone through. */
interface Told {
  names: string[];
  notes: string[];
  role?: Token;
  roleWords?: string; // as typed
  called?: string;
  piece?: PieceKind;
  count?: number;
  made?: number; // "3 buttonholes"
  age?: string;
  ages: { readonly name: string; readonly age: string }[]; // said behind the name
  listed: number; // cells with names
  wearsNone?: true;
}

/** Puts a cell to the rest of its line; false where they do not go together. */
const adds = (told: Told, cell: Cell, nameFirst: boolean): boolean => {
  const { names, notes } = told;
  switch (cell.is) {
    case 'role':
      // "Nanna Jean, groom's gran": what she is called, and who she is.
      if (told.role !== undefined && (nameFirst || told.piece !== undefined || told.listed > 0 || cell.names.length > 0)) return false;
      if (told.role !== undefined) names.splice(0, names.length, told.roleWords ?? '');
      if (cell.names.length > 0 && names.length > 0) return false;
      told.role = cell.role;
      told.roleWords = cell.words;
      if (cell.count !== undefined) told.count = cell.count;
      if (cell.piece !== undefined) told.piece = cell.piece;
      if (cell.note !== undefined) notes.push(cell.note);
      names.push(...cell.names);
      return true;
    case 'piece':
      if (told.piece !== undefined) return false;
      told.piece = cell.piece;
      if (cell.count !== undefined) told.made = cell.count;
      if (cell.note !== undefined) notes.push(cell.note);
      return true;
    case 'names':
      // "Groom: Thistle" is what he wears; "Rose, mother of the bride" is who she is.
      if (!cell.sure && !(nameFirst && told.listed === 0)) return false;
      names.push(...cell.names);
      told.listed += 1;
      if (cell.age !== undefined) told.age = cell.age;
      return true;
    case 'number':
      // "Poppy (4), flower girl" tells her age, "Ushers (3): …" how many.
      if (cell.inBrackets && nameFirst && told.role === undefined && told.listed === names.length) {
        told.ages.push({ name: names.at(-1) ?? '', age: `${cell.number}` });
        return true;
      }
      if (cell.inBrackets && told.role !== undefined && !isPlural(told.role.text)) {
        notes.push(`${cell.number}`);
        return true;
      }
      if (told.role === undefined || told.count !== undefined || !isPlural(told.role.text)) return false;
      told.count = cell.number;
      return true;
    case 'both':
      told.count = 2;
      return true;
    case 'none':
      told.wearsNone = true;
      return true;
    case 'size':
      notes.push(cell.words);
      return true;
    case 'words':
      if (nameFirst && told.role === undefined && told.called === undefined && told.piece === undefined) told.called = cell.words;
      else notes.push(names.length > 1 && !ofAll.test(cell.words) ? `${names.at(-1)}: ${cell.words}` : cell.words);
      return true;
    case 'nothing':
      return true;
    case 'strange':
      return false;
  }
};

const given = <Key extends string, Value>(key: Key, value: Value | undefined): { readonly [K in Key]?: Value } =>
  (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: Value };

/** Whether a colon stands behind its first words. */
const isLabelled = (reader: Reader, line: Stretch): boolean => {
  const [first] = cellsIn(reader, line);
  return first !== undefined && reader.tokens[first.end]?.text === ':';
};

/** What a line says; undefined where it says anything else as well. `place`: which line of the list it is, for those that number them. */
export const rowOf = (reader: Reader, line: Stretch, place: number): Row | Heading | undefined => {
  const all = cellsIn(reader, line).map((cell) => cellOf(reader, cell));
  const cells = all[0]?.is === 'number' && all[0].number === place && all.length > 2 ? all.slice(1) : all;
  const [lead] = cells;
  if (lead?.is === 'role' && /^guests?$/.test(lead.role.text) && lead.piece === undefined && cells.every(({ is }) => is !== 'names'))
    return undefined; // "Guests: 90"
  const heading = headingOf(reader, line, cells);
  if (heading !== undefined) return heading;
  if (cells.length > 1 && cells.at(-1)?.is === 'none') return { is: 'row', names: [], wearsNone: true }; // "Photographers x2: nothing"
  const told: Told = { names: [], notes: [], ages: [], listed: 0 };
  const nameFirst = cells[0]?.is === 'names';
  if (!cells.every((cell) => adds(told, cell, nameFirst))) return undefined;
  const { names, role, called, piece, count, made, age, listed } = told;
  if (told.wearsNone) return piece === undefined ? { is: 'row', names: [], wearsNone: true } : undefined;
  // "Venue: The Net Loft", "Planner: Kim": a line of a form, and nobody who wears any.
  if (nameFirst && role === undefined && piece === undefined && isLabelled(reader, line)) return undefined;
  // "Reed, Dan, groom" is one man.
  if (listed > 1 && role !== undefined && !isPlural(role.text)) return undefined;
  if (names.length === 0 && role === undefined) return undefined;
  const people = count ?? Math.max(names.length, 1);
  if (people < names.length || (made ?? people) !== people) return undefined;
  // "Isla 3, flower girl"
  if (age !== undefined && !(names.length === 1 && role !== undefined && ofChild.test(role.means.role ?? ''))) return undefined;
  const notes = [
    ...(age === undefined ? [] : [age]),
    ...told.ages.map((one) => (names.length === 1 ? one.age : `${one.name} ${one.age}`)),
    ...(role !== undefined && called !== undefined ? [called] : []),
    ...told.notes,
  ];
  return {
    is: 'row',
    names,
    ...given('role', role),
    ...given('called', role === undefined ? called : undefined),
    ...given('piece', closer(piece, notes)),
    ...given('count', count),
    ...given('note', notes.length === 0 ? undefined : notes.join('; ')),
  };
};
