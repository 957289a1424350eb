// "Read as an event" on somebody's message: the message as if we had been mentioned in it.

import { z } from 'zod';
import type { IncomingMessage } from '../../assistant/ports.ts';
import { millisecondsOf, type WhoWeAre } from './delivery-to-message.ts';
import { plainWords } from './plain-words.ts';

export const readAsEvent = 'read_as_event';

const shortcut = z.object({
  type: z.literal('message_action'),
  callback_id: z.literal(readAsEvent),
  team: z.object({ id: z.string() }),
  user: z.object({ id: z.string(), team_id: z.string().optional() }),
  channel: z.object({ id: z.string() }),
  message: z.object({
    ts: z.string(),
    thread_ts: z.string().optional(),
    user: z.string().optional(),
    text: z.string().optional(),
    edited: z.object({ ts: z.string() }).optional(),
  }),
});

/** undefined for any other delivery, and for people of other organisations. Whose words they are does not matter: whoever asks has read them. */
export const shortcutToMessage = (body: unknown, us: WhoWeAre): IncomingMessage | undefined => {
  const asked = shortcut.safeParse(body).data;
  if (!asked || (asked.user.team_id !== undefined && asked.user.team_id !== us.team)) return undefined;
  const { message } = asked;
  if (message.user === us.botUser) return undefined;
  return {
    workspace: asked.team.id,
    channel: asked.channel.id,
    thread: message.thread_ts ?? message.ts,
    id: message.ts,
    revision: message.edited?.ts ?? message.ts,
    author: message.user ?? asked.user.id,
    kind: 'new',
    text: plainWords(message.text ?? ''),
    addressed: true,
    shared: false,
    sentAt: millisecondsOf(message.ts),
  };
};
