// What we read of a Slack delivery, checked at the door. Everything else in it is ignored, so new fields of Slack's cannot break us.

import { z } from 'zod';

const text = z.string().optional();

const messageBody = {
  ts: z.string(),
  user: text,
  text,
  subtype: text,
  thread_ts: text,
  bot_id: text,
  bot_profile: z.unknown().optional(),
  team: text,
  user_team: text,
  source_team: text,
  edited: z.object({ ts: z.string() }).optional(),
  files: z.array(z.unknown()).optional(),
};
const innerMessage = z.object(messageBody);
export type SlackMessage = z.infer<typeof innerMessage>;

const messageEvent = z.object({
  ...messageBody,
  type: z.enum(['message', 'app_mention']),
  channel: z.string(),
  channel_type: text,
  message: innerMessage.optional(),
  previous_message: innerMessage.optional(),
  deleted_ts: text,
});
export type MessageEvent = z.infer<typeof messageEvent>;

const messageDelivery = z.object({
  type: z.literal('event_callback'),
  team_id: z.string(),
  enterprise_id: z.string().nullish(),
  event_id: z.string(),
  is_ext_shared_channel: z.boolean().optional(),
  authorizations: z.array(z.object({ team_id: z.string().nullish() })).optional(),
  event: messageEvent,
});
export type MessageDelivery = z.infer<typeof messageDelivery>;

/** The delivery of a message or a mention, or undefined when it is something else. */
export const asMessageDelivery = (body: unknown): MessageDelivery | undefined => messageDelivery.safeParse(body).data;

const sender = z.object({
  authorizations: z.array(z.object({ team_id: z.string().nullish() })).optional(),
  team_id: text,
  team: z.object({ id: z.string() }).nullish(),
});

/** The workspace whose installation of the app a delivery of any kind is meant for. */
export const teamOf = (body: unknown): string | undefined => {
  const from = sender.safeParse(body).data;
  return from?.authorizations?.[0]?.team_id ?? from?.team_id ?? from?.team?.id;
};

const asker = z.object({ user: z.object({ id: z.string() }) });

/** Who tapped, entered or chose; undefined for a message. */
export const askerOf = (body: unknown): string | undefined => asker.safeParse(body).data?.user.id;

const tapped = z.object({
  action_id: z.string(),
  action_ts: z.string(),
  value: text,
  text: z.object({ text: z.string() }).optional(), // the button's own words
  selected_date: z.string().nullish(),
});

const tapDelivery = z.object({
  type: z.literal('block_actions'),
  team: z.object({ id: z.string() }),
  user: z.object({ id: z.string(), team_id: text }),
  channel: z.object({ id: z.string() }),
  container: z.object({ message_ts: z.string(), thread_ts: text }),
  message: z.object({ edited: z.object({ ts: z.string() }).optional(), thread_ts: text }).optional(),
  actions: z.array(tapped).min(1),
});
export type TapDelivery = z.infer<typeof tapDelivery>;

/** The delivery of a tapped button on a message, or undefined when it is something else (a tap in Home or a form among them). */
export const asTapDelivery = (body: unknown): TapDelivery | undefined => tapDelivery.safeParse(body).data;
