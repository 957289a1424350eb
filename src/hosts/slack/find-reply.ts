// Looks for a reply that may have been posted after all, by the id it carries as metadata.

import { webApi } from '@slack/bolt';
import type { QueuedReply } from '../../assistant/ports.ts';

const eventType = 'benchbell_reply';
const pages = 10;

/** The metadata that marks a reply as this one. */
export const replyMark = (id: string) => ({ event_type: eventType, event_payload: { reply: id } });

/** Then it cannot be there either. */
const nowhere = new Set(['thread_not_found', 'channel_not_found', 'message_not_found']);

/** The ts of the reply; undefined when it is not there. Rejects when it could not look. */
export const findReply = async (client: webApi.WebClient, reply: QueuedReply): Promise<string | undefined> => {
  const { channel, thread } = reply.to;
  const page = async (cursor: string | undefined) => {
    const common = { channel, include_all_metadata: true, limit: 200, ...(cursor === undefined ? {} : { cursor }) };
    return thread === '' ? client.conversations.history(common) : client.conversations.replies({ ...common, ts: thread });
  };
  try {
    let cursor: string | undefined;
    // A channel's history is newest first and unbounded; a thread's is what we want all of.
    for (let read = 0; read < (thread === '' ? 1 : pages); read += 1) {
      const answer = await page(cursor);
      const found = answer.messages?.find((message) => isMarked(message, reply.id));
      if (found) return found.ts;
      cursor = answer.response_metadata?.next_cursor || undefined;
      if (cursor === undefined) return undefined;
    }
    return undefined;
  } catch (error) {
    if (error instanceof webApi.WebAPIPlatformError && nowhere.has(error.data.error)) return undefined;
    throw error;
  }
};

const isMarked = (message: object, id: string): boolean => {
  const { metadata } = message as { metadata?: { event_type?: string; event_payload?: { reply?: unknown } } };
  return metadata?.event_type === eventType && metadata.event_payload?.reply === id;
};
