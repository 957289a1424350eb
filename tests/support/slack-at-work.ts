// The Slack host on real parts in this process, against the stand-in: store, assistant, outbox, poster. For whole paths from a delivery to what is seen.

import { createAssistant } from '../../src/assistant/assistant.ts';
import { createFileMaker } from '../../src/assistant/make-file.ts';
import { startOutboxPump } from '../../src/clockwork/outbox-pump.ts';
import type { SealedRows } from '../../src/hosts/slack/installations.ts';
import { createPoster } from '../../src/hosts/slack/post.ts';
import type { SlackSettings } from '../../src/hosts/slack/read-slack-settings.ts';
import { slackWorkspaces } from '../../src/hosts/slack/slack-workspaces.ts';
import { startSlack } from '../../src/hosts/slack/start-slack.ts';
import { slackDesk } from '../../src/slack-desk.ts';
import { exportThread } from '../../src/store/export.ts';
import { installationRows } from '../../src/store/installations.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import { messageFaults } from './block-kit-limits.ts';
import { demoStudio } from './converse.ts';
import { memoryLog } from './slack-inbox.ts';
import { botToken, until } from './slack-running.ts';
import { type StandIn, type StandInMessage, startStandIn } from './slack-stand-in.ts';

export const root = '1800000000.000100';

export interface Button {
  readonly type: string;
  readonly action_id: string;
  readonly value?: string;
  readonly text?: { readonly text: string };
  readonly placeholder?: { readonly text: string };
}

export const buttonsOf = (message: StandInMessage | undefined): Button[] =>
  (message?.blocks ?? []).flatMap((block) => {
    const { type, elements } = block as { type: string; elements?: Button[] };
    return type === 'actions' ? (elements ?? []) : [];
  });

export interface AtWorkOptions {
  readonly slack?: StandIn;
  readonly settings?: (apiUrl: string) => SlackSettings;
  /** The studio has chosen its settings already, so nobody is greeted. */
  readonly isNew?: boolean;
  readonly now?: () => number;
}

/** Soon after the messages of the test deliveries were written (15 January 2027), going on from there. */
const morning = (): (() => number) => {
  const ahead = 1_800_000_900_000 - Date.now();
  return () => Date.now() + ahead;
};

export const startAtWork = async (options: AtWorkOptions = {}) => {
  const slack = options.slack ?? (await startStandIn());
  const clock = { now: options.now ?? morning() };
  const store = openStore({ path: ':memory:', clock });
  if (!options.isNew) store.chooseSettings('T1', demoStudio, { ...demoStudio, name: 'The Net Loft' });
  const { log, lines } = memoryLog();
  const settings: SlackSettings = options.settings?.(slack.apiUrl) ?? {
    botToken,
    transport: { mode: 'socket', appToken: 'xapp-test-1' },
    apiUrl: slack.apiUrl,
  };
  const rows: SealedRows = installationRows(store);
  const workspaces = slackWorkspaces({ settings, log, now: clock.now }, rows);
  const parts = { store, clock, settings: demoStudio };
  const assistant = createAssistant({
    ...parts,
    isWorkplace: true,
    onFailure: (_id, error) => {
      throw error;
    },
  });
  const files = createFileMaker({ ...parts, exported: (key) => exportThread(store, key) });
  const quiet = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const poster = createPoster({ workspaces, files, log });
  const pump = startOutboxPump({ store, poster, clock, log: quiet, channelPause: 0, lookEvery: 50 });
  const work = (): void => {
    assistant.work();
    pump.wake();
  };
  const host = await startSlack({
    settings,
    workspaces,
    inbox: { ...store, work: () => void setImmediate(work) },
    threads: { knowsThread: store.knows, isShared: store.isShared },
    desk: slackDesk(parts, work),
    log,
    now: clock.now,
  });

  const replies = (): StandInMessage[] => slack.messages.filter(({ thread_ts }) => thread_ts === root);
  return {
    slack,
    store,
    host,
    rows,
    lines,
    work,
    replies,
    /** What was posted in the event's thread, without its summary. */
    answers: (): StandInMessage[] => replies().filter(({ text }) => !text.includes('I keep this message up to date')),
    summaries: (): StandInMessage[] => replies().filter(({ text }) => text.includes('I keep this message up to date')),
    /** Sends a delivery over the socket and waits until all it caused is posted. */
    deliver: async (delivery: object): Promise<void> => {
      const type = 'event' in delivery ? 'events_api' : 'command' in delivery ? 'slash_commands' : 'interactive';
      const id = slack.send(type, delivery, { accepts_response_payload: true });
      await until(() => slack.acks.some(({ envelope_id }) => envelope_id === id));
      await new Promise((resolve) => setImmediate(() => setImmediate(resolve)));
      await pump.settled();
    },
    settled: () => pump.settled(),
    faults: (): string[] => slack.messages.flatMap(messageFaults),
    stop: async (): Promise<void> => {
      await host.stop();
      await pump.stop(1_000);
      if (!options.slack) await slack.close();
      store.close();
    },
  };
};

export type AtWork = Awaited<ReturnType<typeof startAtWork>>;
