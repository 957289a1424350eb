// Keeps each message before Slack is told we have it. Bolt acknowledges a message before any listener runs, so this stands in front of Bolt:
// a delivery that could not be kept is not acknowledged, and Slack sends it again.

import type { App, ReceiverEvent } from '@slack/bolt';
import type { FileContent, FileToFetch, IncomingMessage } from '../../assistant/ports.ts';
import type { ChannelSharing } from './channel-sharing.ts';
import { teamOf } from './delivery.ts';
import type { KnownThreads } from './delivery-to-message.ts';
import { understood } from './understood.ts';
import type { Workspace, Workspaces } from './workspaces.ts';

/** The assistant's door. */
export interface Inbox {
  /** Keeps the message for good; throws when it cannot. */
  receive(message: IncomingMessage, delivery: string): 'new' | 'repeat';
  /** The same for a dropped file whose content is not here yet. */
  receiveFile(message: IncomingMessage, delivery: string, file: string): 'new' | 'repeat';
  filesToFetch(): readonly FileToFetch[];
  fill(file: FileToFetch, content: FileContent): void;
  /** Sets to work on what waits, and returns at once. */
  work(): void;
}

/** Slack waits 3 s for the acknowledgement; a store busy for less than this is waited for, in the order of arrival. */
const patience = 2_500;
const pause = 50;

export interface Keeper {
  readonly inbox: Inbox;
  readonly threads: KnownThreads;
  readonly workspaces: Workspaces;
  readonly sharing: ChannelSharing;
  /** Files were kept that are still to be fetched. */
  readonly onFiles: () => void;
  readonly now: () => number;
}

type Kept = 'nothing' | 'a message' | 'files too';

/** The same app to a receiver, but keeping before acknowledging. */
export const keepingFirst = (app: App, keeper: Keeper): App => {
  let last: Promise<unknown> = Promise.resolve();
  const inOrder = <T>(task: () => Promise<T>): Promise<T> => {
    const mine = last.then(task, task);
    last = mine.catch(() => undefined);
    return mine;
  };
  const keeping: App = Object.create(app);
  keeping.processEvent = async (event: ReceiverEvent): Promise<void> => {
    const arrived = keeper.now();
    const kept = await inOrder(() => keep(event.body, keeper, arrived));
    try {
      await app.processEvent(event);
    } finally {
      // Kept is kept, even where the acknowledgement was cut off.
      if (kept !== 'nothing') keeper.inbox.work();
      if (kept === 'files too') keeper.onFiles();
    }
  };
  return keeping;
};

const keep = async (body: unknown, keeper: Keeper, arrived: number): Promise<Kept> => {
  for (;;) {
    try {
      const team = teamOf(body);
      const here = team === undefined ? undefined : await keeper.workspaces.of(team);
      return here ? await keepIn(here, body, keeper) : 'nothing';
    } catch (error) {
      if (keeper.now() - arrived > patience) throw error;
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
  }
};

const keepIn = async (here: Workspace, body: unknown, keeper: Keeper): Promise<Kept> => {
  const { inbox } = keeper;
  const { message, files } = await understood(here, body, keeper);
  if (message) inbox.receive(message.message, message.delivery);
  for (const { message: dropped, delivery, file } of files) inbox.receiveFile(dropped, delivery, file);
  return files.length > 0 ? 'files too' : message ? 'a message' : 'nothing';
};
