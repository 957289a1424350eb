// Handles what is waiting in the inbox, one message at a time: load, answer, store with the reply in one transaction. Nothing a person sends can
// make it throw; a broken invariant becomes one apology and a logged id, and the next message is handled as usual.

import { firstContact } from '../reply/compose/first-contact.ts';
import type { Reply } from '../reply/reply.ts';
import { afterAWait } from '../reply/words/after-a-wait.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { type Answered, answerMessage } from './answer-message.ts';
import { apology } from './apology.ts';
import type { Handled } from './handled.ts';
import type { Standpoint } from './log-entries.ts';
import type { Clock, IncomingMessage, OutgoingReply, Store, ThreadKey } from './ports.ts';
import { summaryMessage } from './summary-message.ts';
import { threadMeant } from './ticks.ts';

export interface Assistant {
  /** Handles the oldest waiting message; undefined when none waits. `late`: its reply begins by saying that it had to wait for us. */
  next(late?: (message: IncomingMessage) => boolean): Handled | undefined;
  /** Handles every waiting message, oldest first, and tells each one. */
  work(onHandled?: (handled: Handled) => void): readonly Handled[];
}

export interface AssistantParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly settings: StudioSettings; // for a workspace that has not set up its own
  /** Told the id under which a failure is shown to the person; never any of the person's words. */
  readonly onFailure: (id: string, error: unknown) => void;
  /** Whether the store itself is in trouble. Such an error is thrown on, and the message waits: it is not the message's fault. */
  readonly isOutage?: (error: unknown) => boolean;
  /** The host has forms, can change what it posted and can speak to one person alone: threads get a summary, a new workspace is offered to be set up. */
  readonly isWorkplace?: boolean;
}

/** A thread that keeps moving under us is answered again this often before we give up. */
const mostTries = 5;

export const createAssistant = ({
  store,
  clock,
  settings,
  onFailure,
  isOutage = () => false,
  isWorkplace = false,
}: AssistantParts): Assistant => {
  /** The apology for an error that is the message's own; anything else is thrown on. */
  const failed = (message: IncomingMessage, at: Standpoint, error: unknown): Answered => {
    if (isOutage(error)) throw error;
    const id = failureId(message);
    onFailure(id, error);
    return apology(at, id);
  };

  const answer = (message: IncomingMessage, at: Standpoint): Answered => {
    try {
      return answerMessage(store, at, met(store, message, at.thread.key), clock.now());
    } catch (error) {
      return failed(message, at, error);
    }
  };

  /** The first answer in a workspace that is not set up says how to. */
  const welcoming = (message: IncomingMessage, reply: Reply | undefined): Reply | undefined => {
    if (!isWorkplace || !reply || message.shared || message.guest) return reply;
    const isNew = !store.hasChosenSettings(message.workspace) && !store.hasHandled(message.workspace);
    return isNew ? { ...reply, blocks: [...reply.blocks, ...firstContact] } : reply;
  };

  const keep = (message: IncomingMessage, at: Standpoint, answered: Answered, late: boolean): Handled | undefined => {
    const { logged, as, reading, figures } = answered;
    const said = answered.apart && !isWorkplace ? answered.apart : answered.reply;
    const reply = welcoming(message, late ? withExcuse(said) : said);
    const to = at.thread.key;
    if (answered.forgets) {
      store.forget(to, message, reply ? [answerTo(message, to, reply, false)] : []);
      return { message, as, reading, reply, figures };
    }
    const stored = store.commit({
      message,
      thread: at.thread.key,
      entries: logged.entries,
      expected: { thread: at.thread.version, studio: at.studio.version },
      event: logged.event,
      ...(logged.studio === at.studio.state ? {} : { studio: logged.studio }),
      replies: [
        ...(reply ? [answerTo(message, to, reply, as === 'failed')] : []),
        ...(answered.apart && isWorkplace ? [answerApart(message, answered.apart)] : []),
        ...(isWorkplace ? summaryMessage(store, at, message, logged, clock.now()) : []),
      ],
    });
    return stored === 'stored' ? { message, as, reading, reply, figures } : undefined;
  };

  const handle = (message: IncomingMessage, late: boolean): Handled => {
    for (let tries = 0; tries < mostTries; tries += 1) {
      const at = { thread: store.thread(threadMeant(message)), studio: store.studio(message.workspace, settings) };
      const answered = answer(message, at);
      let handled: Handled | undefined;
      try {
        handled = keep(message, at, answered, late);
      } catch (error) {
        // An outcome that cannot be stored would come back for ever and keep all others waiting.
        if (answered.as === 'failed') throw error;
        handled = keep(message, at, failed(message, at, error), late);
      }
      if (handled) return handled;
    }
    throw new Error(`the thread kept moving: gave up after ${mostTries} tries`);
  };

  const next: Assistant['next'] = (late = () => false) => {
    const [message] = store.waiting(1);
    return message && handle(message, late(message));
  };

  return {
    next,
    work: (onHandled) => {
      const all: Handled[] = [];
      for (let handled = next(); handled; handled = next()) {
        all.push(handled);
        onHandled?.(handled);
      }
      return all;
    },
  };
};

/** A tick comes from the bench, but is answered where others may read along. */
const met = (store: Store, message: IncomingMessage, key: ThreadKey): IncomingMessage =>
  message.shared || key.thread === message.thread ? message : { ...message, shared: store.isShared(key.workspace, key.channel) ?? false };

/** The answer itself stays the first line: it is all a notification shows. */
const withExcuse = (reply: Reply | undefined): Reply | undefined =>
  reply && { ...reply, blocks: reply.blocks.flatMap((block, index) => (index === 0 ? [block, afterAWait] : [block])) };

const answerTo = (message: IncomingMessage, to: ThreadKey, reply: OutgoingReply['reply'], failed: boolean): OutgoingReply => ({
  id: [message.workspace, message.channel, message.id, message.revision].join('/'),
  to,
  purpose: failed ? 'apology' : 'answer',
  about: message.id,
  reply,
});

/** A channel that is a person's id: the host speaks to them alone. */
const answerApart = ({ workspace, channel, id, revision, author }: IncomingMessage, reply: Reply): OutgoingReply => ({
  id: [workspace, channel, id, revision, 'apart'].join('/'),
  to: { workspace, channel: author, thread: '' },
  purpose: 'answer',
  about: `${channel}/${id} apart`,
  reply,
});

/** Short enough to read out, made from the message's place so that the same failure has the same id. */
const failureId = ({ channel, id, revision }: IncomingMessage): string => {
  let hash = 0;
  for (const character of `${channel}/${id}/${revision}`) hash = (Math.imul(hash, 31) + (character.codePointAt(0) ?? 0)) >>> 0;
  return hash.toString(36).padStart(7, '0');
};
