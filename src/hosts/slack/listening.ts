// What every listener of the Slack host works with, in the workspace a delivery came from.

import type { App } from '@slack/bolt';
import type { ChannelSharing } from './channel-sharing.ts';
import { teamOf } from './delivery.ts';
import type { KnownThreads } from './delivery-to-message.ts';
import type { Desk } from './desk.ts';
import type { Inbox } from './keep-deliveries.ts';
import type { Log } from './logger.ts';
import type { Workspace, Workspaces } from './workspaces.ts';

export interface Host {
  readonly app: App;
  readonly workspaces: Workspaces;
  readonly sharing: ChannelSharing;
  readonly inbox: Inbox;
  readonly threads: KnownThreads;
  readonly desk: Desk;
  readonly log: Log;
  readonly now: () => number;
}

/** The host, in one workspace. */
export interface Listening extends Host, Workspace {}

/** undefined for a delivery from a workspace that is not ours. */
export const listeningIn = async (host: Host, body: object): Promise<Listening | undefined> => {
  const team = teamOf(body);
  const here = team === undefined ? undefined : await host.workspaces.of(team);
  return here && { ...host, ...here };
};

/** The few sentences this host says by itself, all for one person's eyes. */
export const hostSays = {
  tooSlow: 'That took too long for Slack. Tap it once more.',
  membersOnly: 'Only members of the studio can change this.',
  failed: 'Something went wrong here, and it has been noted. Try once more in a minute.',
  notInChannel: 'I am not in that channel yet. Invite me with /invite @Benchbell, then try again.',
  threadOpened: 'It has its own thread in this channel now.',
} as const;
