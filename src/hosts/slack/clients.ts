// The Web API clients, each with options of its own: the SDK changes the options it is given, and a shared object once carried one client's retries to another.
// No extra headers are ever set on them, for the same reason.

import { webApi } from '@slack/bolt';
import type { Log } from './logger.ts';
import { slackLogger } from './logger.ts';
import type { SlackSettings } from './read-slack-settings.ts';

/** Fresh options for one client. Nothing is retried inside the SDK: the queue of replies and the socket's loop try again themselves. */
export const clientOptions = (settings: SlackSettings, log: Log): webApi.WebClientOptions => ({
  ...(settings.apiUrl === undefined ? {} : { slackApiUrl: settings.apiUrl }),
  logger: slackLogger(log),
  timeout: 15_000,
  rejectRateLimitedCalls: true,
  retryConfig: { retries: 0 },
});

export const slackClient = (settings: SlackSettings, log: Log, botToken = settings.botToken): webApi.WebClient =>
  new webApi.WebClient(botToken, clientOptions(settings, log));
