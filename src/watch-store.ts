// Says once in the log what is wrong with the database, again every ten minutes, and once that it works again; and ends the bot where no waiting helps.

import type { Logger } from 'pino';
import type { Clock } from './assistant/ports.ts';
import type { StoreWatch } from './store/sqlite-store.ts';
import { isFinal, type StoreTrouble, type StoreTroubleCode } from './store/store-trouble.ts';

const sayAgainAfter = 10 * 60_000;

export interface WatchedStore extends StoreWatch {
  readonly isWell: () => boolean;
}

/** `end` is called for a trouble that cannot pass: another bot has taken the database over, or it is damaged. */
export const watchStore = (log: Logger, clock: Clock, end: (trouble: StoreTrouble) => void): WatchedStore => {
  let since: number | undefined;
  let said: { readonly code: StoreTroubleCode; readonly at: number } | undefined;
  return {
    failed: (trouble) => {
      const now = clock.now();
      since ??= now;
      const { code } = trouble;
      if (said?.code !== code || Math.abs(now - said.at) >= sayAgainAfter) {
        said = { code, at: now };
        log.error({ what: 'store', outcome: isFinal(trouble) ? 'ended' : 'waiting', reason: code }, trouble.message);
      }
      if (isFinal(trouble)) end(trouble);
    },
    worked: () => {
      if (since === undefined) return;
      log.warn({ what: 'store', outcome: 'works again', milliseconds: clock.now() - since }, 'The database can be written again.');
      since = undefined;
      said = undefined;
    },
    isWell: () => since === undefined,
  };
};
