// Backups are complete, read back, dated and thinned out; a restore gives back the day of the backup and loses nothing that was there.

import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { backUp } from '../../src/store/backup.ts';
import { backupName, superfluous } from '../../src/store/backup-rule.ts';
import { checkStore } from '../../src/store/check-store.ts';
import { restore } from '../../src/store/restore.ts';
import { addDays, type Day } from '../../src/values/day.ts';
import { buttonholes, key, message, tell } from './builders.ts';
import { newFolder, newPath, open } from './in-folder.ts';

const morning = Date.UTC(2027, 0, 20, 9);

describe('a backup', () => {
  it('is one dated file for the owner only, holding all that was stored, though the bot works on', async () => {
    const store = open(newPath());
    for (let n = 0; n < 60; n += 1) tell(store, message(`m${n}`), [buttonholes(n + 1)]);
    const directory = join(newFolder(), 'backups');
    const making = backUp(store.database, { directory, now: morning });
    tell(store, message('meanwhile', { thread: 't2' }), [buttonholes(1)]);
    const made = await making;
    expect(readdirSync(directory)).toEqual(['benchbell-20270120T090000Z.db']);
    expect(made).toEqual({ path: join(directory, 'benchbell-20270120T090000Z.db'), bytes: statSync(made.path).size, removed: [] });
    expect(statSync(made.path).mode & 0o777).toBe(0o600);
    expect(statSync(directory).mode & 0o777).toBe(0o700);

    const copy = open(made.path);
    expect(copy.thread(key())).toEqual(store.thread(key()));
    expect(checkStore(copy.database, copy.folds)).toMatchObject({ faults: [] });
  });

  it('of a database in memory works the same', async () => {
    const store = open(':memory:');
    tell(store, message('m1'), [buttonholes(40)]);
    const { path } = await backUp(store.database, { directory: newFolder(), now: morning });
    expect(open(path).thread(key()).state.lines[0]?.count).toBe(40);
  });

  it('that cannot be written says so and leaves nothing behind', async () => {
    const file = newPath();
    writeFileSync(file, '');
    const store = open(':memory:');
    await expect(backUp(store.database, { directory: join(file, 'backups'), now: morning })).rejects.toMatchObject({
      name: 'StoreTrouble',
    });
  });
});

describe('a backup of a damaged database', () => {
  it('does not count, and no older one is removed for it', async () => {
    const store = open(newPath());
    tell(store, message('m1'), [buttonholes(40)]);
    store.database.unsafeMode();
    store.database.exec(
      "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'slot, seq', 'seq, slot') WHERE name = 'outbox_about'",
    );
    const directory = newFolder();
    for (let n = 10; n < 30; n += 1) writeFileSync(join(directory, `benchbell-202601${n}T090000Z.db`), '');
    await expect(backUp(store.database, { directory, now: morning })).rejects.toMatchObject({ code: 'backup-unsound' });
    expect(readdirSync(directory)).toHaveLength(20);
  });
});

describe('which backups are kept', () => {
  const on = (day: string, time = '09:00:00'): string => backupName(new Date(`${day}T${time}Z`));
  const daily = (from: string, days: number): string[] => Array.from({ length: days }, (_, n) => on(addDays(from as Day, n)));

  it('the last seven days, and the newest of each of the last eight weeks', () => {
    // 1 January 2027 is a Friday, 30 April a Friday: the weeks' newest are the Sundays and, of the last week, the Friday.
    const names = daily('2027-01-01', 120);
    const gone = superfluous(names);
    const kept = names.filter((name) => !gone.includes(name));
    expect(kept).toEqual([
      ...['2027-03-14', '2027-03-21', '2027-03-28', '2027-04-04', '2027-04-11', '2027-04-18'].map((day) => on(day)),
      ...daily('2027-04-24', 7),
    ]);
  });

  it('only the newest of one day', () => {
    const names = [on('2027-01-20', '07:00:00'), on('2027-01-20', '09:00:00')];
    expect(superfluous(names)).toEqual([names[0]]);
  });

  it('the last ones after a long pause, whatever their age', () => {
    expect(superfluous(daily('2020-01-01', 3))).toEqual([]);
  });

  it('every file that is not ours', () => {
    expect(superfluous(['letters.db', 'benchbell.db', 'benchbell-20270120T090000Z.db.part', 'benchbell-99999999T090000Z.db'])).toEqual([]);
  });

  it('and the others are removed when a new one is made', async () => {
    const directory = newFolder();
    for (const name of [...daily('2027-01-01', 10), 'letters.txt']) writeFileSync(join(directory, name), '');
    const { removed } = await backUp(open(':memory:').database, { directory, now: Date.UTC(2027, 0, 11, 9) });
    expect(removed).toEqual([on('2027-01-04'), on('2027-01-02'), on('2027-01-01')]);
    expect(readdirSync(directory)).toHaveLength(9);
  });
});

describe('a restore', () => {
  const backupOfOneMessage = async (): Promise<string> => {
    const store = open(newPath());
    tell(store, message('m1'), [buttonholes(40)]);
    const { path } = await backUp(store.database, { directory: newFolder(), now: morning });
    store.close();
    return path;
  };

  it('puts the backup in place and sets aside what was there', async () => {
    const backup = await backupOfOneMessage();
    const path = newPath();
    const store = open(path);
    tell(store, message('m9'), [buttonholes(9)]);
    store.close();
    const aside = restore({ backup, path, now: morning });
    expect(open(path).thread(key()).state.lines[0]?.count).toBe(40);
    expect(open(aside ?? '').thread(key()).state.lines[0]?.count).toBe(9);
    expect(statSync(path).mode & 0o777).toBe(0o600);
  });

  it('replaces a damaged database, and makes one where there was none', async () => {
    const backup = await backupOfOneMessage();
    const path = newPath();
    writeFileSync(path, 'damaged');
    const aside = restore({ backup, path, now: morning });
    expect(readFileSync(aside ?? '', 'utf8')).toBe('damaged');
    expect(restore({ backup, path: newPath(), now: morning })).toBeUndefined();
    expect(open(path).thread(key()).version).toBe(1);
  });

  it('is refused while a bot runs on the database', async () => {
    const backup = await backupOfOneMessage();
    const path = newPath();
    tell(open(path), message('m9'), [buttonholes(9)]);
    expect(() => restore({ backup, path, now: morning })).toThrow(expect.objectContaining({ code: 'database-in-use' }));
  });

  it('is refused from a damaged backup, and changes nothing', async () => {
    const backup = await backupOfOneMessage();
    const bytes = readFileSync(backup);
    writeFileSync(backup, bytes.fill(0xa5, 8192, 20_000));
    const path = newPath();
    writeFileSync(path, 'kept');
    expect(() => restore({ backup, path, now: morning })).toThrow(expect.objectContaining({ name: 'StoreTrouble' }));
    expect(readFileSync(path, 'utf8')).toBe('kept');
  });
});
