// Starts the Slack host: checks the tokens, then listens by Socket Mode or HTTP. Either way a message is kept by the inbox before Slack is told.

import type { Server } from 'node:http';
import { App, type Authorize, HTTPReceiver, type Receiver, SocketModeReceiver } from '@slack/bolt';
import { botScopes } from './bot-scopes.ts';
import { channelSharing } from './channel-sharing.ts';
import { startErrorFrom } from './check-tokens.ts';
import { clientOptions } from './clients.ts';
import type { KnownThreads } from './delivery-to-message.ts';
import type { Desk } from './desk.ts';
import { fetchFiles } from './fetch-files.ts';
import { holdSocket } from './hold-socket.ts';
import { type Inbox, keepingFirst } from './keep-deliveries.ts';
import { listenCommand } from './listen-command.ts';
import { listenForms } from './listen-forms.ts';
import { listenHome } from './listen-home.ts';
import { errorName, type Log, slackLogger } from './logger.ts';
import type { HttpTransport, SlackSettings } from './read-slack-settings.ts';
import { refuseFuture } from './refuse-future.ts';
import { listenRemovals } from './removals.ts';
import { readAsEvent } from './shortcut-to-message.ts';
import { SlackStartError } from './start-errors.ts';
import { ourActions } from './tap-to-message.ts';
import type { Workspaces } from './workspaces.ts';

export interface SlackHost {
  /** Stops taking deliveries; those already kept stay kept. Resolves when the connection is closed. */
  stop(): Promise<void>;
  healthy(): boolean;
  /** Where HTTP deliveries are taken; undefined in Socket Mode. */
  readonly port: number | undefined;
}

export interface SlackStart {
  readonly settings: SlackSettings;
  readonly workspaces: Workspaces;
  readonly inbox: Inbox;
  readonly threads: KnownThreads;
  /** Without it there are messages and buttons, but no Home, forms or command. */
  readonly desk?: Desk;
  readonly log: Log;
  readonly now: () => number;
}

/** Throws SlackStartError, whose message is for the operator. */
export const startSlack = async (start: SlackStart): Promise<SlackHost> => {
  const { transport } = start.settings;
  await start.workspaces.teams(); // a token that is no good is found before anything listens
  const host = await (transport.mode === 'socket' ? startSocket(start, transport.appToken) : startHttp(start, transport));
  let stopped: Promise<void> | undefined;
  return {
    ...host,
    stop: () => {
      stopped ??= host.stop();
      return stopped;
    },
  };
};

const startSocket = async (start: SlackStart, appToken: string): Promise<SlackHost> => {
  const receiver = new SocketModeReceiver({
    appToken,
    logger: slackLogger(start.log),
    autoReconnectEnabled: false,
    installerOptions: { clientOptions: clientOptions(start.settings, start.log) },
  });
  const stopFetching = await prepareApp(start, receiver);
  const socket = await holdSocket(receiver.client, start.log).catch(async (error: unknown) => {
    await stopFetching();
    throw startErrorFrom(error, 'app-token-refused');
  });
  const stop = async (): Promise<void> => {
    await Promise.all([socket.close(), stopFetching()]);
  };
  return { stop, healthy: socket.connected, port: undefined };
};

const startHttp = async (start: SlackStart, transport: HttpTransport): Promise<SlackHost> => {
  let listening = false;
  const receiver = new HTTPReceiver({
    signingSecret: transport.signingSecret,
    logger: slackLogger(start.log),
    ...installing(start),
    customRoutes: [
      {
        path: '/healthz',
        method: 'GET',
        handler: (_request, response) => {
          response.writeHead(listening ? 200 : 503, { 'content-type': 'text/plain' }).end(listening ? 'well' : 'stopping');
        },
      },
    ],
  });
  refuseFuture(receiver, start.now);
  const stopFetching = await prepareApp(start, receiver);
  const server = await receiver.start(transport.port).catch(async (error: unknown) => {
    await stopFetching();
    throw errorName(error) === 'EADDRINUSE' ? new SlackStartError('port-in-use') : error;
  });
  listening = true;
  const address = server.address();
  return {
    stop: async () => {
      listening = false;
      await Promise.all([closeServer(receiver, server), stopFetching()]);
    },
    healthy: () => listening,
    port: typeof address === 'object' ? address?.port : undefined,
  };
};

/** A slow caller does not hold up the stop. */
const closeServer = async (receiver: HTTPReceiver, server: Server): Promise<void> => {
  const hurry = setTimeout(() => server.closeAllConnections(), 2_000);
  await receiver.stop();
  clearTimeout(hurry);
};

const authorizeIn =
  (workspaces: Workspaces): Authorize<boolean> =>
  async ({ teamId }) => {
    const here = teamId === undefined ? undefined : await workspaces.of(teamId);
    if (!here) throw new Error('not a workspace of ours');
    return { botToken: here.botToken, botId: here.us.bot, botUserId: here.us.botUser, teamId: here.us.team };
  };

/** Where workspaces install the app themselves: the pages /slack/install and /slack/oauth_redirect. */
const installing = ({ settings, log, workspaces }: SlackStart) =>
  settings.installs === undefined || workspaces.forBolt === undefined
    ? {}
    : {
        clientId: settings.installs.clientId,
        clientSecret: settings.installs.clientSecret,
        stateSecret: settings.installs.stateSecret,
        scopes: [...botScopes],
        installationStore: workspaces.forBolt,
        installerOptions: { directInstall: true, clientOptions: clientOptions(settings, log) },
      };

const prepareApp = async (start: SlackStart, receiver: Receiver): Promise<() => Promise<void>> => {
  const { settings, log, inbox, threads, now, desk, workspaces } = start;
  const app = new App({
    receiver,
    // Where workspaces install the app, Bolt finds their tokens in the store it was given.
    ...(workspaces.forBolt ? {} : { authorize: authorizeIn(workspaces) }),
    clientOptions: clientOptions(settings, log),
    logger: slackLogger(log),
    convoStore: false,
    deferInitialization: true,
  });
  await app.init();
  app.error(async (error) =>
    log.error({ from: 'slack', error: errorName(error.original ?? error) }, 'A Slack delivery could not be handled.'),
  );
  const sharing = channelSharing(threads, log);
  if (desk) {
    for (const listen of [listenHome, listenForms, listenCommand]) listen({ app, workspaces, sharing, inbox, threads, desk, log, now });
  } else {
    app.action(ourActions, async ({ ack }) => ack());
  }
  listenRemovals(app, workspaces);
  app.shortcut(readAsEvent, async ({ ack }) => ack()); // kept by now
  const fetcher = fetchFiles({ inbox, workspaces, apiUrl: settings.apiUrl, log });
  receiver.init(keepingFirst(app, { inbox, threads, workspaces, sharing, onFiles: fetcher.wake, now }));
  fetcher.wake(); // what was dropped before a crash
  return fetcher.stop;
};
