// The reminders of one workspace: the morning list, the afternoon nudge, the look-ahead at the week. Each is claimed and queued in one transaction, with the
// copy for a named person, so that restarts, clock changes and a second process cannot say it twice.

import { type Bench, morningReply, type Punctuality } from '../reply/compose/morning.ts';
import { nudgeReply } from '../reply/compose/nudge.ts';
import { weekAheadReply } from '../reply/compose/week-ahead.ts';
import type { Reply } from '../reply/reply.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { standing } from '../thread/effective.ts';
import { newEvent } from '../thread/event.ts';
import { type Day, dayAt } from '../values/day.ts';
import { benchKey, consider } from './consider.ts';
import type { OutgoingReply, Store } from './ports.ts';

export const reminderKinds = ['morning', 'nudge', 'week ahead'] as const;
export type ReminderKind = (typeof reminderKinds)[number];

export interface Reminder extends Punctuality {
  readonly kind: ReminderKind;
  readonly workspace: string;
  readonly channels: readonly string[]; // the bench channel, and the person it also goes to; the first one carries the claim
  readonly day: Day; // it was due on
}

/** Queues what is to be said, or nothing where nothing is due. False when that day was claimed before. */
export const remind = (store: Store, settings: StudioSettings, reminder: Reminder, now: number): boolean => {
  const { kind, workspace, channels, day } = reminder;
  const [claiming] = channels;
  if (claiming === undefined) return false;
  const reply = reminderReply(store, settings, reminder, now);
  const replies = reply ? [...new Set(channels)].map((channel) => outgoing(workspace, channel, kind, day, reply)) : [];
  return store.remind(workspace, claiming, kind, day, replies, now);
};

const outgoing = (workspace: string, channel: string, kind: ReminderKind, day: Day, reply: Reply): OutgoingReply => ({
  id: [workspace, channel, kind, day].join('/'),
  to: { workspace, channel, thread: '' },
  purpose: 'reminder',
  about: day,
  reply,
});

/** What a reminder says, worked out now; undefined when it has nothing to say. */
export const reminderReply = (
  store: Store,
  settings: StudioSettings,
  reminder: Omit<Reminder, 'channels'>,
  now: number,
): Reply | undefined => {
  const { kind, workspace, day } = reminder;
  const studio = store.studio(workspace, settings).state;
  const { timeZone } = studio.settings;
  const today = dayAt(now, timeZone);
  const bench: Bench = consider(store, { workspace, channel: '', thread: '' }, newEvent, studio, today);
  switch (kind) {
    case 'morning':
      return morningReply(bench, today, reminder);
    case 'nudge':
      return day === today ? nudgeReply(bench, today, (key) => isTold(store, workspace, key, today, timeZone)) : undefined;
    case 'week ahead':
      return weekAheadReply(bench, today);
  }
};

/** This morning's list as it would be said now. Claims nothing. */
export const morningNow = (store: Store, settings: StudioSettings, workspace: string, now: number): Reply | undefined => {
  const day = dayAt(now, store.studio(workspace, settings).state.settings.timeZone);
  return reminderReply(store, settings, { kind: 'morning', workspace, day, late: false, missed: [] }, now);
};

/** Whether anybody has said today how this event's pieces stand: ticked some, broke some, or made none. */
const isTold = (store: Store, workspace: string, key: string, today: Day, timeZone: string): boolean => {
  const event = store.openEvents(workspace, today).find((one) => benchKey(one.key) === key);
  return (
    event !== undefined &&
    standing(store.entries(event.key)).some(
      (message) =>
        dayAt(message.at, timeZone) === today && message.facts.some(({ fact }) => fact === 'made' || fact === 'broke' || fact === 'left'),
    )
  );
};
