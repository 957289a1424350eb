// Asks Slack once, before anything is started, whether the tokens are the right ones, and who we are.

import { webApi } from '@slack/bolt';
import type { WhoWeAre } from './delivery-to-message.ts';
import { SlackStartError } from './start-errors.ts';

export interface Identity extends WhoWeAre {
  readonly bot: string; // the bot's own id, not its user's
  readonly teamUrl: string; // the workspace's address, for links to threads
}

/** Who the bot token belongs to. Throws SlackStartError when Slack refuses it or cannot be reached. */
export const checkBotToken = async (client: webApi.WebClient): Promise<Identity> => {
  const answer = await client.auth.test().catch((error: unknown) => {
    throw startErrorFrom(error, 'bot-token-refused');
  });
  const { team_id: team, user_id: botUser, bot_id: bot, url } = answer;
  if (team === undefined || botUser === undefined || bot === undefined) throw new SlackStartError('bot-token-not-a-bot');
  return { team, botUser, bot, teamUrl: url ?? 'https://slack.com/' };
};

/** What the operator should read for an error of Slack's at the start. */
export const startErrorFrom = (error: unknown, refused: 'bot-token-refused' | 'app-token-refused'): SlackStartError => {
  if (!(error instanceof webApi.WebAPIPlatformError)) return new SlackStartError('slack-unreachable');
  switch (error.data.error) {
    case 'missing_scope':
    case 'no_permission':
      return new SlackStartError(refused === 'app-token-refused' ? 'app-token-lacks-scope' : refused);
    case 'socket_mode_not_enabled':
    case 'forbidden_team':
      return new SlackStartError('socket-mode-off');
    case 'internal_error':
    case 'fatal_error':
    case 'service_unavailable':
    case 'ratelimited':
      return new SlackStartError('slack-unreachable');
    default:
      return new SlackStartError(refused);
  }
};
