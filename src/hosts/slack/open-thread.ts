// Opens an event's thread for somebody who has no message of their own in the channel: we post their words, and hear them there.

import type { types } from '@slack/bolt';
import { webApi } from '@slack/bolt';
import { millisecondsOf } from './delivery-to-message.ts';
import { escaped, withoutControls } from './inert.ts';
import { hostSays, type Listening } from './listening.ts';

const closedToUs = new Set(['not_in_channel', 'channel_not_found', 'is_archived', 'restricted_action']);

/** 'opened', or the sentence for the person. */
export const openThread = async (listening: Listening, channel: string, person: string, words: string): Promise<'opened' | string> => {
  const { client, inbox, us, sharing, isMember } = listening;
  const shown = withoutControls(words);
  const root: types.RichTextBlock = {
    type: 'rich_text',
    elements: [
      {
        type: 'rich_text_section',
        elements: [
          { type: 'text', text: 'New event, from ' },
          { type: 'user', user_id: person },
          { type: 'text', text: `:\n${shown}` },
        ],
      },
    ],
  };
  try {
    const [shared, member] = await Promise.all([sharing.isShared(listening, channel), isMember(person)]);
    const text = escaped(`New event: ${shown}`);
    const posted = await client.chat.postMessage({
      channel,
      text,
      blocks: [root],
      unfurl_links: false,
      unfurl_media: false,
      mrkdwn: false,
      parse: 'none',
    });
    const { ts } = posted;
    if (ts === undefined) return hostSays.failed;
    const said = { id: ts, revision: ts, author: person, kind: 'new', text: words, addressed: true, shared } as const;
    const from = { ...said, ...(member ? {} : { guest: true as const }) };
    inbox.receive({ workspace: us.team, channel, thread: ts, ...from, sentAt: millisecondsOf(ts) }, `opened ${channel} ${ts}`);
    inbox.work();
    return 'opened';
  } catch (error) {
    if (error instanceof webApi.WebAPIPlatformError && closedToUs.has(error.data.error)) return hostSays.notInChannel;
    throw error;
  }
};
