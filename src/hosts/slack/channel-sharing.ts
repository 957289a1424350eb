// Whether a channel is shared with another organisation, so that a studio's own figures never show there. Messages tell; buttons, forms and menus
// do not, so what was last heard is remembered, then looked up in the store, and only then asked of Slack. In doubt it is taken for shared.

import type { KnownThreads } from './delivery-to-message.ts';
import { errorName, type Log } from './logger.ts';
import type { Workspace } from './workspaces.ts';

export interface ChannelSharing {
  heard(workspace: string, channel: string, shared: boolean): void;
  isShared(here: Workspace, channel: string): Promise<boolean>;
}

export const channelSharing = (threads: KnownThreads, log: Log): ChannelSharing => {
  const known = new Map<string, boolean>();
  const nameOf = (workspace: string, channel: string): string => `${workspace}/${channel}`;
  return {
    heard: (workspace, channel, shared) => void known.set(nameOf(workspace, channel), shared),
    isShared: async ({ us, client }, channel) => {
      const name = nameOf(us.team, channel);
      const before = known.get(name) ?? threads.isShared?.(us.team, channel);
      if (before !== undefined) return before;
      if (channel.startsWith('D')) return false; // people of other organisations are not answered in direct messages
      try {
        const { channel: info } = await client.conversations.info({ channel });
        const shared = info === undefined || info.is_ext_shared === true || info.is_pending_ext_shared === true;
        known.set(name, shared);
        return shared;
      } catch (error) {
        log.warn(
          { from: 'slack', error: errorName(error) },
          'It could not be asked whether a channel is shared, so it is taken for shared.',
        );
        return true;
      }
    },
  };
};
