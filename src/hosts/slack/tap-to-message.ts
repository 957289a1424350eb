// Turns a tapped button into a message for the assistant. Its id is made from what was tapped, so that a double click is a repeat.

import type { IncomingMessage } from '../../assistant/ports.ts';
import type { Action } from '../../reply/reply.ts';
import type { TapDelivery } from './delivery.ts';
import { millisecondsOf, type WhoWeAre } from './delivery-to-message.ts';

type Named = Action['action'];

/** Which of our actions count again later: those that only show something, and a date, which may be moved away and back. */
const again: Record<Named, boolean> = {
  choose: false,
  'show working': true,
  'for the client': true,
  undo: false,
  'made all': false,
  'made some': false,
  'calendar file': true,
  'calendar picture': true,
  'buying list': true,
  'move date': true,
  'set price': false,
  'set up': true,
};

/** Actions that need more than the tap, so the host opens a form for them first. */
export const needsForm: ReadonlySet<Named> = new Set<Named>(['made some', 'set price', 'set up']);

const prefix = 'reply';

/** Marks one reply and its revision in the ids of its buttons: after an edit the same place may stand for another choice. */
export const stampOf = (replyId: string): string => {
  let hash = 2_166_136_261; // FNV-1a, 32 bits
  for (const byte of new TextEncoder().encode(replyId)) hash = Math.imul(hash ^ byte, 16_777_619) >>> 0;
  return hash.toString(36);
};

/** The id of a button or date picker in a reply: ids must differ within one block, so the place is part of it. */
export const actionId = (action: Named, place: number, stamp: string, value?: string): string =>
  [prefix, action, place, stamp, ...(value === undefined ? [] : [value])].join('|');

/** Any action id of ours, for Bolt's routing. */
export const ourActions = /^reply\|/;

export interface Tap {
  readonly action: Named;
  readonly stamp: string;
  readonly value: string; // the looked-up id
  readonly entry?: string; // what was picked or typed with it: a day, a number
}

export const readTap = (actionIdText: string, value: string | undefined, picked?: string | null): Tap | undefined => {
  const [first, action, , stamp = '', ...rest] = actionIdText.split('|');
  if (first !== prefix || action === undefined || !(action in again)) return undefined;
  return { action: action as Named, stamp, value: value ?? rest.join('|'), ...(picked ? { entry: picked } : {}) };
};

/** The value the assistant gets: the id, and on a second line what was picked or typed. */
export const tapValue = (tap: Tap): string => (tap.entry === undefined ? tap.value : `${tap.value}\n${tap.entry}`);

export interface TapPlace {
  readonly workspace: string;
  readonly channel: string;
  readonly message: string; // the reply that held the button
  readonly thread: string;
  readonly author: string;
  readonly at: string; // Slack's ts of the tap
}

export const tapMessage = (tap: Tap, place: TapPlace): IncomingMessage => ({
  workspace: place.workspace,
  channel: place.channel,
  thread: place.thread,
  id: ['tap', place.message, tap.stamp, tap.action, tapValue(tap).replace('\n', ' ')].join(' '),
  revision: again[tap.action] ? place.at.slice(0, -8) || place.at : 'tapped',
  author: place.author,
  kind: 'tap',
  text: '',
  tap: { action: tap.action, value: tapValue(tap) },
  addressed: true,
  shared: false,
  sentAt: millisecondsOf(place.at),
});

/** The message a tap stands for; undefined for taps that are not ours, need a form first, or come from another organisation. */
export const tapToMessage = (delivery: TapDelivery, us: WhoWeAre): IncomingMessage | undefined => {
  const tapped = delivery.actions[0];
  if (!tapped || !fromOurTeam(delivery, us)) return undefined;
  const tap = readTap(tapped.action_id, tapped.value, tapped.selected_date);
  if (!tap || needsForm.has(tap.action)) return undefined;
  return tapMessage(tap, placeOf(delivery, tapped.action_ts));
};

export const fromOurTeam = (delivery: TapDelivery, us: WhoWeAre): boolean =>
  delivery.user.team_id === undefined || delivery.user.team_id === us.team;

export const placeOf = (delivery: TapDelivery, at: string): TapPlace => ({
  workspace: delivery.team.id,
  channel: delivery.channel.id,
  message: delivery.container.message_ts,
  thread: delivery.container.thread_ts ?? delivery.message?.thread_ts ?? delivery.container.message_ts,
  author: delivery.user.id,
  at,
});
