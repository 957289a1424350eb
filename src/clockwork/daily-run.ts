// Says the reminder at the studio's hour: an alarm for the hour itself, and a look every minute for what an alarm cannot know
// (a computer that slept, a clock put right, an hour changed in the settings). Which days were said is the store's to know.

import { Cron } from 'croner';
import type { Clock } from '../assistant/ports.ts';
import type { Day } from '../values/day.ts';
import { dueMorning, type Morning, type Schedule } from './due-morning.ts';
import { type Log, reasonOf } from './log.ts';

export interface DailyRunOptions {
  readonly name: string; // for the log
  readonly schedule: () => Schedule | undefined; // asked at each look, so that new settings hold at once; undefined: not wanted
  readonly clock: Clock;
  readonly log: Log;
  /** The newest day already claimed: Store.lastReminder. */
  readonly last: () => Day | undefined;
  /** Claims the day and queues the message (Store.remind, which lets it happen once). If it throws, it is called again a minute later. */
  readonly run: (morning: Morning) => void | Promise<void>;
}

export interface DailyRun {
  /** Runs now whatever is due. Also done at the start, at the hour and every minute. */
  check(): Promise<void>;
  /** No run begins afterwards; resolves when the one under way has ended. */
  stop(): Promise<void>;
}

export const startDailyRun = ({ name, schedule, clock, log, last, run }: DailyRunOptions): DailyRun => {
  let said: Day | undefined;
  let underWay: Promise<void> | undefined;
  let stopped = false;
  let alarm: { readonly set: string; readonly cron: Cron } | undefined;

  const runDue = async (): Promise<void> => {
    const start = clock.now();
    try {
      const hours = schedule();
      setAlarm(hours);
      if (!hours) return;
      const morning = dueMorning(start, hours, last());
      if (!morning || morning.day === said) return;
      await run(morning);
      said = morning.day;
      const outcome = morning.late ? 'run late' : 'run';
      log.info({ what: 'daily run', id: `${name} ${morning.day}`, outcome, milliseconds: clock.now() - start });
    } catch (error) {
      log.error({ what: 'daily run', id: name, outcome: 'failed', reason: reasonOf(error) });
    }
  };

  const check = (): Promise<void> => {
    if (stopped) return Promise.resolve();
    underWay ??= runDue().finally(() => {
      underWay = undefined;
    });
    return underWay;
  };

  const setAlarm = (hours: Schedule | undefined): void => {
    if (!hours) {
      alarm?.cron.stop();
      alarm = undefined;
      return;
    }
    const { at, timeZone, on } = hours;
    const [hour, minute] = at.split(':').map(Number);
    const pattern = `0 ${minute} ${hour} * * ${on?.slice(0, 3) ?? '*'}`;
    const set = `${pattern} ${timeZone}`;
    if (alarm?.set === set) return;
    alarm?.cron.stop();
    alarm = { set, cron: new Cron(pattern, { timezone: timeZone, unref: true }, () => void check()) };
  };

  const everyMinute = setInterval(() => void check(), 60_000).unref();
  void check();

  return {
    check,
    stop: async () => {
      stopped = true;
      clearInterval(everyMinute);
      alarm?.cron.stop();
      await underWay;
    },
  };
};
