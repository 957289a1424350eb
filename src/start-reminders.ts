// The three reminders on the studio's own clock. Nothing is posted by itself until the studio names its bench channel or a person, and what it names holds
// from the next look on, without a restart.

import type { Clock } from './assistant/ports.ts';
import { type Reminder, type ReminderKind, remind, reminderKinds } from './assistant/remind.ts';
import { type DailyRun, startDailyRun } from './clockwork/daily-run.ts';
import type { Schedule } from './clockwork/due-morning.ts';
import type { Log } from './clockwork/log.ts';
import type { OpenStore } from './store/sqlite-store.ts';
import type { StudioSettings } from './studio/settings.ts';

export interface Reminders {
  /** Says now whatever is due. Also done at the start, at each hour and every minute. */
  check(): Promise<void>;
  stop(): Promise<void>;
}

export interface ReminderParts {
  readonly store: OpenStore;
  readonly clock: Clock;
  readonly settings: StudioSettings; // for a workspace that has not set up its own
  readonly workspace: string;
  readonly log: Log;
  readonly onQueued: () => void;
}

const usualHour = '07:00';

export const startReminders = ({ store, clock, settings, workspace, log, onQueued }: ReminderParts): Reminders => {
  const studio = (): StudioSettings => store.studio(workspace, settings).state.settings;

  const runOf = (kind: ReminderKind): DailyRun =>
    startDailyRun({
      name: kind,
      schedule: () => scheduleOf(kind, studio()),
      clock,
      log,
      last: () => {
        const [claiming] = channelsOf(studio());
        return claiming === undefined ? undefined : store.lastReminder(workspace, claiming, kind);
      },
      run: ({ day, late, missed }) => {
        const reminder: Reminder = { kind, workspace, channels: channelsOf(studio()), day, late, missed };
        if (remind(store, settings, reminder, clock.now())) onQueued();
      },
    });

  const runs = reminderKinds.map(runOf);
  return {
    check: async () => {
      for (const run of runs) await run.check();
    },
    stop: async () => {
      for (const run of runs) await run.stop();
    },
  };
};

/** The bench channel first: it carries the claim. */
const channelsOf = ({ reminder }: StudioSettings): readonly string[] =>
  [reminder?.channel, reminder?.person].filter((channel): channel is string => channel !== undefined && channel !== '');

/** Undefined where this studio wants none of that kind. */
const scheduleOf = (kind: ReminderKind, settings: StudioSettings): Schedule | undefined => {
  const { reminder, timeZone } = settings;
  if (!reminder || channelsOf(settings).length === 0) return undefined;
  const at = reminder.at ?? usualHour;
  if (kind === 'morning') return { at, timeZone };
  if (kind === 'nudge') return reminder.nudgeAt === undefined ? undefined : { at: reminder.nudgeAt, timeZone };
  return reminder.weekAheadOn === undefined ? undefined : { at, timeZone, on: reminder.weekAheadOn };
};
