// An entry as a row. Facts are JSON that may be years old, so they are checked against their schema when written and when read;
// `format` tells which shape of JSON a row holds.

import { z } from 'zod';
import { factSchema } from '../reading/fact.ts';
import type { OpenQuestion } from '../reading/reading.ts';
import type { Entry } from '../thread/entry.ts';
import { StoreTrouble } from './store-trouble.ts';

/** Raise it when the JSON of facts changes its shape, and add to `earlierFormats` how the old shape becomes the new one. */
export const entryFormat = 1;

type Upgrade = (facts: unknown) => unknown;
const earlierFormats: ReadonlyMap<number, Upgrade> = new Map();

const factsSchema = z.array(factSchema);

const beside = { topic: z.literal('buying').optional(), tried: factsSchema.optional() };
const openSchema = z.discriminatedUnion('kind', [
  z.object({
    ...beside,
    kind: z.literal('choice'),
    ask: z.object({
      about: z.string(),
      why: z.string(),
      words: z.string(),
      choices: z.array(z.object({ words: z.string(), facts: factsSchema })),
    }),
  }),
  z.object({ ...beside, kind: z.literal('missing'), about: z.string(), piece: z.string().optional(), count: z.number().optional() }),
  z.object({ ...beside, kind: z.literal('pack'), item: z.string(), per: z.string().optional() }),
  z.object({ ...beside, kind: z.literal('topic') }),
]);

export interface EntryRow {
  readonly seq: number;
  readonly scope: Entry['scope'];
  readonly message: string;
  readonly revision: string;
  readonly kind: Entry['kind'];
  readonly author: string;
  readonly at: number;
  readonly format: number;
  readonly facts: string;
  readonly open: string | null;
}

export const entryColumns = 'seq, scope, message, revision, kind, author, at, format, facts, open';

/** A studio's entries come from many channels, and a message's id is its own within one channel only. */
export const studioEntryColumns = entryColumns.replace('message', "coalesce(channel, '') || '/' || message AS message");

/** JSON for the two columns. Throws before anything unreadable (a count that is not a number) can be stored. */
export const toColumns = (entry: Entry): { readonly facts: string; readonly open: string | null } => ({
  facts: JSON.stringify(factsSchema.parse(entry.facts)),
  open: entry.open === undefined ? null : JSON.stringify(openSchema.parse(entry.open)),
});

/** Throws StoreTrouble 'entry-unreadable' naming the row, never its content. */
export const toEntry = (row: EntryRow): Entry => {
  const facts = factsSchema.safeParse(upgraded(row));
  const open = row.open === null ? undefined : openSchema.safeParse(json(row, row.open));
  if (!facts.success || open?.success === false) throw unreadable(row);
  return {
    scope: row.scope,
    message: row.message,
    revision: row.revision,
    kind: row.kind,
    author: row.author,
    at: row.at,
    facts: facts.data,
    // The words of `about` and `why` are shown or compared, never computed with, so their lists may grow without a new format.
    ...(open === undefined ? {} : { open: open.data as OpenQuestion }),
  };
};

const upgraded = (row: EntryRow): unknown => {
  if (row.format > entryFormat) throw unreadable(row);
  let facts = json(row, row.facts);
  for (let format = row.format; format < entryFormat; format += 1) {
    const upgrade = earlierFormats.get(format);
    if (!upgrade) throw unreadable(row);
    facts = upgrade(facts);
  }
  return facts;
};

const json = (row: EntryRow, text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    throw unreadable(row);
  }
};

const unreadable = (row: EntryRow): StoreTrouble =>
  new StoreTrouble(
    'entry-unreadable',
    `Entry ${row.seq} of the database cannot be read. Run the store check, and restore a backup if it is damaged.`,
  );
