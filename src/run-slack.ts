// The Slack host on real parts: store, assistant, outbox and reminders, started in order and stopped in reverse within five seconds.

import type { Logger } from 'pino';
import { createAssistant } from './assistant/assistant.ts';
import { createFileMaker } from './assistant/make-file.ts';
import type { Clock } from './assistant/ports.ts';
import { morning, remindMorning } from './assistant/remind.ts';
import { type DailyRun, startDailyRun } from './clockwork/daily-run.ts';
import type { Log } from './clockwork/log.ts';
import { startOutboxPump } from './clockwork/outbox-pump.ts';
import { slackClient } from './hosts/slack/clients.ts';
import { errorName } from './hosts/slack/logger.ts';
import { createPoster } from './hosts/slack/post.ts';
import { readSlackSettings, type SlackSettings } from './hosts/slack/read-slack-settings.ts';
import { SlackStartError } from './hosts/slack/start-errors.ts';
import { startSlack } from './hosts/slack/start-slack.ts';
import { openLog } from './log.ts';
import { readStudioFile } from './read-studio-file.ts';
import type { Settings } from './settings.ts';
import { slackDesk } from './slack-desk.ts';
import { type OpenStore, openStore } from './store/sqlite-store.ts';
import { StoreTrouble } from './store/store-trouble.ts';
import type { StudioSettings } from './studio/settings.ts';

const demoStudio = new URL('../demo-data/studio.json', import.meta.url);

/** Resolves with the exit code when told to stop, or at once with 2 when a setting stops it from starting. */
export const runSlack = async (settings: Settings): Promise<number> => {
  const log = openLog(settings.log);
  const refuse = (trouble: string): number => {
    log.fatal({ outcome: 'not started' }, trouble);
    return 2;
  };
  const slack = readSlackSettings(settings.slack);
  if (slack.found === 'problem') return refuse(slack.problem.sentence);
  if (slack.found === 'none') return refuse('No Slack tokens are set.');
  const studio = readStudioFile(settings.studioFile ?? demoStudio);
  if (!studio.ok) return refuse(studio.trouble);
  try {
    return await serve(settings, slack.settings, studio.settings, log);
  } catch (error) {
    if (error instanceof StoreTrouble || error instanceof SlackStartError) return refuse(error.message);
    throw error;
  }
};

/** Everything begun is ended here, last first, within this many milliseconds. */
const stopWithin = 4_500;

const serve = async (settings: Settings, slack: SlackSettings, studio: StudioSettings, log: Logger): Promise<number> => {
  const stopping = stopAsked(); // heard from the first moment, not only once all is up
  const clock: Clock = { now: () => Date.now() };
  const store = openStore({ path: settings.store });
  const assistant = createAssistant({
    store,
    clock,
    settings: studio,
    onFailure: (id, error) => log.error({ what: 'message', id, outcome: 'failed', reason: errorName(error) }),
  });
  const pump = startOutboxPump({
    store,
    poster: createPoster({ client: slackClient(slack, log), files: createFileMaker({ store, clock, settings: studio }), log }),
    clock,
    log: lines(log),
    channelPause: 1_000,
  });
  const work = (): void => {
    let last = clock.now();
    assistant.work(({ message, as }) => {
      const now = clock.now();
      log.info({ what: 'message', id: message.id, outcome: as, milliseconds: now - last });
      last = now;
    });
    pump.wake();
  };
  const host = await startSlack({
    settings: slack,
    inbox: { receive: store.receive, work: () => void setImmediate(work) },
    threads: { knowsThread: store.knows },
    desk: slackDesk({ store, clock, settings: studio }, work),
    log,
    now: clock.now,
  });
  const daily = morningRun(store, clock, studio, host.identity.team, log, pump.wake);
  work(); // what a run before this one kept and did not get to
  log.info({ what: 'start', outcome: 'listening', mode: slack.transport.mode, port: host.port, studio: studio.name });

  await stopping;
  const started = clock.now();
  await daily?.stop();
  await host.stop();
  const outcome = await pump.stop(Math.max(500, stopWithin - (clock.now() - started)));
  store.close();
  log.info({ what: 'stop', outcome, milliseconds: clock.now() - started });
  return 0;
};

const stopAsked = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => resolve());
  });

/** Nothing is posted by itself until the studio names its bench channel. */
const morningRun = (
  store: OpenStore,
  clock: Clock,
  studio: StudioSettings,
  workspace: string,
  log: Logger,
  wake: () => void,
): DailyRun | undefined => {
  const channel = studio.reminder?.channel;
  if (!channel) return undefined;
  return startDailyRun({
    name: morning,
    schedule: () => ({ at: studio.reminder?.at ?? '07:00', timeZone: studio.timeZone }),
    clock,
    log: lines(log),
    last: () => store.lastReminder(workspace, channel, morning),
    run: (due) => {
      remindMorning(store, studio, { workspace, channel, ...due }, clock.now());
      wake();
    },
  });
};

const lines = (log: Logger): Log => ({ info: (line) => log.info(line), warn: (line) => log.warn(line), error: (line) => log.error(line) });
