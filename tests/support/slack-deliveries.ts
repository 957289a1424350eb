// Slack's deliveries as its documentation shows them, for a workspace T1 with our bot UBOT, and the signature HTTP deliveries carry.

import { createHmac } from 'node:crypto';

let events = 0;
const nextEvent = (): string => {
  events += 1;
  return `Ev${events}`;
};

/** The envelope around an event. `event_id` repeats on a retry. */
export const eventCallback = (event: object, more: object = {}) => ({
  type: 'event_callback',
  team_id: 'T1',
  api_app_id: 'A1',
  event_id: nextEvent(),
  event_time: 1800000000,
  authorizations: [{ enterprise_id: null, team_id: 'T1', user_id: 'UBOT', is_bot: true }],
  is_ext_shared_channel: false,
  event,
  ...more,
});

/** A message by Ailsa in the channel C1. */
export const message = (text: string, more: object = {}) =>
  eventCallback({
    type: 'message',
    channel: 'C1',
    channel_type: 'channel',
    user: 'UAILSA',
    team: 'T1',
    text,
    ts: '1800000000.000100',
    ...more,
  });

export const mention = (text: string, more: object = {}) =>
  eventCallback({ type: 'app_mention', channel: 'C1', user: 'UAILSA', team: 'T1', text, ts: '1800000000.000100', ...more });

const edited = { user: 'UAILSA', ts: '1800000060.000000' };

export const changed = (before: string, after: string, more: object = {}, inner: object = {}) => {
  const same = { type: 'message', user: 'UAILSA', team: 'T1', ts: '1800000000.000100', ...inner };
  return eventCallback({
    type: 'message',
    subtype: 'message_changed',
    hidden: true,
    channel: 'C1',
    channel_type: 'channel',
    ts: '1800000060.000200',
    message: { ...same, text: after, edited },
    previous_message: { ...same, text: before },
    ...more,
  });
};

export const deleted = (more: object = {}, inner: object = {}) =>
  eventCallback({
    type: 'message',
    subtype: 'message_deleted',
    hidden: true,
    channel: 'C1',
    channel_type: 'channel',
    ts: '1800000090.000000',
    deleted_ts: '1800000000.000100',
    previous_message: { type: 'message', user: 'UAILSA', team: 'T1', text: 'anything', ts: '1800000000.000100', ...inner },
    ...more,
  });

/** A tap on a button of our reply 1800000001.000001 in the thread of the message above. */
export const tap = (actionId: string, more: object = {}, at = '1800000100.000001') => ({
  type: 'block_actions',
  team: { id: 'T1', domain: 'yard' },
  user: { id: 'UAILSA', username: 'ailsa', team_id: 'T1' },
  api_app_id: 'A1',
  token: 'unused',
  trigger_id: '1.2.abc',
  channel: { id: 'C1', name: 'events' },
  container: { type: 'message', message_ts: '1800000001.000001', channel_id: 'C1', thread_ts: '1800000000.000100', is_ephemeral: false },
  message: { type: 'message', ts: '1800000001.000001', thread_ts: '1800000000.000100', text: 'reply', bot_id: 'BBOT' },
  actions: [{ type: 'button', action_id: actionId, block_id: 'b', action_ts: at, ...more }],
});

export const signingSecret = 'made-up-signing-secret-0123456789';

/** Signed as docs.slack.dev/authentication/verifying-requests-from-slack describes: HMAC-SHA256 of v0:time:body. */
export const signature = (body: string, seconds: number, secret = signingSecret): string =>
  `v0=${createHmac('sha256', secret).update(`v0:${seconds}:${body}`).digest('hex')}`;

/** Posts a delivery to our HTTP endpoint, signed now. */
export const postDelivery = (port: number, payload: object, headers: Record<string, string> = {}): Promise<Response> => {
  const isForm = !('event' in payload);
  const body = isForm ? new URLSearchParams({ payload: JSON.stringify(payload) }).toString() : JSON.stringify(payload);
  const seconds = Math.floor(Date.now() / 1000);
  return fetch(`http://127.0.0.1:${port}/slack/events`, {
    method: 'POST',
    body,
    headers: {
      'content-type': isForm ? 'application/x-www-form-urlencoded' : 'application/json',
      'x-slack-request-timestamp': String(seconds),
      'x-slack-signature': signature(body, seconds),
      ...headers,
    },
  });
};
