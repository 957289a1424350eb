// The app is removed from a workspace, or its token taken back. Slack sends both without asking who we are.

import type { App } from '@slack/bolt';
import { teamOf } from './delivery.ts';
import type { Workspaces } from './workspaces.ts';

export const listenRemovals = (app: App, workspaces: Workspaces): void => {
  const removed = (body: object): void => {
    const team = teamOf(body);
    if (team !== undefined) workspaces.removed(team);
  };
  app.event('app_uninstalled', async ({ body }) => removed(body));
  app.event('tokens_revoked', async ({ body, event }) => {
    if ((event.tokens.bot?.length ?? 0) > 0) removed(body);
  });
};
