// Fetches the lists people dropped, one after the other, in whatever order the network allows. What is still to be fetched is in the store,
// so a crash in between forgets none of them.

import type { FileToFetch } from '../../assistant/ports.ts';
import { fetchList, readFile } from './dropped-file.ts';
import type { Inbox } from './keep-deliveries.ts';
import { errorName, type Log } from './logger.ts';
import type { Workspaces } from './workspaces.ts';

export interface FetchParts {
  readonly inbox: Inbox;
  readonly workspaces: Workspaces;
  readonly apiUrl: string | undefined;
  readonly log: Log;
}

export interface FileFetcher {
  /** Files were kept. */
  wake(): void;
  stop(): Promise<void>;
}

const pauses = [500, 2_000, 10_000, 60_000]; // milliseconds between the tries of one file

export const fetchFiles = ({ inbox, workspaces, apiUrl, log }: FetchParts): FileFetcher => {
  const stopping = new AbortController();
  const tries = new Map<string, number>();
  let running: Promise<void> | undefined;
  let timer: NodeJS.Timeout | undefined;

  /** True when it is settled, one way or the other. */
  const fetchOne = async (wanted: FileToFetch): Promise<boolean> => {
    const name = JSON.stringify([wanted.key.workspace, wanted.key.channel, wanted.message]);
    const here = await workspaces.of(wanted.key.workspace);
    const file = readFile(wanted.file);
    const content = here && file ? await fetchList(file, here.botToken, apiUrl, stopping.signal) : ({ unreadable: 'unavailable' } as const);
    if (stopping.signal.aborted) return false;
    const tried = tries.get(name) ?? 0;
    if ('again' in content && tried < pauses.length) {
      tries.set(name, tried + 1);
      return false;
    }
    tries.delete(name);
    inbox.fill(wanted, 'again' in content ? { unreadable: 'unavailable' } : content);
    inbox.work();
    return true;
  };

  const round = async (): Promise<void> => {
    let left = 0;
    try {
      for (const wanted of inbox.filesToFetch()) {
        if (stopping.signal.aborted) return;
        const settled = await fetchOne(wanted).catch((error: unknown) => {
          log.warn({ from: 'slack', error: errorName(error) }, 'A dropped file could not be fetched yet.');
          return false;
        });
        if (!settled) left += 1;
      }
    } catch (error) {
      left += 1;
      log.warn({ from: 'slack', error: errorName(error) }, 'It could not be looked up which dropped files are still to be fetched.');
    }
    if (left === 0 || stopping.signal.aborted) return;
    const most = Math.max(0, ...tries.values());
    timer = setTimeout(wake, pauses[Math.max(0, most - 1)]);
  };

  const wake = (): void => {
    clearTimeout(timer);
    if (stopping.signal.aborted) return;
    const before = running ?? Promise.resolve();
    const mine = before.then(round).finally(() => {
      if (running === mine) running = undefined;
    });
    running = mine;
  };

  return {
    wake,
    stop: async () => {
      stopping.abort();
      clearTimeout(timer);
      await running;
    },
  };
};
