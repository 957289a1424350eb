// A list of wearers by name, put together from its lines: who is under which heading, and who goes together.

import type { Stretch } from '../text/message.ts';
import type { Heading, Row } from './name-rows.ts';
import { countFor, nameOf } from './role-counts.ts';
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
  const piece = row.piece ?? heading?.piece;
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

interface Section {
  readonly heading: Line | undefined;
  readonly lines: readonly Line[];
}
const sectionsOf = (lines: readonly Line[]): readonly Section[] => {
  const sections: { heading: Line | undefined; lines: Line[] }[] = [{ heading: undefined, lines: [] }];
  for (const line of lines) {
    if (line.told?.is === 'heading') sections.push({ heading: line, lines: [] });
    else sections.at(-1)?.lines.push(line);
  }
  return sections;
};

/** The list; undefined where a heading counts others than stand below it. */
export const namedList = (lines: readonly Line[]): NamedList | undefined => {
  const entries: Entry[] = [];
  const strange: Line[] = [];
  for (const { heading, lines: below } of sectionsOf(lines)) {
    const said = heading?.told?.is === 'heading' ? heading.told : undefined;
    const rows = below.filter((line) => line.told !== undefined || line.ofPeople);
    // A heading without lines of its own is a line itself: "Ushers x4".
    if (heading !== undefined && said?.role !== undefined && rows.length === 0) {
      const entry = entryOf({ ...said, names: [] }, undefined, heading.start);
      if (entry === undefined) strange.push(heading);
      else entries.push(entry);
      continue;
    }
    const own = rows.map((line) => (line.told?.is === 'row' ? entryOf(line.told, said, line.start) : undefined));
    strange.push(...rows.filter((_, at) => own[at] === undefined));
    const listed = own.filter((entry) => entry !== undefined);
    if (said?.count !== undefined && said.count !== listed.reduce((sum, { count }) => sum + count, 0)) return undefined;
    entries.push(...listed);
  }
  return { entries: together(entries), read: lines.filter((line) => line.told !== undefined && !strange.includes(line)), strange };
};
