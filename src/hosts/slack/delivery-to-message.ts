// Decides which of Slack's message deliveries are a person speaking to us, and as what: new, edited or deleted. Pure: what is known of threads comes in.

import type { IncomingMessage, ThreadKey } from '../../assistant/ports.ts';
import type { MessageDelivery, MessageEvent, SlackMessage } from './delivery.ts';
import { plainWords } from './plain-words.ts';

export interface WhoWeAre {
  readonly team: string;
  readonly botUser: string;
}

export interface KnownThreads {
  /** Whether this thread's event is open with us already, so that follow-ups need no mention. */
  knowsThread(key: ThreadKey): boolean;
  /** Whether a channel was shared with another organisation when last heard of; undefined when it never was heard of. */
  isShared?(workspace: string, channel: string): boolean | undefined;
}

const spoken = new Set<string | undefined>([undefined, 'file_share', 'thread_broadcast']);

/** The message for the assistant, or undefined where we stay out of it. */
export const deliveryToMessage = (delivery: MessageDelivery, us: WhoWeAre, threads: KnownThreads): IncomingMessage | undefined => {
  const { event } = delivery;
  if (event.subtype === 'message_changed') return edited(delivery, us, threads);
  if (event.subtype === 'message_deleted') return deleted(delivery, us, threads);
  if (!spoken.has(event.subtype) || !byOurPeople(event, delivery, us)) return undefined;
  const key = keyOf(delivery, event);
  const addressed = isDirect(event) || event.type === 'app_mention' || mentions(event, us);
  if (!addressed && !threads.knowsThread(key)) return undefined;
  return heard(delivery, key, event, 'new', addressed);
};

/** Files alone, without a word: nothing to read. */
export const isOnlyFiles = (message: IncomingMessage, { event }: MessageDelivery): boolean =>
  message.kind === 'new' && message.text === '' && (event.files?.length ?? 0) > 0;

/** Only real edits by people: unfurls, our own updates and language marks also arrive as changes, with the words unchanged. */
const edited = (delivery: MessageDelivery, us: WhoWeAre, threads: KnownThreads): IncomingMessage | undefined => {
  const { event } = delivery;
  const { message, previous_message: before } = event;
  if (!message) return undefined;
  if (message.subtype === 'tombstone') return withdrawn(delivery, message.ts, { ...(before ?? message), subtype: undefined }, us, threads);
  if (!spoken.has(message.subtype) || !message.edited || !byOurPeople(message, delivery, us)) return undefined;
  if (before !== undefined && before.text === message.text) return undefined;
  const key = keyOf(delivery, message);
  const addressed = isDirect(event) || mentions(message, us);
  if (threads.knowsThread(key)) return heard(delivery, key, message, 'edit', addressed);
  if (!addressed) return undefined;
  // A mention written in afterwards opens the thread; without one before, we never took the first wording.
  const neverHeard = !isDirect(event) && before !== undefined && !mentions(before, us);
  return heard(delivery, key, message, neverHeard ? 'new' : 'edit', addressed);
};

const deleted = (delivery: MessageDelivery, us: WhoWeAre, threads: KnownThreads): IncomingMessage | undefined => {
  const { deleted_ts: id, previous_message: before } = delivery.event;
  return id === undefined ? undefined : withdrawn(delivery, id, before, us, threads);
};

const withdrawn = (
  delivery: MessageDelivery,
  id: string,
  before: SlackMessage | undefined,
  us: WhoWeAre,
  threads: KnownThreads,
): IncomingMessage | undefined => {
  if (before && !byOurPeople(before, delivery, us)) return undefined;
  const key = keyOf(delivery, before ?? { ts: id });
  if (!threads.knowsThread(key)) return undefined;
  return { ...heard(delivery, key, { ts: id, user: before?.user }, 'delete', false), revision: 'deleted' };
};

const heard = (
  delivery: MessageDelivery,
  key: ThreadKey,
  message: Pick<SlackMessage, 'ts'> & Partial<SlackMessage>,
  kind: 'new' | 'edit' | 'delete',
  addressed: boolean,
): IncomingMessage => ({
  ...key,
  id: message.ts,
  revision: message.edited?.ts ?? message.ts,
  author: message.user ?? '',
  kind,
  text: kind === 'delete' ? '' : plainWords(message.text ?? ''),
  addressed,
  shared: delivery.is_ext_shared_channel === true,
  sentAt: millisecondsOf(message.edited?.ts ?? message.ts),
});

/** Slack's ts is seconds with six decimals, kept as text; only here is it read as a time. */
export const millisecondsOf = (ts: string): number => Math.round(Number(ts) * 1000);

const workspaceOf = (delivery: MessageDelivery): string => delivery.authorizations?.[0]?.team_id ?? delivery.team_id;

const keyOf = (delivery: MessageDelivery, message: { readonly ts: string; readonly thread_ts?: string | undefined }): ThreadKey => ({
  workspace: workspaceOf(delivery),
  channel: delivery.event.channel,
  thread: message.thread_ts ?? message.ts,
});

const isDirect = (event: MessageEvent): boolean => event.channel_type === 'im' || event.channel_type === 'app_home';

const mentions = (message: { readonly text?: string | undefined }, us: WhoWeAre): boolean =>
  new RegExp(`<@${us.botUser}(\\|[^>]*)?>`).test(message.text ?? '');

/** A person of this studio: not a bot, not us, not a guest from another organisation in a shared channel. */
const byOurPeople = (message: Partial<SlackMessage>, delivery: MessageDelivery, us: WhoWeAre): boolean => {
  if (message.bot_id !== undefined || message.bot_profile !== undefined) return false;
  if (message.user === undefined || message.user === us.botUser) return false;
  const home = new Set([workspaceOf(delivery), delivery.enterprise_id ?? undefined]);
  return [message.user_team, message.source_team, message.team].every((team) => team === undefined || home.has(team));
};
