// Keeps each message before Slack is told we have it. Bolt acknowledges a message before any listener runs, so this stands in front of Bolt:
// a delivery that could not be kept is not acknowledged, and Slack sends it again.

import type { App, ReceiverEvent } from '@slack/bolt';
import type { IncomingMessage } from '../../assistant/ports.ts';
import { asMessageDelivery, asTapDelivery } from './delivery.ts';
import { deliveryToMessage, isOnlyFiles, type KnownThreads, type WhoWeAre } from './delivery-to-message.ts';
import { homeTapToMessage } from './home-taps.ts';
import { readNumberForm } from './number-form.ts';
import { shortcutToMessage } from './shortcut-to-message.ts';
import { tapToMessage } from './tap-to-message.ts';

/** The assistant's door. */
export interface Inbox {
  /** Keeps the message for good; throws when it cannot. */
  receive(message: IncomingMessage, delivery: string): 'new' | 'repeat';
  /** Sets to work on what waits, and returns at once. */
  work(): void;
}

/** Slack waits 3 s for the acknowledgement; a store busy for less than this is waited for, in the order of arrival. */
const patience = 2_500;
const pause = 50;

export interface Keeper {
  readonly inbox: Inbox;
  readonly threads: KnownThreads;
  readonly us: WhoWeAre;
  readonly now: () => number;
}

/** The same app to a receiver, but keeping before acknowledging. */
export const keepingFirst = (app: App, keeper: Keeper): App => {
  let last: Promise<unknown> = Promise.resolve();
  const inOrder = <T>(task: () => Promise<T>): Promise<T> => {
    const mine = last.then(task, task);
    last = mine.catch(() => undefined);
    return mine;
  };
  const shared = new Set<string>(); // channels last heard of as shared with another organisation
  const keeping: App = Object.create(app);
  keeping.processEvent = async (event: ReceiverEvent): Promise<void> => {
    const arrived = keeper.now();
    const kept = await inOrder(() => keep(event.body, keeper, shared, arrived));
    try {
      await app.processEvent(event);
    } finally {
      // Kept is kept, even where the acknowledgement was cut off.
      if (kept) keeper.inbox.work();
    }
  };
  return keeping;
};

const keep = async (body: unknown, keeper: Keeper, shared: Set<string>, arrived: number): Promise<boolean> => {
  for (;;) {
    try {
      const heard = understood(body, keeper, shared);
      if (heard) keeper.inbox.receive(heard.message, heard.delivery);
      return heard !== undefined;
    } catch (error) {
      if (keeper.now() - arrived > patience) throw error;
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
  }
};

type Understood = { readonly message: IncomingMessage; readonly delivery: string };

const understood = (body: unknown, { us, threads, now }: Keeper, shared: Set<string>): Understood | undefined => {
  const said = asMessageDelivery(body);
  if (said) {
    const message = deliveryToMessage(said, us, threads);
    if (message?.shared) shared.add(message.channel);
    else if (message) shared.delete(message.channel);
    return message && !isOnlyFiles(message, said) ? { message, delivery: said.event_id } : undefined;
  }
  const message = asked(body, us, now());
  if (!message) return undefined;
  // Slack does not say of a tap whether its channel is shared; messages do.
  const isShared = shared.has(message.channel) || threads.isShared?.(message) === true;
  return { message: { ...message, shared: isShared }, delivery: [message.channel, message.id, message.revision].join(' ') };
};

/** What was tapped, entered in a form, or chosen from a message's menu. */
const asked = (body: unknown, us: WhoWeAre, at: number): IncomingMessage | undefined => {
  const tapped = asTapDelivery(body);
  if (tapped) return tapToMessage(tapped, us);
  const entered = readNumberForm(body, us, at);
  if (entered) return 'message' in entered ? entered.message : undefined;
  return homeTapToMessage(body, us) ?? shortcutToMessage(body, us);
};
