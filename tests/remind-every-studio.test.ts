// Studios come and go while the bot runs; each is reminded as long as it has the app.

import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { remindEveryStudio } from '../src/remind-every-studio.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const minute = 60_000;

it('reminds who was there, who comes and not who left, and asks again after trouble', async () => {
  let there: readonly string[] | Error = ['T1'];
  const now: string[] = [];
  const start = (workspace: string) => {
    now.push(workspace);
    return { check: async () => undefined, stop: async () => void now.splice(now.indexOf(workspace), 1) };
  };
  const teams = async (): Promise<readonly string[]> => {
    if (there instanceof Error) throw there;
    return there;
  };
  const reminders = remindEveryStudio({ teams, start });
  const after = async (change: typeof there): Promise<readonly string[]> => {
    there = change;
    await vi.advanceTimersByTimeAsync(minute);
    return now.toSorted();
  };
  await vi.advanceTimersByTimeAsync(0);
  expect(now).toEqual(['T1']);
  expect(await after(['T1', 'T2'])).toEqual(['T1', 'T2']);
  expect(await after(new Error('the database is locked'))).toEqual(['T1', 'T2']);
  expect(await after(['T2', 'T3'])).toEqual(['T2', 'T3']);
  expect(await after(['T1', 'T2', 'T3'])).toEqual(['T1', 'T2', 'T3']);
  await reminders.stop();
  expect(now).toEqual([]);
  expect(await after(['T4'])).toEqual([]);
});
