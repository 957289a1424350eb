// Keeps one Socket Mode connection open. The client's own reconnecting waits five seconds with no connection and ends the process when it gives up,
// so that is switched off and the loop is here.

import type { SocketModeReceiver } from '@slack/bolt';
import { startErrorFrom } from './check-tokens.ts';
import { errorName, type Log } from './logger.ts';

type Client = SocketModeReceiver['client'];

export interface HeldSocket {
  connected(): boolean;
  /** Closes the connection and stops trying. */
  close(): Promise<void>;
}

const longestWait = 30_000;
const helloWithin = 20_000;
const goodbyeWithin = 1_500;

/** Connects, throwing what the first try throws; afterwards every loss is answered with a new connection. */
export const holdSocket = async (client: Client, log: Log): Promise<HeldSocket> => {
  surviveOddPayloads(client, log);
  let connected = false;
  let closing = false;
  let wake: () => void = () => undefined;

  /** Resolves when the connection is open, with a promise of its end. */
  const open = async (): Promise<{ readonly end: Promise<void> }> => {
    const end = new Promise<void>((resolve) => {
      client.once('disconnected', () => {
        connected = false;
        resolve();
      });
    });
    await openWithin(helloWithin, client);
    connected = true;
    return { end };
  };

  const wait = (milliseconds: number): Promise<void> =>
    new Promise((resolve) => {
      const timer = setTimeout(resolve, milliseconds);
      wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });

  const hold = async (first: Promise<void>): Promise<void> => {
    await first;
    for (let failures = 0; !closing; ) {
      try {
        const { end } = await open();
        failures = 0;
        log.info({ from: 'slack' }, 'Connected to Slack again.');
        if (closing) void close(client);
        await end;
      } catch (error) {
        failures += 1;
        log.warn(
          { from: 'slack', error: errorName(error), failures },
          `Not connected; trying again. ${startErrorFrom(error, 'app-token-refused').message}`,
        );
        if (!closing) await wait(Math.min(longestWait, 250 * 2 ** failures));
      }
    }
  };

  const { end } = await open();
  const holding = hold(end);
  return {
    connected: () => connected,
    close: async () => {
      closing = true;
      wake();
      await close(client);
      await holding;
    },
  };
};

/** Says goodbye; a second goodbye ends it at once where Slack leaves the first unanswered. */
const close = async (client: Client): Promise<void> => {
  const hurry = setTimeout(() => void client.disconnect(), goodbyeWithin);
  await client.disconnect();
  clearTimeout(hurry);
};

const openWithin = async (milliseconds: number, client: Client): Promise<void> => {
  let giveUp: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_resolve, reject) => {
    giveUp = setTimeout(() => {
      void client.disconnect();
      reject(new Error('no hello from Slack'));
    }, milliseconds);
  });
  try {
    await Promise.race([client.start(), late]);
  } finally {
    clearTimeout(giveUp);
  }
};

/** A payload without an inner event makes the client throw where nobody catches; it is logged instead, and Slack is left unanswered. */
const surviveOddPayloads = (client: Client, log: Log): void => {
  const handlers = client.listeners('ws_message');
  client.removeAllListeners('ws_message');
  client.on('ws_message', async (...payload: unknown[]) => {
    for (const handler of handlers) {
      try {
        await handler(...payload);
      } catch (error) {
        log.warn({ from: 'slack', error: errorName(error) }, 'A delivery of an unknown kind was passed over.');
      }
    }
  });
};
