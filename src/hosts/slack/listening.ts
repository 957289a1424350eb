// What every listener of the Slack host works with.

import type { App, webApi } from '@slack/bolt';
import type { Identity } from './check-tokens.ts';
import type { KnownThreads } from './delivery-to-message.ts';
import type { Desk } from './desk.ts';
import type { Inbox } from './keep-deliveries.ts';
import type { Log } from './logger.ts';
import type { SlackSettings } from './read-slack-settings.ts';
import type { IsMember } from './studio-member.ts';

export interface Listening {
  readonly app: App;
  readonly client: webApi.WebClient;
  readonly settings: SlackSettings;
  readonly us: Identity;
  readonly inbox: Inbox;
  readonly threads: KnownThreads;
  readonly desk: Desk;
  readonly isMember: IsMember;
  readonly log: Log;
  readonly now: () => number;
}

/** The few sentences this host says by itself, all for one person's eyes. */
export const hostSays = {
  tooSlow: 'That took too long for Slack. Tap it once more.',
  membersOnly: 'Only members of the studio can change this.',
  failed: 'Something went wrong here, and it has been noted. Try once more in a minute.',
  notInChannel: 'I am not in that channel yet. Invite me with /invite @Benchbell, then try again.',
  threadOpened: 'It has its own thread in this channel now.',
} as const;
