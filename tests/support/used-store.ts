// A store as a run before leaves it: three messages received, and not yet answered.

import { openStore } from '../../src/store/sqlite-store.ts';

export const waitingThreads = Array.from({ length: 3 }, (_, n) => `180000030${n}.000100`);

export const aUsedStore = (path: string): void => {
  const earlier = openStore({ path });
  for (const ts of waitingThreads) {
    const said = { author: 'UAILSA', kind: 'new', text: '12 corsages at 30 inc', addressed: true, shared: false, sentAt: 0 } as const;
    earlier.receive({ workspace: 'T1', channel: `C${ts}`, thread: ts, id: ts, revision: ts, ...said }, ts);
  }
  earlier.close();
};
