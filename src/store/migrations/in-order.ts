// The one place a migration is registered.

import { firstTables } from './0001-first-tables.ts';
import { slackAtHome } from './0002-slack-at-home.ts';
import type { Migration } from './migration.ts';

export const migrations: readonly Migration[] = [firstTables, slackAtHome];
