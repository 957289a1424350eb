// Who may see Home and change settings: full members of the studio's own workspace. Guests, bots, strangers and people who have left may not.

import type { webApi } from '@slack/bolt';
import { errorName, type Log } from './logger.ts';

export type IsMember = (person: string) => Promise<boolean>;

const remembered = 5 * 60_000; // milliseconds

/** Asks Slack, and remembers the answer for five minutes. Where Slack cannot be asked the answer is no. */
export const studioMembers = (client: webApi.WebClient, team: string, log: Log, now: () => number): IsMember => {
  const known = new Map<string, { readonly member: boolean; readonly until: number }>();
  return async (person) => {
    const before = known.get(person);
    if (before && before.until > now()) return before.member;
    try {
      const { user } = await client.users.info({ user: person });
      const outside = !user || user.deleted || user.is_bot || user.is_restricted || user.is_ultra_restricted || user.is_stranger;
      const member = !outside && (user.team_id === team || user.enterprise_user?.teams?.includes(team) === true);
      known.set(person, { member, until: now() + remembered });
      return member;
    } catch (error) {
      log.warn({ from: 'slack', error: errorName(error) }, 'It could not be asked who somebody is.');
      return false;
    }
  };
};
