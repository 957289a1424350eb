// Starts the Slack host: checks the tokens, then listens by Socket Mode or HTTP. Either way a message is kept by the inbox before Slack is told.

import type { Server } from 'node:http';
import { App, HTTPReceiver, type Receiver, SocketModeReceiver } from '@slack/bolt';
import { checkBotToken, type Identity, startErrorFrom } from './check-tokens.ts';
import { clientOptions, slackClient } from './clients.ts';
import type { KnownThreads } from './delivery-to-message.ts';
import type { Desk } from './desk.ts';
import { holdSocket } from './hold-socket.ts';
import { type Inbox, keepingFirst } from './keep-deliveries.ts';
import { listenCommand } from './listen-command.ts';
import { listenFiles } from './listen-files.ts';
import { listenForms } from './listen-forms.ts';
import { listenHome } from './listen-home.ts';
import { errorName, type Log, slackLogger } from './logger.ts';
import type { HttpTransport, SlackSettings } from './read-slack-settings.ts';
import { readAsEvent } from './shortcut-to-message.ts';
import { SlackStartError } from './start-errors.ts';
import { studioMembers } from './studio-member.ts';
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
  /** Without it there are messages and buttons, but no Home, forms, command or dropped files. */
  readonly desk?: Desk;
  readonly log: Log;
  readonly now: () => number;
}

/** Throws SlackStartError, whose message is for the operator. */
export const startSlack = async (start: SlackStart): Promise<SlackHost> => {
  const { settings, log } = start;
  const identity = await checkBotToken(slackClient(settings, log));
  const { transport } = settings;
  const host = await (transport.mode === 'socket'
    ? startSocket(start, identity, transport.appToken)
    : startHttp(start, identity, transport));
  let stopped: Promise<void> | undefined;
  return {
    ...host,
    stop: () => {
      stopped ??= host.stop();
      return stopped;
    },
  };
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

/** A slow caller does not hold up the stop. */
const closeServer = async (receiver: HTTPReceiver, server: Server): Promise<void> => {
  const hurry = setTimeout(() => server.closeAllConnections(), 2_000);
  await receiver.stop();
  clearTimeout(hurry);
};

const prepareApp = async (start: SlackStart, us: Identity, receiver: Receiver): Promise<void> => {
  const { settings, log, inbox, threads, now, desk } = start;
  const app = new App({
    receiver,
    authorize: async () => ({ botToken: settings.botToken, botId: us.bot, botUserId: us.botUser, teamId: us.team }),
    clientOptions: clientOptions(settings, log),
    logger: slackLogger(log),
    convoStore: false,
    deferInitialization: true,
  });
  await app.init();
  app.error(async (error) =>
    log.error({ from: 'slack', error: errorName(error.original ?? error) }, 'A Slack delivery could not be handled.'),
  );
  const client = slackClient(settings, log);
  if (desk) {
    const listening = { app, client, settings, us, inbox, threads, desk, log, now, isMember: studioMembers(client, us.team, log, now) };
    for (const listen of [listenHome, listenForms, listenCommand, listenFiles]) listen(listening);
  } else {
    app.action(ourActions, async ({ ack }) => ack());
  }
  app.shortcut(readAsEvent, async ({ ack }) => ack()); // kept by now
  receiver.init(keepingFirst(app, { inbox, threads, us, now }));
};
