// Starts the Slack host: checks the tokens, then listens by Socket Mode or HTTP. Either way a message is kept by the inbox before Slack is told.

import type { Server } from 'node:http';
import { App, HTTPReceiver, type Receiver, SocketModeReceiver } from '@slack/bolt';
import { checkBotToken, type Identity, startErrorFrom } from './check-tokens.ts';
import { clientOptions, slackClient } from './clients.ts';
import type { KnownThreads } from './delivery-to-message.ts';
import { holdSocket } from './hold-socket.ts';
import { type Inbox, keepingFirst } from './keep-deliveries.ts';
import { errorName, type Log, slackLogger } from './logger.ts';
import type { HttpTransport, SlackSettings } from './read-slack-settings.ts';
import { SlackStartError } from './start-errors.ts';
import { ourActions } from './tap-to-message.ts';

export interface SlackHost {
  /** Stops taking deliveries; those already kept stay kept. Resolves when the connection is closed. */
  stop(): Promise<void>;
  healthy(): boolean;
  /** Where HTTP deliveries are taken; undefined in Socket Mode. */
  readonly port: number | undefined;
  readonly identity: Identity;
}

export interface SlackStart {
  readonly settings: SlackSettings;
  readonly inbox: Inbox;
  readonly threads: KnownThreads;
  readonly log: Log;
  readonly now: () => number;
}

/** Throws SlackStartError, whose message is for the operator. */
export const startSlack = async (start: SlackStart): Promise<SlackHost> => {
  const { settings, log } = start;
  const identity = await checkBotToken(slackClient(settings, log));
  const { transport } = settings;
  return transport.mode === 'socket' ? startSocket(start, identity, transport.appToken) : startHttp(start, identity, transport);
};

const startSocket = async (start: SlackStart, identity: Identity, appToken: string): Promise<SlackHost> => {
  const receiver = new SocketModeReceiver({
    appToken,
    logger: slackLogger(start.log),
    autoReconnectEnabled: false,
    installerOptions: { clientOptions: clientOptions(start.settings, start.log) },
  });
  await prepareApp(start, identity, receiver);
  const socket = await holdSocket(receiver.client, start.log).catch((error: unknown) => {
    throw startErrorFrom(error, 'app-token-refused');
  });
  return { stop: socket.close, healthy: socket.connected, port: undefined, identity };
};

const startHttp = async (start: SlackStart, identity: Identity, transport: HttpTransport): Promise<SlackHost> => {
  let listening = false;
  const receiver = new HTTPReceiver({
    signingSecret: transport.signingSecret,
    logger: slackLogger(start.log),
    customRoutes: [
      {
        path: '/health',
        method: 'GET',
        handler: (_request, response) => {
          response.writeHead(listening ? 200 : 503, { 'content-type': 'text/plain' }).end(listening ? 'well' : 'stopping');
        },
      },
    ],
  });
  await prepareApp(start, identity, receiver);
  const server = await receiver.start(transport.port).catch((error: unknown) => {
    throw errorName(error) === 'EADDRINUSE' ? new SlackStartError('port-in-use') : error;
  });
  listening = true;
  const address = server.address();
  return {
    stop: () => {
      listening = false;
      return closeServer(receiver, server);
    },
    healthy: () => listening,
    port: typeof address === 'object' ? address?.port : undefined,
    identity,
  };
};

/** A slow caller does not hold up the stop for longer than Slack waits for an answer. */
const closeServer = async (receiver: HTTPReceiver, server: Server): Promise<void> => {
  const hurry = setTimeout(() => server.closeAllConnections(), 3_000);
  await receiver.stop();
  clearTimeout(hurry);
};

const prepareApp = async (start: SlackStart, { team, bot, botUser }: Identity, receiver: Receiver): Promise<void> => {
  const { settings, log, inbox, threads, now } = start;
  const app = new App({
    receiver,
    authorize: async () => ({ botToken: settings.botToken, botId: bot, botUserId: botUser, teamId: team }),
    clientOptions: clientOptions(settings, log),
    logger: slackLogger(log),
    convoStore: false,
    deferInitialization: true,
  });
  await app.init();
  app.error(async (error) =>
    log.error({ from: 'slack', error: errorName(error.original ?? error) }, 'A Slack delivery could not be handled.'),
  );
  app.action(ourActions, async ({ ack }) => ack());
  receiver.init(keepingFirst(app, { inbox, threads, us: { team, botUser }, now }));
};
