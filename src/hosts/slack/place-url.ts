// Slack's own address of a thread or a message: docs.slack.dev/reference/methods/chat.getPermalink shows its form.

import type { Place } from '../../reply/reply.ts';

/** `teamUrl`: the workspace's address, as auth.test tells it. */
export const placeUrl = ({ channel, thread, message }: Place, teamUrl: string): string => {
  const ts = message ?? thread;
  const url = new URL(`archives/${encodeURIComponent(channel)}/p${ts.replace('.', '')}`, teamUrl);
  if (message !== undefined && message !== thread) {
    url.searchParams.set('thread_ts', thread);
    url.searchParams.set('cid', channel);
  }
  return url.href;
};
