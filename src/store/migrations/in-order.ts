// The one place a migration is registered.

import { firstTables } from './0001-first-tables.ts';
import type { Migration } from './migration.ts';

export const migrations: readonly Migration[] = [firstTables];
