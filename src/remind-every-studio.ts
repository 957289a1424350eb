// The reminders of every workspace that has the app: one that installs it while the bot runs joins within a minute, one that removed it is left alone.

import type { Reminders } from './start-reminders.ts';

export interface RemindEvery {
  /** The workspaces there are now. When this fails, it is asked again a minute later. */
  readonly teams: () => Promise<readonly string[]>;
  readonly start: (workspace: string) => Reminders;
}

const minute = 60_000;

export const remindEveryStudio = ({ teams, start }: RemindEvery): Pick<Reminders, 'stop'> => {
  const running = new Map<string, Reminders>();
  let stopped = false;

  const look = async (): Promise<void> => {
    const there = await teams().catch(() => undefined);
    if (there === undefined || stopped) return;
    for (const workspace of there) if (!running.has(workspace)) running.set(workspace, start(workspace));
    for (const [workspace, reminders] of running) {
      if (there.includes(workspace)) continue;
      running.delete(workspace);
      await reminders.stop();
    }
  };

  const timer = setInterval(() => void look(), minute).unref();
  void look();
  return {
    stop: async () => {
      stopped = true;
      clearInterval(timer);
      await Promise.all([...running.values()].map((reminders) => reminders.stop()));
    },
  };
};
