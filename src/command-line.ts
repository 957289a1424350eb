// What the small commands share: reading their arguments, and saying in one line what stopped them.

import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { reasonOf } from './clockwork/log.ts';
import { openDatabase } from './store/open-database.ts';
import { StoreTrouble } from './store/store-trouble.ts';

export interface Command<Option extends string> {
  readonly name: string; // as npm runs it
  readonly usage: string; // what stands behind the name
  readonly options: readonly Option[]; // each takes a value; --store is known to all
  readonly operands?: number; // values without a name, at most; none when left out
}

export interface Given<Option extends string> {
  readonly store: string;
  readonly options: { readonly [name in Option]?: string };
  readonly operands: readonly string[];
}

/** A person's mistake: said without a stack, and the command ends with 2. */
export class UsageTrouble extends Error {}

/** Throws UsageTrouble. */
export const readCommandLine = <Option extends string>(
  { name, usage, options, operands = 0 }: Command<Option>,
  args: readonly string[],
  store: string,
): Given<Option> => {
  const known = Object.fromEntries(['store', ...options].map((option) => [option, { type: 'string' as const }]));
  const how = `Use: npm run ${name} -- ${usage}`;
  let parsed: { values: Record<string, unknown>; positionals: string[] };
  try {
    parsed = parseArgs({ args: [...args], options: known, strict: true, allowPositionals: true });
  } catch (error) {
    throw new UsageTrouble(`${error instanceof Error ? error.message.split('. ')[0] : 'Not understood'}. ${how}`);
  }
  if (parsed.positionals.length > operands) throw new UsageTrouble(`“${parsed.positionals[operands]}” is one value too many. ${how}`);
  const { store: named, ...values } = parsed.values as { readonly [name in Option | 'store']?: string };
  return { store: named ?? store, options: values as Given<Option>['options'], operands: parsed.positionals };
};

/** Opening a database that is not there would make an empty one. Throws StoreTrouble. */
export const mustExist = (path: string): void => {
  if (existsSync(path)) return;
  throw new StoreTrouble('database-missing', `There is no database ${path}. Name it with --store FILE or BENCHBELL_STORE.`);
};

/** The database beside a running bot, for looking at only. Throws StoreTrouble. */
export const openBeside = (path: string): ReturnType<typeof openDatabase> => {
  mustExist(path);
  return openDatabase({ path });
};

/** Runs a command to its exit code: what it returns, 2 for a mistake in the arguments, 1 for trouble with the database or the disk. */
export const runCommand = async (work: () => number | Promise<number>): Promise<void> => {
  try {
    process.exitCode = await work();
  } catch (error) {
    const isPlain = error instanceof UsageTrouble || error instanceof StoreTrouble;
    process.stderr.write(`benchbell: ${isPlain ? error.message : `This did not work (${reasonOf(error)}).`}\n`);
    process.exitCode = error instanceof UsageTrouble ? 2 : 1;
  }
};

export const say = (line: string): void => void process.stdout.write(`${line}\n`);
