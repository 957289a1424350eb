// Two bots on one database by mistake: the second is refused and told why, and takes over when the first has died or fallen silent.

import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { hostname } from 'node:os';
import { describe, expect, it, onTestFinished } from 'vitest';
import { leaseLasts } from '../../src/store/lease.ts';
import { message } from './builders.ts';
import { newPath, open } from './in-folder.ts';

const childScript = new URL('../support/store-child.ts', import.meta.url).pathname;

/** Another process that opens the database; the first line it says. */
const another = async (
  what: 'open-and-stay' | 'open-and-leave',
  path: string,
): Promise<{ child: ChildProcess; said: Record<string, unknown> }> => {
  const child = spawn(process.execPath, ['--import', 'tsx', childScript, what, path], { stdio: ['ignore', 'pipe', 'inherit'] });
  onTestFinished(() => void child.kill('SIGKILL'));
  const [line] = (await once(child.stdout, 'data')) as [Buffer];
  return { child, said: JSON.parse(line.toString()) };
};

describe('two processes on one database', () => {
  it('the second is refused, named the first, and takes over when the first is killed', async () => {
    const path = newPath();
    const { child, said } = await another('open-and-stay', path);
    expect(said).toEqual({ opened: child.pid });
    expect(() => open(path)).toThrow(
      expect.objectContaining({ code: 'database-in-use', message: expect.stringContaining(`process ${child.pid} on ${hostname()}`) }),
    );
    child.kill('SIGKILL');
    await once(child, 'exit');
    expect(open(path).receive(message('m1'), 'd1')).toBe('new');
  });

  it('a second process is refused while this one works, and let in when this one has closed', async () => {
    const path = newPath();
    const first = open(path);
    expect((await another('open-and-leave', path)).said).toMatchObject({ code: 'database-in-use' });
    first.receive(message('m1'), 'd1');
    first.close();
    expect((await another('open-and-leave', path)).said).toHaveProperty('opened');
  });

  it('is refused within one process too', () => {
    const path = newPath();
    open(path);
    expect(() => open(path)).toThrow(expect.objectContaining({ code: 'database-in-use' }));
  });
});

describe('a bot on another machine', () => {
  const start = Date.UTC(2027, 0, 20);
  const heldElsewhere = (path: string, now: number) => {
    const store = open(path, { clock: { now: () => now } });
    store.database.exec("UPDATE lease SET host = 'the other machine', pid = 1");
    return store;
  };

  it('keeps its hold until it has been silent for a minute', () => {
    const path = newPath();
    heldElsewhere(path, start);
    const at = (now: number) => () => open(path, { clock: { now: () => now } });
    expect(at(start + leaseLasts - 1)).toThrow('hold ends at 2027-01-20T00:01:00.000Z');
    expect(at(start + leaseLasts)).not.toThrow();
  });

  it('cannot write any more once another has taken over, and closing it does not end the new hold', () => {
    const path = newPath();
    const slept = heldElsewhere(path, start);
    const taker = open(path, { clock: { now: () => start + leaseLasts } });
    expect(() => slept.receive(message('m1'), 'd1')).toThrow(expect.objectContaining({ code: 'lease-lost' }));
    slept.close();
    expect(taker.receive(message('m1'), 'd1')).toBe('new');
  });

  it('does not hold it for years because its clock ran ahead', () => {
    const path = newPath();
    heldElsewhere(path, Date.UTC(2040, 0, 1));
    expect(() => open(path, { clock: { now: () => start } })).not.toThrow();
  });
});

it('a process number used again by another program is no hold', () => {
  const path = newPath();
  open(path).database.exec("UPDATE lease SET born = 'another time'");
  expect(() => open(path)).not.toThrow();
});
