// The workspaces this host serves: one, by the operator's token, or each that installed the app itself. Everything asked of Slack goes through its own.

import type { InstallationStore, webApi } from '@slack/bolt';
import { checkBotToken, type Identity } from './check-tokens.ts';
import { slackClient } from './clients.ts';
import type { Log } from './logger.ts';
import type { SlackSettings } from './read-slack-settings.ts';
import { type IsMember, studioMembers } from './studio-member.ts';

export interface Workspace {
  readonly us: Identity;
  readonly botToken: string;
  readonly client: webApi.WebClient;
  readonly isMember: IsMember;
}

export interface Workspaces {
  /** undefined: not one of ours, or no longer. Rejects when Slack had to be asked and could not be. */
  of(team: string): Promise<Workspace | undefined>;
  /** The app was removed there, or its token taken back. */
  removed(team: string): void;
  /** All that are served now. Rejects with SlackStartError when Slack refuses the operator's token. */
  teams(): Promise<readonly string[]>;
  /** Present where workspaces install the app themselves: Bolt stores them here. */
  readonly forBolt?: InstallationStore;
}

export interface WorkspaceParts {
  readonly settings: SlackSettings;
  readonly log: Log;
  readonly now: () => number;
}

export const workspaceOf = ({ settings, log, now }: WorkspaceParts, us: Identity, botToken: string): Workspace => {
  const client = slackClient(settings, log, botToken);
  return { us, botToken, client, isMember: studioMembers(client, us.team, log, now) };
};

/** The one the operator's token belongs to; Slack is asked once which that is. */
export const oneWorkspace = (parts: WorkspaceParts): Workspaces => {
  const { settings, log } = parts;
  let known: Promise<Workspace> | undefined;
  const identify = (): Promise<Workspace> => {
    known ??= checkBotToken(slackClient(settings, log)).then((us) => workspaceOf(parts, us, settings.botToken));
    known.catch(() => {
      known = undefined; // ask again next time
    });
    return known;
  };
  return {
    teams: async () => [(await identify()).us.team],
    of: async (team) => {
      const one = await identify();
      return one.us.team === team ? one : undefined;
    },
    removed: (team) =>
      log.error(
        { from: 'slack', team },
        'The app was removed from the workspace, or its token taken back. Nothing can be posted until it is installed again.',
      ),
  };
};
