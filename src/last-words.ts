// What nobody caught ends the process, with one line that says where and under which id: a bot in an unknown state must not go on answering.
// The error's own message is left out, as it may quote what a person wrote. Whoever keeps the bot running starts it again.

import type { Logger } from 'pino';
import { reasonOf } from './clockwork/log.ts';

/** Ends the process with 1 after the line. */
export const endOnUncaught = (log: Logger): void => {
  const end = (error: unknown): void => {
    log.fatal({ what: 'stop', outcome: 'failed', ...described(error) }, 'An error nobody expected ended the bot.');
    process.exit(1);
  };
  process.on('uncaughtException', end);
  process.on('unhandledRejection', end);
};

/** The same failure has the same id, so that it can be counted and looked up. */
export const described = (error: unknown): { readonly id: string; readonly reason: string; readonly at: string } => {
  const frames = error instanceof Error ? (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line)) : [];
  const at = frames.slice(0, 3).map((line) =>
    line
      .trim()
      .replace(/^at /, '')
      .replace(/file:\/\/\S*\/(?=(dist|src|node_modules)\/)/, ''),
  );
  const reason = reasonOf(error);
  let hash = 0;
  for (const character of `${reason} ${at.join(' ')}`) hash = (Math.imul(hash, 31) + (character.codePointAt(0) ?? 0)) >>> 0;
  return { id: hash.toString(36).padStart(7, '0'), reason, at: at.join(' < ') };
};
