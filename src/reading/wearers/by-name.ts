// A list of wearers by name, put together from its lines: who is under which heading, and who goes together.

import type { Stretch } from '../text/message.ts';
import type { Heading, Row } from './name-rows.ts';
import { countFor, nameOf } from './role-counts.ts';
import { suits } from './share-pieces.ts';
import type { Entry } from './wearers-read.ts';

export interface Line extends Stretch {
  readonly told: Row | Heading | undefined;
  readonly ofPeople: boolean; // begins with a name or a role
}

export interface NamedList {
  readonly entries: readonly Entry[];
  readonly read: readonly Line[];
  readonly strange: readonly Line[]; // of people, and not understood
}

// A line's own words go before those of the heading above it.
const entryOf = (row: Omit<Row, 'is'>, heading: Heading | undefined, at: number): Entry | undefined => {
  const role = row.role ?? (row.called === undefined ? heading?.role : undefined);
  const who = role?.means.role ?? '';
  const piece = row.piece ?? (heading?.piece !== undefined && (who === '' || suits(who, heading.piece)) ? heading.piece : undefined);
  const named = row.names.length > 0 ? row.names.length : undefined;
  const count = row.count ?? named ?? (role === undefined ? undefined : countFor(role.text, undefined, false));
  if (count === undefined) return undefined;
  const called = row.called ?? row.names.join(' & ');
  const isNameAlone = role === undefined && row.called === undefined;
  return {
    at,
    wearer: role === undefined ? called : nameOf(role.means.role ?? role.text, count),
    count,
    ...(piece === undefined ? {} : { piece }),
    ...(row.note === undefined ? {} : { note: row.note }),
    ...(named === undefined || isNameAlone ? {} : { names: [...row.names] }),
  };
};

/** Those of one role who wear the same are one entry; who is noted for something stays apart. */
const together = (entries: readonly Entry[]): readonly Entry[] => {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const key = entry.note === undefined ? `${nameOf(entry.wearer, 2)} ${entry.piece ?? ''}` : `${entry.at}`;
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()].map((group): Entry => {
    const [first] = group as [Entry];
    const count = group.reduce((sum, each) => sum + each.count, 0);
    const names = group.flatMap((each) => each.names ?? []);
    return { ...first, count, wearer: nameOf(first.wearer, count), ...(names.length === 0 ? {} : { names }) };
  });
};

const everybody = /^(boys|girls|men|women|ladies|gents|gentlemen|lads|guys|kids|children|family|elders|adults|others)$/;
/** "Ushers" over names alone is a heading; over people with roles of their own it is a line like theirs: "Both dads". */
const asRow = (line: Line, next: Line | undefined): Line => {
  const { told } = line;
  if (told?.is !== 'heading' || told.role === undefined) return line;
  const below = next?.told;
  // "THE BOYS" over people with roles
  if (
    everybody.test(told.role.text) &&
    told.count === undefined &&
    told.piece === undefined &&
    below?.is === 'row' &&
    below.role !== undefined
  )
    return { ...line, told: { is: 'heading' } };
  const heads = below?.is === 'row' && below.role === undefined && below.called === undefined && below.names.length > 0;
  return heads ? line : { ...line, told: { ...told, is: 'row', names: [] } };
};

interface Section {
  readonly heading: Heading | undefined;
  readonly lines: readonly Line[];
}
const sectionsOf = (lines: readonly Line[]): readonly Section[] => {
  const sections: { heading: Heading | undefined; lines: Line[] }[] = [{ heading: undefined, lines: [] }];
  lines.forEach((each, at) => {
    const line = asRow(each, lines[at + 1]);
    const { told } = line;
    if (told?.is !== 'heading') sections.at(-1)?.lines.push(line);
    // Under "Corsages" and then "Mums" they wear corsages.
    else sections.push({ heading: told.role === undefined ? told : { ...sections.at(-1)?.heading, ...told }, lines: [] });
  });
  return sections;
};

/** The list; undefined where a heading counts others than stand below it. */
export const namedList = (lines: readonly Line[]): NamedList | undefined => {
  const entries: Entry[] = [];
  const strange: Line[] = [];
  for (const { heading, lines: below } of sectionsOf(lines)) {
    const rows = below.filter(({ told, ofPeople }) => (told?.is === 'row' && !told.wearsNone) || (told === undefined && ofPeople));
    const own = rows.map(({ told, start }) => (told?.is === 'row' ? entryOf(told, heading, start) : undefined));
    strange.push(...rows.filter((_, at) => own[at] === undefined));
    const listed = own.filter((entry) => entry !== undefined);
    if (heading?.count !== undefined && heading.count !== listed.reduce((sum, { count }) => sum + count, 0)) return undefined;
    entries.push(...listed);
  }
  const isStrange = (line: Line): boolean => strange.some(({ start }) => start === line.start);
  return { entries: together(entries), read: lines.filter((line) => line.told !== undefined && !isStrange(line)), strange };
};
