// The Slack host on real parts: store, assistant, outbox and reminders, started in order and stopped in reverse within five seconds.

import type { Logger } from 'pino';
import { type AssistantParts, createAssistant } from './assistant/assistant.ts';
import { createFileMaker } from './assistant/make-file.ts';
import type { Clock } from './assistant/ports.ts';
import { type Heartbeat, startHeartbeat } from './clockwork/heartbeat.ts';
import { startInboxWorker } from './clockwork/inbox-worker.ts';
import type { Log } from './clockwork/log.ts';
import { startOutboxPump } from './clockwork/outbox-pump.ts';
import { createPoster } from './hosts/slack/post.ts';
import { readSlackSettings, type SlackSettings } from './hosts/slack/read-slack-settings.ts';
import { slackWorkspaces } from './hosts/slack/slack-workspaces.ts';
import { SlackStartError } from './hosts/slack/start-errors.ts';
import { startSlack } from './hosts/slack/start-slack.ts';
import { described, endOnUncaught } from './last-words.ts';
import { openLog } from './log.ts';
import { readStudioFile } from './read-studio-file.ts';
import { remindEveryStudio } from './remind-every-studio.ts';
import type { Settings } from './settings.ts';
import { slackDesk } from './slack-desk.ts';
import { startReminders } from './start-reminders.ts';
import { exportThread } from './store/export.ts';
import { installationRows } from './store/installations.ts';
import { openStore } from './store/sqlite-store.ts';
import { isOutage, StoreTrouble } from './store/store-trouble.ts';
import type { StudioSettings } from './studio/settings.ts';
import { watchStore } from './watch-store.ts';

const demoStudio = new URL('../demo-data/studio.json', import.meta.url);

/** Everything begun is ended here, last first, within this many milliseconds. */
const stopWithin = 4_500;

/** A lock longer than this is met by waiting between tries, so that Slack's acknowledgements are not held up with it. */
const lockPatience = 500;

/** Home and forms show what was received before, as far as that can be handled in this time: Slack waits three seconds. */
const settleWithin = 1_000;

/** Resolves with the exit code: 0 when told to stop, 2 at once when a setting stops it from starting, 1 when the store was lost to it. */
export const runSlack = async (settings: Settings): Promise<number> => {
  const log = openLog(settings.log);
  endOnUncaught(log);
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

const serve = async (settings: Settings, slack: SlackSettings, studio: StudioSettings, log: Logger): Promise<number> => {
  const ending = endAsked(); // heard from the first moment, not only once all is up
  const clock: Clock = { now: () => Date.now() };
  const watch = watchStore(log, clock, () => ending.end(1));
  const store = openStore({ path: settings.store, busyMilliseconds: lockPatience, watch });
  const parts: AssistantParts = { store, clock, settings: studio, isOutage, isWorkplace: true, onFailure: failureLine(log) };
  const assistant = createAssistant(parts);
  const heart = startHeartbeat(clock, (beat) => {
    const memory = Math.round(process.memoryUsage.rss() / 1024 / 1024);
    log.info({ what: 'alive', ...beat, memoryMiB: memory, store: watch.isWell() ? 'well' : 'in trouble', connected: host.healthy() });
  });
  const files = createFileMaker({ store, clock, settings: studio, exported: (key) => exportThread(store, key) });
  const workspaces = slackWorkspaces({ settings: slack, log, now: clock.now }, installationRows(store));
  const poster = createPoster({ workspaces, files, log });
  const pump = startOutboxPump({ store, poster, clock, log: lines(log, heart), channelPause: 1_000 });
  const worker = startInboxWorker({ next: assistant.next, onReplies: pump.wake, log: lines(log, heart) });
  const host = await startSlack({
    settings: slack,
    workspaces,
    inbox: { ...store, work: worker.wake },
    threads: { knowsThread: store.knows, isShared: store.isShared },
    desk: slackDesk({ store, clock, settings: studio }, () => void worker.settle(settleWithin)),
    log,
    now: clock.now,
  }).catch(async (error: unknown) => {
    await pump.stop(0);
    store.close();
    throw error;
  });
  const reminders = remindEveryStudio({
    teams: workspaces.teams,
    start: (workspace) => startReminders({ store, clock, settings: studio, workspace, log: lines(log, heart), onQueued: pump.wake }),
  });
  worker.wake(); // what a run before this one kept and did not get to
  log.info({ what: 'start', outcome: 'listening', mode: slack.transport.mode, port: host.port, studio: studio.name });

  const code = await ending.asked;
  const started = clock.now();
  const left = (): number => Math.max(300, stopWithin - (clock.now() - started));
  heart.stop();
  await reminders.stop();
  await host.stop();
  const inbox = await worker.stop(code === 0 ? left() / 2 : 0);
  const outbox = await pump.stop(code === 0 ? left() : 0);
  store.close();
  const outcome = inbox === 'drained' && outbox === 'drained' ? 'drained' : 'cut short';
  log.info({ what: 'stop', outcome, milliseconds: clock.now() - started });
  return code;
};

/** Told to stop (0), or ended by a trouble (1); the first word counts. */
const endAsked = (): { readonly asked: Promise<number>; readonly end: (code: number) => void } => {
  let end: (code: number) => void = () => undefined;
  const asked = new Promise<number>((resolve) => {
    end = resolve;
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => resolve(0));
  });
  return { asked, end };
};

const failureLine =
  (log: Logger): AssistantParts['onFailure'] =>
  (id, error) => {
    const { reason, at } = described(error);
    log.error({ what: 'message', id, outcome: 'failed', reason, at });
  };

const lines = (log: Logger, heart: Heartbeat): Log => ({
  info: (line) => {
    if (line.what === 'message') heart.handled();
    if (line.what === 'reply' && line.outcome === 'posted') heart.posted();
    log.info(line);
  },
  warn: (line) => log.warn(line),
  error: (line) => log.error(line),
});
