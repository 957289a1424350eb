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
  const form =
    'command' in payload
      ? Object.entries(payload).map(([name, value]): [string, string] => [name, String(value)])
      : [['payload', JSON.stringify(payload)] as [string, string]];
  const body = isForm ? new URLSearchParams(form).toString() : JSON.stringify(payload);
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

const person = { id: 'UAILSA', team_id: 'T1', username: 'ailsa' };
const team = { id: 'T1', domain: 'net-loft' };

export const homeOpened = (more: object = {}) =>
  eventCallback({ type: 'app_home_opened', user: 'UAILSA', channel: 'D1', tab: 'home', event_ts: '1800000000.0001', ...more });

export const homeTap = (action_id: string, value?: string, more: object = {}) => ({
  type: 'block_actions',
  team,
  user: person,
  trigger_id: '1.2.abc',
  container: { type: 'view', view_id: 'V1' },
  view: { id: 'V1', type: 'home', hash: 'h1', blocks: [] },
  actions: [{ type: 'button', action_id, block_id: 'b', action_ts: '1800000100.000001', ...(value === undefined ? {} : { value }) }],
  ...more,
});

/** A submitted form; each value is under its block's id twice, as block and action. */
export const submitted = (callback_id: string, values: Readonly<Record<string, object>>, more: object = {}) => ({
  type: 'view_submission',
  team,
  user: person,
  view: {
    id: 'V2',
    type: 'modal',
    callback_id,
    private_metadata: '',
    blocks: [],
    state: { values: Object.fromEntries(Object.entries(values).map(([id, value]) => [id, { [id]: value }])) },
    ...more,
  },
});

export const messageShortcut = (message: object, more: object = {}) => ({
  type: 'message_action',
  callback_id: 'read_as_event',
  team,
  user: person,
  channel: { id: 'C1', name: 'events' },
  trigger_id: '1.2.abc',
  message_ts: '1800000000.000100',
  response_url: 'http://127.0.0.1:9/unused',
  message: { type: 'message', user: 'UMOIRA', ts: '1800000000.000100', ...message },
  ...more,
});

export const globalShortcut = () => ({
  type: 'shortcut',
  callback_id: 'new_event',
  team,
  user: person,
  trigger_id: '1.2.abc',
  action_ts: '1800000100.000001',
});

export const command = (text: string, more: object = {}) => ({
  command: '/benchbell',
  text,
  team_id: 'T1',
  team_domain: 'net-loft',
  channel_id: 'C1',
  channel_name: 'events',
  user_id: 'UAILSA',
  user_name: 'ailsa',
  trigger_id: '1.2.abc',
  response_url: 'http://127.0.0.1:9/unused',
  api_app_id: 'A1',
  ...more,
});
