// Which backups are kept: the newest of each of the last days, and the newest of each of the last weeks. Pure.

import { addDays, type Day, parseDay, weekdayOf, weekdays } from '../values/day.ts';

export interface BackupRule {
  readonly days: number; // days that have a backup, newest first
  readonly weeks: number; // weeks from Monday that have a backup
}

export const usualBackupRule: BackupRule = { days: 7, weeks: 8 };

const namePattern = /^benchbell-(\d{4})(\d{2})(\d{2})T(\d{6})Z\.db$/;

/** "benchbell-20270120T090000Z.db": names sort by age. */
export const backupName = (instant: Date): string => `benchbell-${instant.toISOString().replace(/[-:]|\.\d+/g, '')}.db`;

/** The day (UTC) a backup of ours was made; undefined for any other file. */
const dayOfBackup = (name: string): Day | undefined => {
  const parts = namePattern.exec(name);
  return parts ? parseDay(`${parts[1]}-${parts[2]}-${parts[3]}`) : undefined;
};

const mondayOf = (day: Day): Day => addDays(day, -weekdays.indexOf(weekdayOf(day)));

/** Of these file names, the backups that may go. Files that are not ours are never among them. */
export const superfluous = (names: readonly string[], rule: BackupRule = usualBackupRule): readonly string[] => {
  const ours = names
    .filter((name) => dayOfBackup(name) !== undefined)
    .toSorted()
    .toReversed();
  const keep = new Set([...newestOfEach(ours, (day) => day, rule.days), ...newestOfEach(ours, mondayOf, rule.weeks)]);
  return ours.filter((name) => !keep.has(name));
};

const newestOfEach = (newestFirst: readonly string[], spanOf: (day: Day) => Day, spans: number): readonly string[] => {
  const newest = new Map<Day, string>();
  for (const name of newestFirst) {
    const span = spanOf(dayOfBackup(name) as Day);
    if (!newest.has(span)) newest.set(span, name);
  }
  return [...newest.values()].slice(0, spans);
};
