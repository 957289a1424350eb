// The least a Slack bot can be, for comparison: Bolt's own receiver, and each message posted back as it came.

import { App, HTTPReceiver, LogLevel } from '@slack/bolt';
import { signingSecret } from '../support/slack-deliveries.ts';

const receiver = new HTTPReceiver({ signingSecret, logLevel: LogLevel.ERROR });
const app = new App({
  receiver,
  authorize: async () => ({ botToken: 'xoxb-test-bot', botId: 'BBOT', botUserId: 'UBOT' }),
  clientOptions: { slackApiUrl: process.env['BENCHBELL_SLACK_API'] ?? '' },
  logLevel: LogLevel.ERROR,
});
app.event('app_mention', async ({ event, client }) => {
  await client.chat.postMessage({ channel: event.channel, thread_ts: event.ts, text: event.text });
});
const server = await receiver.start(0);
const address = server.address();
process.stderr.write(`{"outcome":"listening","port":${typeof address === 'object' ? address?.port : 0}}\n`);
