// Handles what is waiting in the inbox, one message at a time: load, answer, store with the reply in one transaction. Nothing a person sends can
// make it throw; a broken invariant becomes one apology and a logged id, and the next message is handled as usual.

import type { Reply } from '../reply/reply.ts';
import { afterAWait } from '../reply/words/after-a-wait.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { type Answered, answerMessage } from './answer-message.ts';
import { apology } from './apology.ts';
import type { Handled } from './handled.ts';
import type { Standpoint } from './log-entries.ts';
import type { Clock, IncomingMessage, OutgoingReply, Store, ThreadKey } from './ports.ts';
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
}

/** A thread that keeps moving under us is answered again this often before we give up. */
const mostTries = 5;

export const createAssistant = ({ store, clock, settings, onFailure, isOutage = () => false }: AssistantParts): Assistant => {
  /** The apology for an error that is the message's own; anything else is thrown on. */
  const failed = (message: IncomingMessage, at: Standpoint, error: unknown): Answered => {
    if (isOutage(error)) throw error;
    const id = failureId(message);
    onFailure(id, error);
    return apology(at, id);
  };

  const answer = (message: IncomingMessage, at: Standpoint): Answered => {
    try {
      return answerMessage(store, at, message, clock.now());
    } catch (error) {
      return failed(message, at, error);
    }
  };

  const keep = (message: IncomingMessage, at: Standpoint, answered: Answered, late: boolean): Handled | undefined => {
    const { logged, as, reading, figures } = answered;
    const reply = late ? withExcuse(answered.reply) : answered.reply;
    const stored = store.commit({
      message,
      thread: at.thread.key,
      entries: logged.entries,
      expected: { thread: at.thread.version, studio: at.studio.version },
      event: logged.event,
      ...(logged.studio === at.studio.state ? {} : { studio: logged.studio }),
      replies: reply ? [answerTo(message, at.thread.key, reply, as === 'failed')] : [],
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

/** Short enough to read out, made from the message's place so that the same failure has the same id. */
const failureId = ({ channel, id, revision }: IncomingMessage): string => {
  let hash = 0;
  for (const character of `${channel}/${id}/${revision}`) hash = (Math.imul(hash, 31) + (character.codePointAt(0) ?? 0)) >>> 0;
  return hash.toString(36).padStart(7, '0');
};
