// The morning reminder of one workspace: claimed and queued in one transaction, so that restarts and a second process cannot say it twice.

import { type Bench, morningReply } from '../reply/compose/morning.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { newEvent } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { consider } from './consider.ts';
import type { Store, ThreadKey } from './ports.ts';

export interface Reminder {
  readonly workspace: string;
  readonly channel: string;
  readonly day: Day;
  readonly late: boolean;
  readonly missed: readonly Day[];
}

export const morning = 'morning';

/** Queues the day's reminder, or nothing where nothing is due. False when the day was claimed before. */
export const remindMorning = (store: Store, settings: StudioSettings, reminder: Reminder, now: number): boolean => {
  const { workspace, channel, day } = reminder;
  const to: ThreadKey = { workspace, channel, thread: '' };
  const reply = morningReply(benchOf(store, settings, to, day), day, reminder);
  const replies = reply ? [{ id: [workspace, channel, morning, day].join('/'), to, purpose: 'reminder' as const, about: day, reply }] : [];
  return store.remind(workspace, channel, morning, day, replies, now);
};

const benchOf = (store: Store, settings: StudioSettings, at: ThreadKey, day: Day): Bench =>
  consider(store, at, newEvent, store.studio(at.workspace, settings).state, day);
