// The workspaces that installed the app themselves: Bolt stores each here, its token sealed, and everything that posts or listens asks here for it.

import type { Installation } from '@slack/bolt';
import { z } from 'zod';
import { checkBotToken } from './check-tokens.ts';
import { slackClient } from './clients.ts';
import { parsedJson } from './parsed-json.ts';
import type { InstallSettings } from './read-slack-settings.ts';
import { seal, unseal } from './seal.ts';
import { type Workspace, type WorkspaceParts, type Workspaces, workspaceOf } from './workspaces.ts';

/** Where the sealed rows are kept. */
export interface SealedRows {
  put(workspace: string, sealed: string, now: number): void;
  find(workspace: string): string | undefined;
  remove(workspace: string): void;
  all(): readonly string[];
}

const kept = z.object({
  us: z.object({ team: z.string(), botUser: z.string(), bot: z.string(), teamUrl: z.string() }),
  botToken: z.string(),
  installation: z.unknown(),
});

export const installedWorkspaces = (parts: WorkspaceParts, { key }: InstallSettings, rows: SealedRows): Workspaces => {
  const { settings, log, now } = parts;
  const ready = new Map<string, Workspace>();

  const found = (team: string): z.infer<typeof kept> | undefined => {
    const sealed = rows.find(team);
    if (sealed === undefined) return undefined;
    const opened = unseal(key, sealed, team);
    if (opened === undefined)
      log.error({ from: 'slack', team }, 'An installation cannot be opened: BENCHBELL_TOKEN_KEY is not the key it was sealed with.');
    return kept.safeParse(parsedJson(opened ?? '')).data;
  };

  const remove = (team: string): void => {
    ready.delete(team);
    rows.remove(team);
  };

  return {
    teams: async () => rows.all(),
    of: async (team) => {
      const known = ready.get(team) ?? opened(parts, found(team));
      if (known) ready.set(team, known);
      return known;
    },
    removed: (team) => {
      remove(team);
      log.warn(
        { from: 'slack', team },
        'The app was removed from a workspace. What waits to be posted there waits a day for a new installation, then is given up.',
      );
    },
    forBolt: {
      storeInstallation: async (installation) => {
        const { team, bot } = installation;
        if (team === undefined || bot === undefined) throw new Error('only a workspace can install this app');
        // Asked with the new token: whose it is, and where the workspace's pages are.
        const us = await checkBotToken(slackClient(settings, log, bot.token));
        if (us.team !== team.id) throw new Error('the token is of another workspace');
        const { token: botToken } = bot;
        rows.put(team.id, seal(key, JSON.stringify({ us, botToken, installation }), team.id), now());
        ready.delete(team.id);
        log.info({ from: 'slack', team: team.id }, 'A workspace installed the app.');
      },
      fetchInstallation: async ({ teamId = '' }) => {
        const one = found(teamId);
        if (!one) throw new Error('this workspace has not installed the app');
        return one.installation as Installation<'v2', false>;
      },
      deleteInstallation: async ({ teamId = '' }) => remove(teamId),
    },
  };
};

const opened = (parts: WorkspaceParts, one: z.infer<typeof kept> | undefined): Workspace | undefined =>
  one && workspaceOf(parts, one.us, one.botToken);
